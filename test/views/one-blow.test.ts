import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { wholeReport } from '../../src/print/index.ts';
import { FIVE, saidIn } from '../print/every-paper.ts';
import { outlookOf, pictureOf } from '../print/paper-cases.ts';

test('one hammer has one blow: report and sheets say the same figure, and 95 of a hundred reach no less far than nine in ten', () => {
  for (const { name, entries } of FIVE) {
    const picture = pictureOf(entries, 'inch');
    const worked = outlookOf(picture);
    const spread = worked.motion.blowEnergy;
    const outcome = worked.values['capacity.blow-energy']?.outcome;
    if (spread === undefined || outcome?.state !== 'known') throw new Error(`${name}: no blow`);
    const { value, uncertainty, interval = [value - 2 * uncertainty, value + 2 * uncertainty] } = outcome.quantity;
    expect(value, name).toBe(spread.middle);
    expect(interval[0], name).toBeLessThanOrEqual(spread.low);
    expect(interval[1], name).toBeGreaterThanOrEqual(spread.high);
    const report = [...saidIn(wholeReport(picture, knowledge, { outlook: worked }))];
    const at = report.findIndex(([where, text]) => where.endsWith('Worked out from them, What') && text === 'energy of a full blow');
    expect(report[at + 1]?.[1], name).toContain(formatQuantity(outcome.quantity));
  }
});

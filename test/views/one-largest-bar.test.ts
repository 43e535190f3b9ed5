import { expect, test } from 'vitest';
import type { PrintSystem } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';
import { wholeReport } from '../../src/print/index.ts';
import { limitsCard, partsOfSheet } from '../../src/views/index.ts';
import { FIVE, saidIn } from '../print/every-paper.ts';
import { outlookOf, pictureOf } from '../print/paper-cases.ts';

/** Sides of stock as a dealer lists them: common practice. */
const SOLD: Readonly<Record<PrintSystem, RegExp>> = { inch: /^(?:\d+|(?:\d+ )?[1357]\/[248]) in$/u, metric: /^\d+(?:\.0)? mm$/u };

const metres = (text: string): number => {
  const read = readQuantity(text, { dimension: 'length' });
  if (!read.ok) throw new Error(read.problem.message);
  return read.quantity.value;
};

test.each(['inch', 'metric'] as const)('one largest bar: as sold, not above what its limits or its class allow, and the card gives small bars a size: %s', (system) => {
  for (const { name, entries } of FIVE) {
    const picture = pictureOf(entries, system);
    const worked = outlookOf(picture);
    const { words, sentence } = partsOfSheet('capacity', { picture, outlook: worked, knowledge }).answer;
    const said = / ([\d/ .]+(?:in|mm)) square$/u.exec(words)?.[1] ?? '';
    expect(said.trim(), `${name}: ${words}`).toMatch(SOLD[system]);
    const size = metres(said.trim());
    const numberOf = (key: string): number => {
      const outcome = worked.values[key]?.outcome;
      return outcome?.state === 'known' ? outcome.quantity.value : Number.NaN;
    };
    for (const key of ['capacity.largest-bar-by-class', 'capacity.largest-bar-by-work']) expect(size, `${name}: ${key}`).toBeLessThanOrEqual(numberOf(key));
    for (const limit of picture.duty.limits) if (['greatest-bar', 'greatest-work-thickness', 'light-work-only'].includes(limit.kind)) expect(size, `${name}: ${limit.sentence}`).toBeLessThanOrEqual((limit.quantity?.value ?? Number.NaN) + 1e-9);
    // A blow at half tread has half the energy, and energy goes with the square of the side.
    const tread = picture.duty.limits.find((limit) => limit.kind === 'greatest-tread')?.quantity?.value ?? 1;
    expect(size, name).toBeLessThanOrEqual(numberOf('capacity.largest-bar-by-work') * Math.sqrt(tread));
    const cured = /With everything cured that limits it: ([\d/ .]+(?:in|mm)) square/u.exec(sentence)?.[1];
    if (cured !== undefined) expect(metres(cured.trim()), name).toBeGreaterThan(size);
    else if (picture.duty.verdict === 'fit-within-limits') expect(picture.duty.limits.some((limit) => limit.kind === 'light-work-only'), name).toBe(false);
    // The report's table says the figure that the headline is rounded down from.
    const report = [...saidIn(wholeReport(picture, knowledge, { outlook: worked }))];
    const rows = report.flatMap(([where, text], index) => (where.endsWith('Worked out from them, What') && text === 'largest bar for steady work' ? [report[index + 1]?.[1] ?? ''] : []));
    expect(rows.length, name).toBe(1);
    expect(metres(/^[\d/ .]+(?= |$)/u.exec(rows[0]!)![0].trim() + (system === 'inch' ? ' in' : ' mm')), name).toBeGreaterThan(size * 0.999);
    const card = limitsCard(picture);
    expect([...card.limits, ...report.map(([, text]) => text)].filter((text) => /small bars/u.test(text)), name).toEqual([]);
  }
});

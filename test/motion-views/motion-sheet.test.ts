import { expect, test } from 'vitest';
import { motionWithDoubt } from '../../src/derived/motion/index.ts';
import { motionOnPaper } from '../../src/views/work/index.ts';
import { INVENTED } from './invented-hammers.ts';

test.each(INVENTED.map((one) => [one.tag, one] as const))('%s: the motion sheet gives its figures with their doubt, and says which are without', (_tag, { picture, survey }) => {
  const doubt = motionWithDoubt(survey, { seed: picture.provenance.seed });
  const { blocks } = motionOnPaper(picture);
  expect(motionOnPaper(picture, doubt).blocks).toEqual(blocks);
  const table = blocks.find((one) => one.kind === 'table');
  if (table?.kind !== 'table') throw new Error('the figures stand in a table');
  expect(table.rows.map((row) => row.cells[0])).toContain('Energy of a blow');
  for (const { cells } of table.rows) expect(cells[2]).toMatch(/ to /);
  const energy = table.rows.find((row) => row.cells[0] === 'Energy of a blow')?.cells ?? [];
  const footPounds = (text: string | undefined): number => Number(/[\d.]+/.exec(text ?? '')?.[0]);
  // 1 ft·lbf = 1.3558179 J
  expect(Math.abs(footPounds(energy[1]?.toString()) - (doubt.blowEnergy?.middle ?? 0) / 1.3558179)).toBeLessThanOrEqual(0.51);
  expect(blocks.some((one) => one.kind === 'heading' && /without doubt: model figures/.test(one.text))).toBe(true);
});

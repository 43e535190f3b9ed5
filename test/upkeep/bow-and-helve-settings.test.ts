import { expect, test } from 'vitest';
import type { Picture } from '../../src/derived/index.ts';
import { makeBowStraps } from '../../src/derived/making/index.ts';
import type { SettingLine } from '../../src/derived/upkeep/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { settingBlocks, settingLines } from '../../src/views/work/index.ts';
import { FIVE } from '../print/every-paper.ts';
import { pictureOf } from '../print/paper-cases.ts';

const INCH = 0.0254;
const example = (name: string): Picture => pictureOf(FIVE.find((one) => one.name.startsWith(name))?.entries ?? [], 'inch');
const line = (picture: Picture, id: string): SettingLine | undefined => settingLines(picture).find((one) => one.id === id);

/** Bending of a pack by Bhandari, Design of Machine Elements, 10.45: 18 P L / (b t² (3 nf + 2 ng)), with its end deflection 12 P L³ / (E b t³ (3 nf + 2 ng)). */
const stressAt = (flex: number, thickness: number, reach: number): number => ((18 * 207e9 * thickness) / (12 * reach ** 2)) * flex;

test('a bow is drawn in no further than its leaves stand, and its straps are let out for it', () => {
  const bow = example('dunmarrow');
  const flex = line(bow, 'bow');
  // 1 3/8 in as read; by the handbook's pair of formulas 600 MPa is reached at so much.
  const most = 600e6 / stressAt(1, 0.305 * INCH, (28.25 / 2) * INCH);
  expect(most / INCH).toBeGreaterThan(1.2);
  expect(flex?.target?.to?.value).toBeLessThanOrEqual(most);
  expect(most - (flex?.target?.to?.value ?? 0)).toBeLessThan(INCH / 16);
  expect((flex?.target?.to?.value ?? 0) / INCH).toBe(1.25);
  expect(flex).toMatchObject({ state: 'off' });
  const straps = line(bow, 'straps');
  expect(((straps?.target?.from?.value ?? 0) - 9 * INCH) / INCH).toBeCloseTo(1 / 8, 9);
  // What is set is what is drawn.
  const drawn = makeBowStraps(bow.values, bow.known);
  const between = drawn.state === 'to-make' ? drawn.dimensions.find((one) => one.name === 'between')?.quantity.value : undefined;
  expect(between).toBeCloseTo(straps?.target?.from?.value ?? Number.NaN, 12);
});

test('a helve has its cushions and its height screws on the sheet, before the gap', () => {
  const helve = example('tannerwick');
  const ids = settingLines(helve).map((one) => one.id);
  expect(ids.indexOf('cushions')).toBeGreaterThan(-1);
  expect(ids.indexOf('height-screws')).toBeGreaterThan(ids.indexOf('cushions'));
  expect(ids.indexOf('gap')).toBeGreaterThan(ids.indexOf('height-screws'));
  const cushions = line(helve, 'cushions');
  // Of 2 5/8 and 2 1/2 in, new 3 in, the lower one decides.
  expect((cushions?.asFound?.quantity?.value ?? 0) / INCH).toBe(2.5);
  expect((cushions?.target?.from?.value ?? 0) / INCH).toBeCloseTo(3, 12);
  expect(cushions?.state).toBe('off');
  expect(JSON.stringify(settingBlocks(helve, knowledge))).toContain('free to turn and locked, both alike');
});

test('no row of a bow or a helve stands on another linkage', () => {
  for (const name of ['sallowfield', 'wrenhollow', 'kettlebrae']) expect(settingLines(example(name)).filter((one) => ['bow', 'straps', 'cushions', 'height-screws'].includes(one.id)), name).toEqual([]);
});

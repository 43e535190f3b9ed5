import { expect, test } from 'vitest';
import { KEY_TAPERS, driveForGap, keySize, taperAngle, taperHolds, taperRise, toleranceStack, wedgeForceRatio } from '../../../src/methods/elements/index.ts';
import { byFigure, digits, rowsOf, runRows, type Row } from '../row.ts';
import { degree, inch, known } from '../units.ts';

test('key for a shaft', () => {
  const SOURCE = 'ANSI B17.1, in Shop Reference, Industrial Press, globalspec.com/reference/77011';
  // A size just above each lower bound, in the middle, and exactly at the upper bound: "over ... to and including".
  const bands = [[7 / 8, 1.25, 1 / 4], [1.25, 1.375, 5 / 16], [1.375, 1.75, 3 / 8], [1.75, 2.25, 1 / 2], [2.25, 2.75, 5 / 8], [2.75, 3.25, 3 / 4]] as const;
  const rows = bands.flatMap(([over, upTo, key]) => [over + 0.001, (over + upTo) / 2, upTo].map((shaft): Row<number> =>
    ({ source: SOURCE, status: 'read', figure: `key for ${shaft} in, in`, inputs: shaft, expected: key, tolerance: digits(String(key)) })));
  runRows('square keys', rows, (shaft) => known(keySize(shaft * inch)).width / inch);
  for (const [, upTo] of bands) expect(known(keySize(upTo * inch)).standing).toBe('read');
  expect(known(keySize(4 * inch)).standing).toBe('from memory');
  expect(keySize(7 * inch).state).toBe('outside-validity');
  expect(keySize((5 / 16) * inch).state).toBe('outside-validity');
  expect(() => keySize(Number.NaN)).toThrow(RangeError);
});

test('keys grow with the shaft, and a flat one is never higher than wide', () => {
  let before = 0;
  for (let sixteenths = 6; sixteenths <= 104; sixteenths += 1) {
    const key = known(keySize((sixteenths / 16) * inch));
    expect(key.width).toBeGreaterThanOrEqual(before);
    expect(key.flatHeight).toBeLessThanOrEqual(key.width);
    expect((sixteenths / 16) * inch).toBeGreaterThan(key.shaftOver * (1 - 1e-9));
    expect((sixteenths / 16) * inch).toBeLessThanOrEqual(key.shaftUpTo * (1 + 1e-9));
    before = key.width;
  }
});

test('taper keys', () => {
  const inputs = { engagement: 3 };
  runRows('taper keys', [
    ...rowsOf('ANSI B17.1, 1/8 in per foot (from memory)', 'from memory', inputs, [['angle, degrees', '.5968'], ['rise over the engagement, in', '.03125'], ['one in', '96']]),
    ...rowsOf('metric taper key (from memory)', 'from memory', inputs, [['metric, one in', '100']]),
  ], byFigure({
    'angle, degrees': () => taperAngle(KEY_TAPERS['eighth-per-foot']) / degree, 'rise over the engagement, in': (x) => taperRise(KEY_TAPERS['eighth-per-foot'], x.engagement * inch) / inch,
    'one in': () => 1 / KEY_TAPERS['eighth-per-foot'], 'metric, one in': () => 1 / KEY_TAPERS['one-in-hundred'],
  }));
  expect(driveForGap(1 / 96, taperRise(1 / 96, 0.01))).toBeCloseTo(0.01, 15);
  // Without friction a wedge of 1 in 96 multiplies by 96; with it, far less, and it stays in.
  expect(wedgeForceRatio(1 / 96, 0)).toBeCloseTo(96, 9);
  expect(wedgeForceRatio(1 / 96, 0.15)).toBeLessThan(4);
  expect(taperHolds(1 / 96, 0.1)).toBe(true);
  expect(taperHolds(1 / 4, 0.1)).toBe(false);
});

test('tolerances in a row', () => {
  type Row4 = readonly number[];
  runRows('tolerance stack', [
    ...rowsOf<Row4>('four of ±0.1 in a row, exact', 'recomputed', [0.1, 0.1, 0.1, 0.1], [['worst', '.4'], ['likely', '.2']].map(([figure, printed]) => [figure!, printed!, { absolute: 1e-12 }] as const)),
  ], byFigure({ worst: (x) => toleranceStack(x).worst, likely: (x) => toleranceStack(x).likely }));
  for (let n = 1; n < 30; n += 1) {
    const stack = toleranceStack(Array.from({ length: n }, () => 0.25));
    expect(stack.worst).toBeCloseTo(0.25 * n, 12);
    expect(stack.likely).toBeCloseTo(0.25 * Math.sqrt(n), 12);
  }
  expect(toleranceStack([])).toEqual({ worst: 0, likely: 0 });
  expect(() => toleranceStack([-1])).toThrow(RangeError);
});

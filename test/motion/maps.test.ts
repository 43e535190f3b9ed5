import { describe, expect, it } from 'vitest';
import {
  BEAT_CLASSES, emptyMap, layPatch, lineOfSettings, mapCell, mapOrder, mapSettings, nearestCleanOnMap, runHammer, settingOf, smallestAdjustments, specAt, turnsFor, usualHammer, withSetting,
} from '../../src/derived/motion/index.ts';
import type { MapAxis, MapPatch } from '../../src/derived/motion/index.ts';

const b = usualHammer(25).spec;
const x: MapAxis = { setting: 'throw', from: 0.04, to: 0.07 };
const y: MapAxis = { setting: 'rodLength', from: 0.4, to: 0.45 };
const SIZE = 24;
const quick = { duration: 4 };

describe('the order of a map', () => {
  it('takes every cell once, coarse first, and the squares of each round cover the map', () => {
    for (const size of [1, 2, 7, 16, 33, 128]) {
      const { order, span } = mapOrder(size);
      expect(new Set(order).size).toBe(size * size);
      for (let i = 1; i < span.length; i++) expect(span[i]!).toBeLessThanOrEqual(span[i - 1]!);
      expect(span[span.length - 1]).toBe(1);
      const covered = new Uint8Array(size * size);
      for (let i = 0; span[i] === span[0]; i++) {
        const column = order[i]! % size;
        const row = (order[i]! - column) / size;
        for (let r = row; r < Math.min(size, row + span[i]!); r++) for (let c = column; c < Math.min(size, column + span[i]!); c++) covered[r * size + c] = 1;
      }
      expect(covered.includes(0)).toBe(false);
    }
    expect(mapOrder(128).order.filter((_, i) => mapOrder(128).span[i] === 16).length).toBe(64);
    expect(() => mapOrder(0)).toThrow('1 to 1024');
  });
});

describe('a map', () => {
  const whole = [...mapSettings(b, x, y, SIZE, quick)];
  const map = emptyMap(x, y, SIZE);
  for (const patch of whole) layPatch(map, patch);

  it('is the same worked in shares, or stopped and gone on with', () => {
    const shares: MapPatch[] = [0, 1, 2].flatMap((share) => [...mapSettings(b, x, y, SIZE, { ...quick, share, shares: 3 })]);
    expect(shares.sort((p, q) => p.place - q.place)).toEqual(whole);
    const part = mapSettings(b, x, y, SIZE, quick);
    const first = [part.next().value, part.next().value, part.next().value] as MapPatch[];
    const rest = [...mapSettings(b, x, y, SIZE, { ...quick, resumeAt: first[2]!.place + 1 })];
    expect([...first, ...rest]).toEqual(whole);
  });
  it('has a whole picture after its first round', () => {
    const early = emptyMap(x, y, SIZE);
    for (const patch of whole.filter((p) => p.span === whole[0]!.span)) layPatch(early, patch);
    expect(early.code.includes(255)).toBe(false);
    expect(whole.filter((p) => p.span === whole[0]!.span).length).toBeLessThan(SIZE * SIZE / 8);
  });
  it('has each cell as it is on its own, and mostly as a closer run has it', () => {
    let differ = 0;
    let looked = 0;
    for (const patch of whole.filter((_, i) => i % 5 === 0)) {
      const spec = specAt(b, x, y, patch.column, patch.row, SIZE);
      expect(mapCell(spec, quick)).toEqual(patch.cell);
      const close = mapCell(spec, { ...quick, relative: 1e-7 });
      looked++;
      if (close.beatClass !== patch.cell.beatClass) differ++;
    }
    console.log(`1e-4 against 1e-7: ${differ} of ${looked} cells of another class`);
    expect(differ / looked).toBeLessThan(0.05);
  });
  it('shows more than one class, and the nearest clean place on it is clean with clean round it', () => {
    expect(new Set(map.code).size).toBeGreaterThan(2);
    const from = { x: 0.067, y: 0.44 };
    expect(mapCell(specAt(b, { ...x, from: from.x }, { ...y, from: from.y }, 0, 0, SIZE), quick).beatClass).not.toBe('clean');
    const found = nearestCleanOnMap(map, from.x, from.y)!;
    for (const [dr, dc] of [[0, 0], [0, 1], [1, 0], [0, -1], [-1, 0]] as const) {
      const row = found.row + dr;
      const column = found.column + dc;
      if (row < 0 || column < 0 || row >= SIZE || column >= SIZE) continue;
      expect(BEAT_CLASSES[map.code[row * SIZE + column]!]).toBe('clean');
    }
    expect(found.x + -found.changeX).toBeCloseTo(from.x, 12);
    // No nearer cell would do: every clean cell with its margin is at least as far.
    const far = (column: number, row: number): number => ((column / (SIZE - 1)) - (from.x - x.from) / (x.to - x.from)) ** 2 + ((row / (SIZE - 1)) - (from.y - y.from) / (y.to - y.from)) ** 2;
    for (let row = 1; row < SIZE - 1; row++)
      for (let column = 1; column < SIZE - 1; column++) {
        let all = true;
        for (let r = -1; r <= 1; r++) for (let c = -1; c <= 1; c++) if (BEAT_CLASSES[map.code[(row + r) * SIZE + column + c]!] !== 'clean') all = false;
        if (all) expect(far(column, row)).toBeGreaterThanOrEqual(far(found.column, found.row) - 1e-12);
      }
  });
  it('gives nothing where nothing is clean', () => {
    const dead = emptyMap(x, y, 4);
    expect(nearestCleanOnMap(dead, 0.05, 0.42)).toBeUndefined();
  });
  it('can be walked along a line', () => {
    const line = [...lineOfSettings(b, { setting: 'throw', from: 0.05, to: 0.07 }, { setting: 'driveSpeed', from: 33, to: 30 }, 9, quick)];
    expect(line.length).toBe(9);
    expect(line[8]!.x).toBeCloseTo(0.07, 12);
    expect(line[8]!.y).toBeCloseTo(30, 12);
    expect(line[0]!.cell.beatClass).toBe('clean');
  });
});

describe('the smallest adjustment', () => {
  const troubled = withSetting(b, 'throw', 0.067);
  const reaches = [{ setting: 'throw', low: 0.04, high: 0.075 }, { setting: 'rodLength', low: 0.39, high: 0.45 }, { setting: 'driveSpeed', low: 25, high: 40 }] as const;
  it('makes it clean from either start, and half of it does not', () => {
    const found = smallestAdjustments(troubled, reaches);
    expect(found.length).toBeGreaterThan(0);
    for (const a of found) {
      console.log(`${a.setting}: ${a.from.toFixed(4)} to ${a.to.toFixed(4)}, ${a.before} to ${a.after.beatClass}`);
      const cured = runHammer(withSetting(troubled, a.setting, a.to), { duration: 6, relative: 1e-4 });
      if (cured.outcome !== 'ran') throw new Error(cured.outcome);
      expect(cured.beatClass).toBe('clean');
      const half = mapCell(withSetting(troubled, a.setting, a.from + 0.5 * a.change), { either: true });
      expect(half.beatClass !== 'clean' || half.either !== undefined).toBe(true);
    }
    for (let i = 1; i < found.length; i++) expect(found[i]!.effort).toBeGreaterThanOrEqual(found[i - 1]!.effort);
  });
  it('is nothing for a hammer that is clean', () => {
    expect(smallestAdjustments(b, reaches)).toEqual([]);
  });
  it('in turns of a nut needs the thread', () => {
    expect(turnsFor(0.005, 0.0025)).toBeCloseTo(2, 12);
    expect(() => turnsFor(0.005, 0)).toThrow('pitch');
  });
});

describe('settings', () => {
  it('read back as set, on every family, and leave the rest alone', () => {
    for (const kind of ['coil-toggle', 'bow-strap', 'helve'] as const) {
      const spec = usualHammer(25, kind).spec;
      for (const name of ['throw', 'rodLength', 'restGap', 'preCompression', 'springRate', 'driveSpeed', 'workThickness', 'stackLoss', 'treadle', 'restitution'] as const) {
        const now = settingOf(spec, name)!;
        const next = now === 0 ? 0.004 : now * 0.97;
        const changed = withSetting(spec, name, next);
        expect(settingOf(changed, name)!).toBeCloseTo(next, 12);
        if (name !== 'restGap') expect(changed.frameHeight).toBe(spec.frameHeight);
      }
    }
  });
});

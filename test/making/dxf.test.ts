import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { MAKERS, makeFillerPlate, makeLowerDie, type PartToMake } from '../../src/derived/making/index.ts';
import { makingDxf } from '../../src/print/dxf/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { dimension, millimetres, pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer, metricHammer, slowHammer } from './hammers.ts';

const PYTHON = '/usr/bin/python3';
const there = spawnSync(PYTHON, ['-c', 'import ezdxf'], { encoding: 'utf8' }).status === 0;
if (!there) console.log(`drawing files are not measured: ${PYTHON} has no ezdxf (Debian: python3-ezdxf)`);

/** Independent reading of a drawing file. */
interface Measured {
  readonly file: string;
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly units: number;
  readonly layers: readonly string[];
  readonly kinds: readonly string[];
  readonly texts: readonly string[];
  readonly groups: readonly (readonly [number, number])[];
  readonly circles: readonly number[];
  readonly slopes: readonly number[];
  readonly points: readonly Spot[];
  readonly tips: readonly Spot[];
  readonly arcs: readonly number[];
  readonly chamfers: readonly number[];
}

type Spot = readonly [x: number, y: number];

/** Sizes that must be found among the outlines: pairs of across and up by the names of the dimensions. */
const OUTLINES: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'filler-plate': [['width', 'thickness'], ['width', 'length']], 'lower-die': [['base-width', 'height'], ['length', 'height']], 'upper-die': [['base-width', 'height'], ['length', 'height']],
  'bow-leaf': [['flat-length', 'width']], 'lower-key': [['length', 'large-end']], 'upper-key': [['length', 'large-end']], 'bow-strap': [['length', 'width'], ['length', 'thickness']], 'helve-cushion': [['width', 'height'], ['span', 'height']], 'thrust-washer': [['thickness', 'outside']], 'ram-prop': [['side', 'length'], ['side', 'side']], 'sole-timbers': [['length', 'depth'], ['length', 'pad-width']],
};
const ROUND: Readonly<Record<string, readonly string[]>> = { 'toggle-bushing': ['bore', 'outside'], 'rod-bushing': ['bore', 'outside'], 'clutch-pulley-bushing': ['bore', 'outside'], 'crosshead-bushing': ['bore', 'outside'], 'bow-eye-bushing': ['bore', 'outside'], 'bow-clip-bushing': ['bore', 'outside'], 'helve-bushing': ['bore', 'outside'], 'countershaft-driver': ['diameter'], 'countershaft-driven': ['diameter'], 'crank-pin': ['cross-hole'], 'toggle-pin': ['cross-hole'], 'bow-eye-pin': ['cross-hole'], 'bow-clip-pin': ['cross-hole'], 'helve-pin': ['cross-hole'], 'crosshead-pin': ['cross-hole'], 'treadle-pin': ['cross-hole'], 'treadle-bushing': ['bore', 'outside'], 'thrust-washer': ['bore', 'outside'], 'bow-strap': ['hole'], 'coil-spring': ['wire'], belt: ['small-pulley', 'large-pulley'], 'motor-pulley': ['diameter'] };
const TOLERANCE_MILLIMETRES = 0.01;

/** Sizes that a leader tells and that are no circle, radius or chamfer: along the way round a belt, and a few thousandths of crown. */
const TOLD: Readonly<Record<string, readonly string[]>> = { belt: ['length'], 'motor-pulley': ['crown'], 'countershaft-driver': ['crown'], 'countershaft-driven': ['crown'] };

/** How far the nearest pair of arrow tips on one level is from a size, where both tips stand over a corner, centre or outermost point of the outline. */
function betweenArrows({ tips, points }: Measured, size: number, axis: 0 | 1): number {
  const over = tips.filter((tip) => points.some((point) => Math.abs(point[axis] - tip[axis]) < TOLERANCE_MILLIMETRES));
  return Math.min(...over.flatMap((a, index) => over.slice(index + 1).filter((b) => Math.abs(a[1 - axis]! - b[1 - axis]!) < TOLERANCE_MILLIMETRES).map((b) => Math.abs(Math.abs(a[axis] - b[axis]) - size))));
}

/** What a leader with this sign may point at. A bare one tells a thickness: between two arcs about one centre, or between two lines. */
function byLeader(one: Measured, sign: string | undefined): readonly number[] {
  const apart = (axis: 0 | 1): readonly number[] => {
    const levels = [...new Set(one.points.map((point) => Math.round(point[axis] * 1e6) / 1e6))];
    return levels.flatMap((a, index) => levels.slice(index + 1).map((b) => Math.abs(a - b)));
  };
  switch (sign) {
    case 'R':
      return one.arcs;
    case 'C':
      return one.chamfers;
    case 'Ø':
      return [...one.circles, ...one.arcs.map((radius) => 2 * radius), ...apart(0), ...apart(1)];
    default:
      return one.arcs.flatMap((a, index) => one.arcs.slice(index + 1).map((b) => Math.abs(a - b)));
  }
}

const folder = mkdtempSync(join(tmpdir(), 'tupwise-dxf-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const drawings: { readonly name: string; readonly part: PartToMake; readonly text: string }[] = [];
for (const [name, log, system] of [['inch', inchHammer(), 'inch'], ['metric', metricHammer(), 'metric'], ['bow', bowHammer(), 'metric'], ['helve', helveHammer(), 'inch'], ['slow', slowHammer(), 'inch']] as const) {
  const found = pictureOf(log, system);
  for (const make of Object.values(MAKERS)) {
    const part = make(found.values, found.known, { system, alsoMade: new Set(), floorCut: false });
    if (part.state === 'to-make') for (const angle of ['first-angle', 'third-angle'] as const) drawings.push({ name: `${name}-${part.id}-${angle}`, part, text: makingDxf(found, part, angle) });
  }
}
/** Plates and dies of any size: 40 of each. */
fc.sample(fc.record({ width: fc.double({ min: 0.02, max: 0.2, noNaN: true }), length: fc.double({ min: 0.03, max: 0.4, noNaN: true }), sunk: fc.double({ min: 0.001, max: 0.02, noNaN: true }), angle: fc.integer({ min: 0, max: 25 }), depth: fc.double({ min: 0.005, max: 0.015, noNaN: true }) }), { numRuns: 40, seed: 7 }).forEach((one, index) => {
  const mm = (length: number) => `${(length * 1000).toFixed(3)} mm`;
  const found = pictureOf(new LogOf('50 lb', 'coil-and-toggle').made('upper-die.height', '80 mm').made('lower-die.height', '80 mm').read('upper-die.height', mm(0.07 - one.sunk)).read('lower-die.width', mm(one.width)).read('lower-die.length', mm(one.length)).read('seat.width', mm(one.width + 0.03)).read('seat.length', mm(one.length)).read('seat.sunk', mm(one.sunk)).read('seat.depth', mm(one.depth)).read('dovetail.flank-angle@lower', `${one.angle} deg`), 'metric');
  for (const make of [makeFillerPlate, makeLowerDie]) {
    const part = make(found.values, found.known, { system: 'metric', alsoMade: new Set(), floorCut: false });
    if (part.state === 'to-make') drawings.push({ name: `any-${index}-${part.id}`, part, text: makingDxf(found, part) });
  }
});

describe.skipIf(!there)('an independent reader opens every drawing file and measures it', () => {
  const measured = new Map<string, Measured>();
  beforeAll(() => {
    for (const { name, text } of drawings) writeFileSync(join(folder, `${name}.dxf`), text);
    const run = spawnSync(PYTHON, [join(import.meta.dirname, 'measure-drawing.py'), ...drawings.map(({ name }) => join(folder, `${name}.dxf`))], { encoding: 'utf8', maxBuffer: 1 << 28 });
    if (run.status !== 0) throw new Error(run.stderr);
    for (const line of run.stdout.trim().split('\n')) {
      const one = JSON.parse(line) as Measured;
      measured.set(one.file.slice(folder.length + 1, -4), one);
    }
  });

  test('audit finds nothing to complain of and nothing to mend; units are millimetres; all layers have their lines', () => {
    expect(measured.size).toBe(drawings.length);
    for (const [name, one] of measured) expect({ name, errors: one.errors, fixes: one.fixes, units: one.units }).toEqual({ name, errors: [], fixes: [], units: 4 });
    expect([...new Set([...measured.values()].flatMap((one) => one.layers))].sort()).toEqual(['centre', 'dimension', 'hatch', 'hidden', 'text', 'visible']);
    expect([...new Set([...measured.values()].flatMap((one) => one.kinds))].sort()).toEqual(['ARC', 'CIRCLE', 'LINE', 'LWPOLYLINE', 'TEXT']);
  });

  test('outlines measure what the part is, within 0.01 mm', () => {
    let worst = { name: '', off: 0 };
    let count = 0;
    const see = (name: string, off: number) => {
      count += 1;
      if (off >= worst.off) worst = { name, off };
    };
    for (const { name, part } of drawings) {
      const one = measured.get(name)!;
      for (const [across, up] of OUTLINES[part.id] ?? []) {
        // A foot that runs to the taper of its key shows its far end behind the near one.
        const far = across === 'base-width' && part.dimensions.some((size) => size.name === 'far-width') ? 'far-width' : across;
        // A body that stands out over its foot is part of the outline, on each side as far as it goes; the taper lies on one.
        const half = across === 'base-width' && part.dimensions.some((size) => size.name === 'body-width') ? millimetres(part, 'body-width') / 2 : 0;
        const near = millimetres(part, across) / 2;
        // A strap is seen on edge with a plate on each face.
        const plates = part.id === 'bow-strap' && up === 'thickness' ? 2 * millimetres(part, 'plate') : 0;
        const [width, height] = [Math.max(near, half) + Math.max(millimetres(part, far) - near, half), millimetres(part, up) + plates];
        see(`${name}: ${across} by ${up}`, Math.min(...one.groups.map(([x, y]) => Math.max(Math.abs(x - width), Math.abs(y - height)))));
      }
      for (const round of ROUND[part.id] ?? []) see(`${name}: ${round}`, Math.min(...one.circles.map((diameter) => Math.abs(diameter - millimetres(part, round)))));
    }
    console.log(`${count} outlines of ${drawings.length} drawing files measured; worst ${worst.off.toExponential(2)} mm in ${worst.name}`);
    expect(count).toBeGreaterThan(120);
    expect(worst.off).toBeLessThan(TOLERANCE_MILLIMETRES);
  });

  test('every size that a drawing states is measured between the arrows that state it and on the outline, within 0.01 mm', () => {
    let [count, worst] = [0, 0];
    const missed: string[] = [];
    for (const { name, part } of drawings) {
      const one = measured.get(name)!;
      for (const mark of part.shape.views.flatMap((view) => view.dimensions)) {
        if ((mark.kind !== 'straight' && mark.kind !== 'leader') || mark.of === undefined) continue;
        const stated = dimension(part, mark.of);
        if (stated.quantity.dimension !== 'length') continue;
        const size = stated.quantity.value * 1000;
        const off = mark.kind === 'straight' ? betweenArrows(one, size, mark.side === 'above' || mark.side === 'below' ? 0 : 1) : Math.min(...byLeader(one, mark.sign).map((found) => Math.abs(found - size)));
        count += 1;
        if (off < TOLERANCE_MILLIMETRES) worst = Math.max(worst, off);
        else if (!(TOLD[part.kind] ?? []).includes(mark.of)) missed.push(`${name}: ${mark.of} ${size}, off by ${off}`);
      }
    }
    console.log(`${count} stated sizes measured; worst ${worst.toExponential(2)} mm`);
    expect(missed).toEqual([]);
    expect(count).toBeGreaterThan(600);
  });

  test('flanks and tapers lie at their angle', () => {
    const die = measured.get('inch-lower-die-third-angle')!;
    expect(Math.min(...die.slopes.map((slope) => Math.abs(slope - 80)))).toBeLessThan(1e-6);
    const key = measured.get('inch-lower-key-third-angle')!;
    expect(Math.min(...key.slopes.map((slope) => Math.abs(slope - (Math.atan(1 / 96) * 180) / Math.PI)))).toBeLessThan(1e-6);
  });

  test('signs come through: diameter, plus-minus and degree, and the word to check', () => {
    const texts = [...measured.values()].flatMap((one) => one.texts);
    expect(texts).toContain('10.0° ±0.2° from upright');
    expect(texts.some((text) => text.startsWith('Ø0.7500 d8'))).toBe(true);
    for (const one of measured.values()) expect(one.texts.some((text) => text.includes('CHECK BEFORE CUTTING'))).toBe(true);
  });
});

test('the same part gives the same file', () => {
  const found = pictureOf(inchHammer());
  const part = makeLowerDie(found.values, found.known);
  if (part.state !== 'to-make') throw new Error('not made');
  expect(makingDxf(found, part)).toBe(makingDxf(found, part));
});

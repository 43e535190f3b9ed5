import { describe, expect, test } from 'vitest';
import { partsToMake } from '../../src/derived/making/index.ts';
import { servingSpring, travelWanted, type SpringSizes } from '../../src/derived/making/spring-choice.ts';
import { settingSheet } from '../../src/derived/upkeep/index.ts';
import { orderBlocks } from '../../src/views/work/making-blocks.ts';
import { YARD } from './every-sheet.ts';

const INCH = 0.0254;
const KEEP = 0.2;
const G = 79.5e9;

/** By pencil: rate and stress of closed and ground ends, Bhandari, eq. 10.6 to 10.9. */
const rateOf = ({ wire: d, inside, coils }: SpringSizes): number => (G * d ** 4) / (8 * (inside + d) ** 3 * (coils - 2));
const stressOf = (spring: SpringSizes, travel: number): number => {
  const [d, D] = [spring.wire, spring.inside + spring.wire];
  const c = D / d;
  return (((4 * c - 1) / (4 * c - 4) + 0.615 / c) * 8 * rateOf(spring) * travel * D) / (Math.PI * d ** 3);
};
/** 0.56 of the older table for oil-tempered wire, the lower of the two: 1610 MPa / d^0.193 up to 1/2 in (1855 and 0.187 in the newer one). */
const stands = (wire: number): number => (0.56 * 1610e6) / (wire * 1e3) ** 0.193;

/** Springs that come a little or a lot too short, at several loads as set. */
const SWEEP = [0.375, 0.406, 0.437, 0.469, 0.5].flatMap((wire) => [2, 2.5, 3].flatMap((inside) => [8, 9.5, 11, 13].flatMap((coils) => [1.3, 1.5, 1.7, 1.9].flatMap((share) => [1.01, 1.04, 1.1, 1.25].flatMap((over) => [0.2, 0.5].map((set) => {
  const drawn: SpringSizes = { wire: wire * INCH, inside: inside * INCH, coils, free: share * coils * wire * INCH, ends: 'cold-ground' };
  const useful = (1 - KEEP) * (drawn.free - coils * drawn.wire);
  const [rate, wanted] = [rateOf(drawn), useful * over];
  const load = rate * wanted * set;
  return { drawn, useful, rate, wanted, demand: { load, force: rate * wanted * 0.9, energy: (rate * wanted ** 2 - load ** 2 / rate) / 2 } };
}))))));

describe.each(['inch', 'metric'])('what is offered for a spring that comes too short, %s bars', (system) => {
  const offered = SWEEP.flatMap((one) => {
    const other = servingSpring(one.drawn, one.demand, KEEP, system === 'metric');
    return other === undefined ? [] : [{ ...one, other }];
  });

  test('is offered at all, with the same wire where that is enough and with another where it is not', () => {
    expect(offered.length).toBeGreaterThan(SWEEP.length / 8);
    expect(offered.some(({ drawn, other }) => other.wire === drawn.wire && other.coils === drawn.coils)).toBe(true);
    expect(offered.some(({ drawn, other }) => other.wire !== drawn.wire)).toBe(true);
    expect(offered.length).toBeLessThan(SWEEP.length);
  });

  test('beats the drawn one in travel, and has the travel that energy and force ask of it even where it is wound 2 % short', () => {
    for (const { drawn, useful, rate, wanted, demand, other } of offered) {
      const own = rateOf(other);
      const solid = other.coils * other.wire;
      const down = Math.max(demand.force / own, Math.sqrt((demand.load / own) ** 2 + (2 * demand.energy) / own));
      const words = JSON.stringify({ drawn, other });
      expect((1 - KEEP) * (0.98 * other.free - solid), words).toBeGreaterThanOrEqual(down - 1e-9);
      // A stiffer one needs less travel for the same energy: what counts is what is left over, and that was below nothing.
      expect((1 - KEEP) * (other.free - solid) - down, words).toBeGreaterThan(useful - wanted);
      expect((1 - KEEP) * (other.free - solid), words).toBeGreaterThan(useful);
      expect(Math.abs(own / rate - 1), words).toBeLessThan(0.05);
      expect(other.free, words).toBeLessThanOrEqual(1.25 * drawn.free + 1e-9);
      expect(own * (other.free - other.set), words).toBeCloseTo(demand.load, 6);
    }
  });

  test('stands going solid in plain oil-tempered wire by the lower table', () => {
    for (const { other } of offered) if (other.wire <= 0.5 * INCH + 1e-9) expect(stressOf(other, other.free - other.coils * other.wire)).toBeLessThanOrEqual(stands(other.wire) * 1.0001);
  });

  test('has the travel that the drawn one lacks', () => {
    for (const { rate, wanted, demand } of SWEEP) expect(travelWanted(rate, demand)).toBeCloseTo(wanted, 9);
  });
});

describe.each(YARD.filter(({ name }) => name.startsWith('WH-65')))('of $name the order sheet', ({ found }) => {
  const spring = partsToMake(found).find((part) => part.kind === 'coil-spring');
  if (spring?.state !== 'to-make') throw new Error('no spring');
  const size = (name: string): number => spring.dimensions.find((one) => one.name === name)!.quantity.value;
  const line = settingSheet({ known: found.known, values: found.values, system: found.system, jobs: new Set(['spring.renew']) }).find((one) => one.id === 'spring-set')!;

  test('and the setting sheet have one installed length and one load, and both print both', () => {
    expect(size('installed-length')).toBe(line.target!.from!.value);
    // Free 9 in, solid 5.159 in, a fifth of 3.841 in kept: 5.927 in; it ran 7 1/16 - 5 3/8 = 1 11/16 in shorter than it stood.
    const length = 5.159 + 0.2 * 3.841 + 1.6875;
    expect(size('installed-length') / INCH).toBeCloseTo(length, 9);
    const load = ((G * (0.469 * INCH) ** 4) / (8 * (3.469 * INCH) ** 3 * 9)) * (9 - length) * INCH;
    expect(size('preload')).toBeCloseTo(load, 3);
    const [printed, bears] = found.system === 'inch' ? ['7.615', `${Math.round(load / 4.4482216152605)} lbf`] : ['193.4', `${Math.round(load)} N`];
    const sheet = JSON.stringify(orderBlocks(found));
    expect(sheet).toContain(`(${printed}`);
    if (found.system === 'inch') expect(sheet).toContain(`${bears} ±`);
    expect(line.target!.sentence).toContain(`Standing ${printed}`);
    expect(line.target!.sentence).toContain(`it bears ${bears}`);
  });

  test('says working coils, how square the ends are, and the outside limit', () => {
    expect(size('working-coils')).toBe(9);
    // Bore 3 + 0.060 in and wire 0.469 in + 1 %, twice.
    expect(size('outside-limit') / INCH).toBeCloseTo(3.06 + 2 * 0.47369, 9);
    // 9 in x tan 3 degrees = 0.4717 in, which is 7/16 in and a bit; 11.98 mm.
    expect(spring.notes.join(' ')).toContain(`Ends square to the axis within 3 degrees: stood on a plate beside a square, no coil stands off by more than ${found.system === 'inch' ? '7/16 in' : '11.5 mm'}`);
  });
});

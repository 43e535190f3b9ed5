import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restitutionAt, strike } from '../../src/derived/motion/contact.ts';
import { hammerNumbers } from '../../src/derived/motion/hammer-numbers.ts';
import { HammerRates } from '../../src/derived/motion/hammer-rates.ts';
import { runHammer, usualHammer } from '../../src/derived/motion/index.ts';
import { startState } from '../../src/derived/motion/start-state.ts';
import { integrate } from '../../src/methods/integrate/index.ts';

const b = usualHammer(25).spec;

describe('a blow', () => {
  it('keeps momentum, turns the relative speed round, and loses what the two masses lose', () => {
    const positive = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: 1000 }).map((k) => min + ((max - min) * k) / 1000);
    fc.assert(
      fc.property(positive(5, 60), positive(50, 2000), positive(-6, -0.5), positive(-0.3, 0.3), positive(0, 0.9), (m, M, v, u, e) => {
        const out = { ram: 0, anvil: 0, lost: 0 };
        strike(m, M, v, u, e, out);
        expect(Math.abs(m * out.ram + M * out.anvil - m * v - M * u)).toBeLessThan(1e-9 * m * 6);
        expect(Math.abs(out.ram - out.anvil - e * (u - v))).toBeLessThan(1e-9);
        const before = 0.5 * m * v * v + 0.5 * M * u * u;
        const after = 0.5 * m * out.ram ** 2 + 0.5 * M * out.anvil ** 2;
        expect(Math.abs(before - after - out.lost)).toBeLessThan(1e-8 * before);
      }),
      { seed: 2 },
    );
  });
  it('on an anvil at rest has the efficiency (1 - e^2) R/(R + 1): R = 20, e = 0.25 gives 0.8929; R = 10, e = 0.5 gives 0.6818', () => {
    // Rigid-body mechanics, four decimals; in step with 0.8 to 0.9 for soft blows (ASM Forging Handbook, hammers and presses).
    for (const [R, e, row] of [[20, 0, 0.9524], [20, 0.25, 0.8929], [20, 0.7, 0.4857], [10, 0.5, 0.6818], [5, 0.25, 0.7813]] as const) {
      const out = { ram: 0, anvil: 0, lost: 0 };
      strike(1, R, -4, 0, e, out);
      expect(Math.abs(out.lost / 8 - row)).toBeLessThan(0.51e-4);
    }
  });
  it('on work that yields gives back a fixed speed, and never more than the cap', () => {
    expect(restitutionAt(0.4, 0.5, 5)).toBeCloseTo(0.1, 12);
    expect(restitutionAt(0.4, 0.5, 0.1)).toBe(0.4);
    expect(restitutionAt(0.25, Infinity, 3)).toBe(0.25);
  });
});

describe('a contact that gives, made stiffer and stiffer', () => {
  const speed = 3.83;
  /** Free flight into a Hunt-Crossley contact: the share of the speed that comes back. */
  const comesBack = (K: number, chi: number): number => {
    const s = integrate(
      {
        slopes: (y, d) => {
          d[0] = y[1]!;
          const x = Math.max(0, -y[0]!);
          d[1] = (K * x * Math.max(0, 1 - chi * y[1]!)) / 25;
        },
        state: [0, -speed], from: 0, to: 1, events: [{ name: 'off', direction: 1, guard: (y) => y[0]!, stopAfter: 1 }],
      },
      { tolerance: { relative: 1e-9, absolute: 1e-12 }, longestStep: 1e-4, keep: false },
    );
    return s.state[1]! / speed;
  };
  it('tends to the blow by restitution', () => {
    const ours = runHammer(b, { duration: 4, relative: 1e-8, tryEither: false });
    if (ours.outcome !== 'ran') throw new Error(ours.outcome);
    const apart: number[] = [];
    for (const K of [1e8, 1e9, 1e10]) {
      let low = 0;
      let high = 20;
      for (let n = 0; n < 40; n++) {
        const chi = 0.5 * (low + high);
        if (comesBack(K, chi) > 0.25) low = chi;
        else high = chi;
      }
      const chi = 0.5 * (low + high);
      const numbers = hammerNumbers(b);
      const rates = new HammerRates(numbers);
      const struck = numbers[28]!;
      const blows: number[] = [];
      const s = integrate(
        {
          slopes: (y, d) => {
            rates.rates(y, d);
            const x = struck - y[0]!;
            if (x > 0) d[1] = d[1]! + (K * x * Math.max(0, 1 - chi * y[1]!)) / numbers[0]!;
          },
          state: startState(numbers, 'fast'), from: 0, to: 4,
          events: [
            { name: 'die', direction: -1, guard: (y) => y[0]! - struck },
            { name: 'top', direction: 1, guard: (y) => y[2]! - 2 * Math.PI, reset: (y) => y.map((v, i) => (i === 2 ? v - 2 * Math.PI : v)) },
          ],
        },
        { tolerance: { relative: 1e-8, absolute: 1e-9 }, longestStep: 2e-3, mostSteps: 1e6, keep: false },
      );
      expect(s.code).toBe('reached-end');
      for (const e of s.events) if (e.name === 'die' && e.before[1]! < -1) blows.push(12.5 * e.before[1]! ** 2);
      apart.push(Math.abs(blows[blows.length - 1]! / ours.blowEnergy - 1));
    }
    console.log(`compliant contact against restitution, blow energy: ${apart.map((v) => v.toExponential(1)).join(', ')} at 1e8, 1e9, 1e10 N/m`);
    expect(apart[2]!).toBeLessThan(apart[0]!);
    expect(apart[2]!).toBeLessThan(2e-3);
  });
});

describe('forces', () => {
  it('along the rod turn the crank: J w\' = clutch - bearing + rod force by its lever', () => {
    const n = hammerNumbers(b);
    const rates = new HammerRates(n, true);
    const y = new Float64Array(13);
    const d = new Float64Array(13);
    let worst = 0;
    for (let psi = 0.05; psi < 6.28; psi += 0.1) {
      const w = 33;
      const drive = 33.4;
      const carrier = b.throw * Math.cos(psi) - Math.sqrt(b.rodLength ** 2 - (b.throw * Math.sin(psi)) ** 2);
      y.set([b.frameHeight + carrier - 0.02, -1, psi, w, drive]);
      rates.rates(y, d);
      const sign = (v: number): number => v / Math.sqrt(1 + v * v);
      const torque = b.clutchTorque * sign((drive - w) / 0.3) - b.bearingFriction * sign(10 * w);
      const side = Math.sqrt(b.rodLength ** 2 - (b.throw * Math.sin(psi)) ** 2);
      const lever = (b.throw * Math.sin(psi) * (side - b.throw * Math.cos(psi))) / b.rodLength;
      worst = Math.max(worst, Math.abs(b.crankInertia * d[3]! - torque - rates.seen[4]! * lever));
    }
    expect(worst).toBeLessThan(1e-7);
  });
  it('of a hammer: the rod carries more than the suspension, links and guide less', () => {
    const r = runHammer(b);
    if (r.outcome !== 'ran') throw new Error(r.outcome);
    expect(r.peaks.rod).toBeGreaterThan(r.peaks.suspension);
    expect(r.peaks.guide).toBeLessThan(0.2 * r.peaks.suspension);
    expect(r.peaks.spring).toBeGreaterThan(36e3 * 0.048);
  });
});

describe('an anvil on its foundation', () => {
  const anvil = (mass: number, stiffness: number): number => {
    const r = runHammer({ ...b, anvil: { mass, stiffness, damping: 0.1 * Math.sqrt(mass * stiffness) } });
    if (r.outcome !== 'ran') throw new Error(r.outcome);
    return r.blowEnergy;
  };
  it('very heavy and very stiff is as one that does not move', () => {
    const r = runHammer(b);
    if (r.outcome !== 'ran') throw new Error(r.outcome);
    expect(Math.abs(anvil(1e6, 1e12) / r.blowEnergy - 1)).toBeLessThan(1e-3);
  });
  it('of ten times the ram takes its share of the blow and moves under it', () => {
    const r = runHammer({ ...b, anvil: { mass: 250, stiffness: 2e7, damping: 3e4 } });
    if (r.outcome !== 'ran') throw new Error(r.outcome);
    expect(Math.abs(r.efficiency - ((1 - 0.0625) * 10) / 11)).toBeLessThan(1e-12);
    expect(Math.abs(r.energyIntoWork / r.blowEnergy - r.efficiency)).toBeLessThan(0.02);
    // Undamped, the anvil would rise by its speed over its own frequency; damping leaves somewhat less.
    const kick = (1.25 * r.impactSpeed) / 11;
    const free = kick / Math.sqrt(2e7 / 250);
    expect(r.anvilTravel!).toBeGreaterThan(0.5 * free);
    expect(r.anvilTravel!).toBeLessThan(1.05 * free);
  });
});

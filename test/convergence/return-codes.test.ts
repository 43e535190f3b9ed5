import { describe, expect, it } from 'vitest';
import { FiveStateStepper, AnySizeStepper, ERROR_NORM, STEP, integrate } from '../../src/methods/integrate/index.ts';

const tolerance = { relative: 1e-8, absolute: 1e-8 };
const decay = (y: Float64Array, d: Float64Array): void => void (d[0] = -y[0]!);

describe('return codes: trouble is data, with the part that was reached', () => {
  it('a solution that runs away stops with a code and keeps the way there', () => {
    const s = integrate({ slopes: (y, d) => void (d[0] = y[0]! * y[0]!), state: [1], from: 0, to: 2 }, { tolerance });
    expect(['step-too-small', 'not-finite', 'too-many-steps']).toContain(s.code);
    expect(Math.abs(s.time - 1)).toBeLessThan(1e-3);
    expect(Math.abs(s.trajectory.at(0.5)[0]! - 2)).toBeLessThan(1e-6);
  });
  it('slopes that are not numbers from the start', () => {
    const s = integrate({ slopes: (_, d) => void (d[0] = NaN), state: [1], from: 0, to: 1 }, { tolerance });
    expect(s.code).toBe('not-finite');
    expect(s.state[0]).toBe(1);
  });
  it('slopes that are not numbers beyond a wall: the steps shrink and it is said so', () => {
    const s = integrate({ slopes: (y, d) => void (d[0] = Math.sqrt(1 - y[0]!)), state: [0], from: 0, to: 5 }, { tolerance });
    expect(Number.isFinite(s.state[0]!)).toBe(true);
  });
  it('the allowance of steps and of events', () => {
    expect(integrate({ slopes: decay, state: [1], from: 0, to: 1 }, { tolerance, mostSteps: 3 }).code).toBe('too-many-steps');
    const turn = (y: Float64Array, d: Float64Array): void => { d[0] = y[1]!; d[1] = -y[0]!; };
    const s = integrate({ slopes: turn, state: [1, 0], from: 0, to: 100, events: [{ name: 'z', direction: 0, guard: (y) => y[0]! }] }, { tolerance, mostEvents: 5 });
    expect(s.code).toBe('too-many-events');
    expect(s.events.length).toBe(5);
  });
  it('a question without sense names what is wrong', () => {
    expect(integrate({ slopes: decay, state: [NaN], from: 0, to: 1 }, { tolerance }).problem).toMatch(/component 0 is NaN/);
    expect(integrate({ slopes: decay, state: [1], from: 0, to: Infinity }, { tolerance }).code).toBe('bad-input');
    expect(integrate({ slopes: decay, state: [1], from: 0, to: 1 }, { tolerance: { relative: 0, absolute: 1 } }).problem).toMatch(/relative tolerance/);
    expect(integrate({ slopes: decay, state: [1], from: 0, to: 1 }, { tolerance, longestStep: -1 }).problem).toMatch(/longest step/);
  });
  it('no span at all is no error', () => {
    const s = integrate({ slopes: decay, state: [1], from: 3, to: 3 }, { tolerance });
    expect(s.code).toBe('reached-end');
    expect(s.trajectory.at(3)[0]).toBe(1);
  });
});

describe('the stepper of five', () => {
  // A driven pair of coupled swings with a clock of its own: nothing about it is alike in the five states.
  const rates = (y: Float64Array, d: Float64Array): void => {
    d[0] = y[1]!;
    d[1] = -4 * y[0]! + 0.7 * y[2]! - 0.1 * y[1]! * Math.abs(y[1]!);
    d[2] = y[3]!;
    d[3] = -9 * y[2]! + 0.7 * y[0]! + y[4]! * y[2]!;
    d[4] = 0.3 - 0.2 * y[4]! * y[4]!;
  };
  it('takes the same steps as the one for any size, to rounding', () => {
    const five = new FiveStateStepper({ rates }, tolerance);
    const any = new AnySizeStepper(5, rates, tolerance);
    const start = [1, -0.3, 0.2, 0.8, 0.1];
    five.state.set(start);
    any.state.set(start);
    const a = new Float64Array(5);
    const b = new Float64Array(5);
    for (const s of [five, any]) {
      s.begin();
      for (let n = 0; n < 200; n++) {
        s.clock[STEP] = 0.01 + 0.005 * (n % 7);
        s.attempt();
        s.prepareDense();
        s.dense(0.37, s === five ? a : b);
        s.accept();
      }
    }
    for (let i = 0; i < 5; i++) {
      expect(Math.abs(five.state[i]! - any.state[i]!)).toBeLessThan(1e-12);
      expect(Math.abs(a[i]! - b[i]!)).toBeLessThan(1e-12);
    }
    expect(five.clock[ERROR_NORM]! / any.clock[ERROR_NORM]!).toBeCloseTo(1, 6);
  });
  it('is the same to the last bit each time', () => {
    const run = (): string => {
      const s = integrate({ slopes: rates, state: [1, -0.3, 0.2, 0.8, 0.1], from: 0, to: 40 }, { tolerance });
      return [...s.state, s.steps, s.refused].map((v) => new Float64Array([v])).map((v) => new BigUint64Array(v.buffer)[0]!.toString(16)).join(' ');
    };
    const first = run();
    for (let n = 0; n < 5; n++) expect(run()).toBe(first);
  });
});

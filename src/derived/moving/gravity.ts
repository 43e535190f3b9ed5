import type { Distribution, Estimate } from '../../methods/chance/index.ts';
import { ensemble, positive, type Ranged } from '../capacity/index.ts';

/** What the height of the centre of gravity is made of. SI; heights above the floor. */
export interface Masses {
  readonly machine: Estimate;
  /** part of the machine's mass, low down; 0 where it was taken off */
  readonly anvil: Estimate;
  readonly ram: Estimate;
  readonly seatHeight: number;
  readonly shaftHeight: number;
  /** of the column: up to the shaft, or up to the top of a helve's frame */
  readonly columnHeight: number;
  readonly baseLength: number;
  readonly baseWidth: number;
}

/** How a machine stands. Angles in rad from the floor. */
export interface Standing {
  readonly gravityHeight: Ranged;
  /** tilt at which it goes over, to a side; forwards; backwards */
  readonly sideways: Ranged;
  readonly forwards: Ranged;
  readonly backwards: Ranged;
  /** N, level pull at the top of the column that starts it over its side */
  readonly pullAtTop: Ranged;
}

const triangle = (least: number, likely: number, most: number): Distribution => ({ kind: 'triangular', least, likely, most });

/**
 * Where the rest of the machine lies, as shares: what of the mass without anvil sits on the shaft, and how high column and base have
 * their middle. Judgement from the look of such machines; no hammer was weighed for it.
 */
const SHARES = { onShaft: triangle(0.12, 0.18, 0.26), columnMiddle: triangle(0.36, 0.43, 0.5), anvilMiddle: triangle(0.42, 0.5, 0.58), linkage: triangle(1.2, 1.5, 2), offset: triangle(-0.1, 0, 0.1) } as const;

export const GRAVITY_BASIS = 'judgement from the usual shape, no hammer was weighed for it: shaft, wheel and clutch 12 to 26 % of the mass without anvil; column and base with their middle at 36 to 50 % of the height of the column; centre within 10 % of the base length of its middle';

/** m/s² */
export const GRAVITY = 9.80665;

/**
 * Height of the centre of gravity and how far the machine may lean, with 95 % intervals.
 * @param seed whole number @param draws at least 100
 * @returns the standing; or a sentence where the masses cannot be together
 */
export function standingOf(masses: Masses, seed: number, draws = 1000): Standing | string {
  const { machine, anvil, ram } = masses;
  if (anvil.value + 2 * ram.value > 0.9 * machine.value) {
    return `anvil and ram leave too little for the rest of the machine; less than nine tenths of ${machine.value.toFixed(0)} kg is allowed: ${(anvil.value + 2 * ram.value).toFixed(0)} kg`;
  }
  const unknowns = { ...SHARES, machine: positive(machine), ram: positive(ram), anvil: anvil.value === 0 ? ({ kind: 'certain', value: 0 } as const) : positive(anvil) };
  const drawn = ensemble(unknowns, { seed, stream: 'moving', draws }, (x) => {
    const rest = x.machine - x.anvil - x.ram * x.linkage;
    const top = x.onShaft * (x.machine - x.anvil);
    if (!(rest > top)) return { height: Number.NaN, sideways: Number.NaN, forwards: Number.NaN, backwards: Number.NaN, pull: Number.NaN };
    const ramHeight = masses.seatHeight + 0.35 * (masses.columnHeight - masses.seatHeight);
    const moment = x.anvil * x.anvilMiddle * masses.seatHeight + x.ram * x.linkage * ramHeight + top * masses.shaftHeight + (rest - top) * x.columnMiddle * masses.columnHeight;
    const height = moment / x.machine;
    const off = x.offset * masses.baseLength;
    return {
      height, sideways: Math.atan(masses.baseWidth / 2 / height), forwards: Math.atan((masses.baseLength / 2 - off) / height), backwards: Math.atan((masses.baseLength / 2 + off) / height),
      pull: (x.machine * GRAVITY * masses.baseWidth) / 2 / masses.columnHeight,
    };
  });
  const because = 'the masses given do not fit together';
  return { gravityHeight: drawn.of('height', because), sideways: drawn.of('sideways', because), forwards: drawn.of('forwards', because), backwards: drawn.of('backwards', because), pullAtTop: drawn.of('pull', because) };
}

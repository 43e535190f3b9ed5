import { demandPositive } from '../../numerics/index.ts';
import { INCH, KSI } from '../source-units.ts';
import type { WireKind } from './wire-strength.ts';

const MPSI = 1000 * KSI;

/** Greatest wire of each step, m, and the modulus there, Pa (Shigley, Table 10-5, from memory). */
const STEPS: readonly number[] = [0.0325, 0.0635, 0.125].map((size) => size * INCH);
const MODULI: Readonly<Record<WireKind, readonly number[]>> = {
  music: [12.0, 11.85, 11.75, 11.6].map((value) => value * MPSI),
  'hard-drawn': [11.7, 11.6, 11.5, 11.4].map((value) => value * MPSI),
  'oil-tempered': [11.2 * MPSI],
  'chrome-vanadium': [11.2 * MPSI],
  'chrome-silicon': [11.2 * MPSI],
};

/**
 * Shear modulus of spring wire, Pa, by kind and thickness (Shigley, Table 10-5, from memory). The European figures for the same wire
 * are a little higher: `EUROPEAN_SHEAR_MODULUS`.
 * @param wire d, m, > 0
 */
export const shearModulusOfWire = (kind: WireKind, wire: number): number => {
  demandPositive('wire diameter', wire);
  const moduli = MODULI[kind];
  if (moduli.length === 1) return moduli[0]!;
  const step = STEPS.findIndex((greatest) => wire <= greatest);
  return moduli[step === -1 ? STEPS.length : step]!;
};

/** Shear modulus by EN 10270, Pa (from memory): cold-drawn patented wire, and oil-hardened and tempered wire. */
export const EUROPEAN_SHEAR_MODULUS = { patented: 81.5e9, 'oil-hardened': 79.5e9 } as const;

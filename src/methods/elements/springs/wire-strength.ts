import { demandPositive } from '../../numerics/index.ts';

export type WireKind = 'music' | 'oil-tempered' | 'hard-drawn' | 'chrome-vanadium' | 'chrome-silicon';

/** Two published tables disagree by up to a fifth; which one was used belongs on the sheet. */
export type WireTable = 'early' | 'late';

/** Constants of Sut = A / dᵐ, with A the strength of a wire of one millimetre. */
export interface WireConstants {
  /** A: tensile strength at 1 mm, Pa. */
  readonly strengthAtMillimetre: number;
  /** m, no unit. */
  readonly exponent: number;
  /** Wire diameters for which the table is printed, m; absent where no range is printed with it. */
  readonly from?: number;
  readonly to?: number;
}

/** Tensile strength of spring wire, or why there is none. */
export type WireStrength =
  | { readonly state: 'known'; readonly tensileStrength: number; readonly rangePrinted: boolean }
  | { readonly state: 'outside-validity'; readonly from: number; readonly to: number };

/**
 * - `early`: early editions of Shigley, Mechanical Engineering Design, and the licensing-examination handbook drawn from it.
 *   No range of wire is printed with it.
 * - `late`: Shigley, 7th edition and later, Table 10-4; music and chrome-vanadium confirmed, the rest from memory.
 */
export const WIRE_TABLES: Readonly<Record<WireTable, Readonly<Record<WireKind, WireConstants>>>> = {
  early: {
    music: { strengthAtMillimetre: 2060e6, exponent: 0.163 },
    'oil-tempered': { strengthAtMillimetre: 1610e6, exponent: 0.193 },
    'hard-drawn': { strengthAtMillimetre: 1510e6, exponent: 0.201 },
    'chrome-vanadium': { strengthAtMillimetre: 1790e6, exponent: 0.155 },
    'chrome-silicon': { strengthAtMillimetre: 1960e6, exponent: 0.091 },
  },
  late: {
    music: { strengthAtMillimetre: 2211e6, exponent: 0.145, from: 0.1e-3, to: 6.5e-3 },
    'oil-tempered': { strengthAtMillimetre: 1855e6, exponent: 0.187, from: 0.5e-3, to: 12.7e-3 },
    'hard-drawn': { strengthAtMillimetre: 1783e6, exponent: 0.19, from: 0.7e-3, to: 12.7e-3 },
    'chrome-vanadium': { strengthAtMillimetre: 2005e6, exponent: 0.168, from: 0.8e-3, to: 11.1e-3 },
    'chrome-silicon': { strengthAtMillimetre: 1974e6, exponent: 0.108, from: 1.6e-3, to: 9.5e-3 },
  },
};

/**
 * Least tensile strength of spring wire, Pa: Sut = A / dᵐ.
 * @param wire d, m, > 0; outside the printed range of the late table the answer says so
 */
export const wireStrength = (table: WireTable, kind: WireKind, wire: number): WireStrength => {
  const { strengthAtMillimetre, exponent, from, to } = WIRE_TABLES[table][kind];
  demandPositive('wire diameter', wire);
  if (from !== undefined && to !== undefined && (wire < from || wire > to)) return { state: 'outside-validity', from, to };
  return { state: 'known', tensileStrength: strengthAtMillimetre * (wire / 1e-3) ** -exponent, rangePrinted: from !== undefined };
};

/** Both tables' answers for one wire, Pa; absent where a table is not printed for it. */
export interface WireStrengthSides {
  readonly early: number;
  readonly late?: number;
  /** The lower of those that are there, and the table that it comes from. */
  readonly lower: number;
  readonly lowerTable: WireTable;
}

/**
 * Least tensile strength of a wire by both tables. Neither is known to be wrong, so a judgement shows both; what must not break
 * is reckoned with the lower.
 * @param wire d, m, > 0
 */
export const wireStrengthSides = (kind: WireKind, wire: number): WireStrengthSides => {
  const [early, late] = (['early', 'late'] as const).map((table) => wireStrength(table, kind, wire));
  // The early table prints no range, so that it answers for every wire.
  if (early?.state !== 'known') throw new RangeError(`The early table of wire strengths holds every wire above 0 mm: ${wire}`);
  if (late?.state !== 'known') return { early: early.tensileStrength, lower: early.tensileStrength, lowerTable: 'early' };
  const lowerTable = late.tensileStrength < early.tensileStrength ? 'late' : 'early';
  return { early: early.tensileStrength, late: late.tensileStrength, lower: Math.min(early.tensileStrength, late.tensileStrength), lowerTable };
};

import type { Quantity } from '../../methods/quantity/index.ts';
import type { Shape } from './shape.ts';

/** What a part may differ from its size by, SI. */
export interface Tolerance {
  /** Upper deviation; below 0 where even the largest is under the size, as on a running shaft. */
  readonly plus: number;
  /** Lower deviation with its sign turned: 0.001 allows a thousandth under the size. */
  readonly minus: number;
}

/** One figure of a part: on the drawing by its name, in the table with what it rests on. */
export interface MakingDimension {
  readonly name: string;
  readonly title: string;
  /** With the doubt that the readings leave in it. */
  readonly quantity: Quantity;
  readonly tolerance: Tolerance;
  readonly why: string;
  /** Keys of the values that it was worked out from. */
  readonly from: readonly string[];
  /** True where it rests on a class default or a figure of practice: an estimate, and shown as one. */
  readonly estimate: boolean;
  /** True where metal is left on and the part is fitted in place: its doubt is no reason to wait. */
  readonly fitted?: true;
  /** Tolerance letters of ISO 286 behind the size, as `e8`. */
  readonly fit?: string;
}

/** What was not measured, and how to find it. Never guessed. */
export interface Unknown {
  /** Value key where there is a measuring place for it. */
  readonly key?: string;
  readonly what: string;
  readonly how: string;
}

export type PartKind =
  | 'filler-plate' | 'lower-die' | 'upper-die' | 'lower-key' | 'upper-key' | 'crank-pin' | 'toggle-pin' | 'toggle-bushing' | 'crosshead-bushing' | 'rod-bushing'
  | 'clutch-pulley-bushing' | 'bow-leaf' | 'bow-eye-bushing' | 'bow-clip-bushing' | 'helve-bushing' | 'guide-shims' | 'coil-spring' | 'belt' | 'motor-pulley'
  | 'countershaft-driven' | 'countershaft-driver' | 'bow-eye-pin' | 'bow-clip-pin' | 'helve-pin' | 'crosshead-pin' | 'treadle-pin' | 'treadle-bushing' | 'thrust-washer' | 'bow-strap' | 'helve-cushion' | 'ram-prop' | 'sole-timbers';

/** Parts that an open job makes and that have no drawing. */
export type PatternKind = 'shipper-joint' | 'toggle-links' | 'toggle-arms' | 'connecting-rod' | 'spring-bolt' | 'bow-clip' | 'shim-retainer' | 'brake-band' | 'brake-lining' | 'head-bolts' | 'guide-bolts' | 'cap-bolts' | 'return-spring';

/** A practice that the trade does not agree on, and the side that the drawing takes. */
export interface PartDispute {
  readonly about: string;
  readonly oneSide: string;
  readonly otherSide: string;
  readonly source: string;
  readonly taken: 'oneSide' | 'otherSide';
  /** Why that side, in a sentence. */
  readonly because: string;
}

/** A part that a shop can make from its drawing. */
export interface PartToMake {
  readonly state: 'to-make';
  readonly kind: PartKind;
  readonly id: string;
  readonly title: string;
  readonly quantity: number;
  readonly material: string;
  readonly hardness: string;
  /** kg each, as drawn and without what is not drawn; absent where it says nothing. */
  readonly mass?: number;
  /** Roughness Ra of every machined face that carries no sign of its own, m; absent where nothing is machined. */
  readonly roughness?: number;
  /** For the machinist: on the drawing. */
  readonly notes: readonly string[];
  readonly dimensions: readonly MakingDimension[];
  readonly shape: Shape;
  /** Names of sizes that may be nothing, as a shim pack all taken out. */
  readonly mayVanish?: readonly string[];
  /** What must still be measured before the part is finished; the drawing leaves it out. */
  readonly unknowns: readonly Unknown[];
  /** Two sides of a practice that the trade does not agree on. */
  readonly disputes: readonly PartDispute[];
  /** What is bought for it besides what it is cut from: nuts, washers, split pins, dowels; in words, for all of them together. */
  readonly besides?: readonly string[];
  /** Ids of knowledge's cautions. */
  readonly cautions: readonly string[];
  /** Ids of knowledge's sources. */
  readonly sources: readonly string[];
  /** What makes the figures doubtful; printed on the sheet. */
  readonly warnings: readonly string[];
}

/** Why a part cannot be drawn. */
export type NotMade =
  | { readonly state: 'not-known'; readonly kind: PartKind; readonly title: string; readonly missing: readonly Unknown[] }
  | { readonly state: 'cannot-be'; readonly kind: PartKind; readonly title: string; readonly because: string; readonly problem: string }
  /** Made to the old part, built to its place, or bought by its size, without a drawing; says what to read first. */
  | { readonly state: 'by-pattern'; readonly kind: PatternKind; readonly title: string; readonly because: string }
  | { readonly state: 'not-needed'; readonly kind: PartKind; readonly title: string; readonly because: string };

export type Making = PartToMake | NotMade;

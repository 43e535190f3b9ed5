import type { MotorToFit } from '../power/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { PartKind } from './part-to-make.ts';
import type { RamHeld } from './ram-held.ts';

/** What else is done at the same time, and in which units the shop works. */
export interface MakingContext {
  readonly system: PrintSystem;
  /** Parts made together with this one: a new lower die is as high as made only where the upper one is new too. */
  readonly alsoMade: ReadonlySet<PartKind>;
  /** True where the seat floor is milled flat right across, down to the deepest place that the die has beaten. */
  readonly floorCut: boolean;
  /** True where an open job grinds both faces: a die that stays comes back lower by its hollow at the least. */
  readonly pairGround?: boolean;
  /** The motor that an open job fits; what it drives is reckoned for it and not for the old one. */
  readonly motor?: MotorToFit;
  /** With which dies out the open jobs have the ram held up; with both in where left out. */
  readonly ramHeld?: readonly RamHeld[];
}

/** One part by itself, in inches. */
export const ALONE: MakingContext = { system: 'inch', alsoMade: new Set(), floorCut: false };

import type { MotorToFit } from '../power/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { PartKind } from './part-to-make.ts';

/** What else is done at the same time, and in which units the shop works. */
export interface MakingContext {
  readonly system: PrintSystem;
  /** Parts made together with this one: a new lower die is as high as made only where the upper one is new too. */
  readonly alsoMade: ReadonlySet<PartKind>;
  /** True where the seat floor is milled or ground flat over its whole width. */
  readonly floorCut: boolean;
  /** The motor that an open job fits; what it drives is reckoned for it and not for the old one. */
  readonly motor?: MotorToFit;
}

/** One part by itself, in inches. */
export const ALONE: MakingContext = { system: 'inch', alsoMade: new Set(), floorCut: false };

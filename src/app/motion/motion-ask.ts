import type { Adjustment, AssumedWeight, MapAxis, MapCell, MapPatch, MotionDoubt, MotionResult, MotionSpec, MotionTrial, Reach, SettingName, SurveySpec } from '../../derived/motion/index.ts';

/** A setting put in the place of the one found, in the simulator's SI. */
export type Change = readonly [name: SettingName, value: number];

/** What a page may ask a worker, each with a number by which the answer is known. */
export type MotionAsk =
  | { readonly kind: 'run'; readonly id: number; readonly spec: MotionSpec; readonly assumed: readonly string[] }
  | { readonly kind: 'advice'; readonly id: number; readonly survey: SurveySpec; readonly changes: readonly Change[]; readonly spec: MotionSpec; readonly seed: number; readonly leaves: number | undefined; readonly reaches: readonly Reach[] }
  | { readonly kind: 'map'; readonly id: number; readonly spec: MotionSpec; readonly x: MapAxis; readonly y: MapAxis; readonly size: number; readonly share: number; readonly shares: number }
  | { readonly kind: 'line'; readonly id: number; readonly spec: MotionSpec; readonly x: MapAxis; readonly y: MapAxis; readonly count: number };

/** One place on a line of settings. */
export interface LinePlace {
  readonly at: number;
  readonly x: number;
  readonly y: number;
  readonly cell: MapCell;
}

/** What comes back. A map comes in many parts; `done` ends it. */
export type MotionAnswer =
  | { readonly kind: 'run'; readonly id: number; readonly result: MotionResult }
  | { readonly kind: 'doubt'; readonly id: number; readonly doubt: MotionDoubt }
  | { readonly kind: 'weights'; readonly id: number; readonly weights: readonly AssumedWeight[] }
  | { readonly kind: 'trials'; readonly id: number; readonly trials: readonly MotionTrial[] }
  | { readonly kind: 'adjustments'; readonly id: number; readonly adjustments: readonly Adjustment[] }
  | { readonly kind: 'patches'; readonly id: number; readonly patches: readonly MapPatch[]; readonly done: boolean }
  | { readonly kind: 'line'; readonly id: number; readonly places: readonly LinePlace[] }
  | { readonly kind: 'failed'; readonly id: number; readonly words: string };

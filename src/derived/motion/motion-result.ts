import type { ReturnCode } from '../../methods/integrate/index.ts';
import type { BeatClass, SecondSound } from './beat-class.ts';
import type { BeatKind } from './beat-log.ts';
import type { SpecProblem } from './check-spec.ts';
import type { EnergyAudit } from './energy-audit.ts';

/** The last turns at even times, for drawing: one number a sample in every column. */
export interface MotionTrace {
  /** s */
  readonly time: Float64Array;
  /** rad from top dead centre */
  readonly angle: Float64Array;
  /** m, height of the upper die over the lower as set */
  readonly gap: Float64Array;
  /** m/s, up positive */
  readonly speed: Float64Array;
  /** m, height of the carrier, from its middle of stroke (at the head for a helve) */
  readonly carrier: Float64Array;
  /** N of the suspension on the ram, up positive */
  readonly force: Float64Array;
  /** N along the rod, tension positive */
  readonly rod: Float64Array;
  /** N with which the rod's lean pushes the ram sideways, signed with the lean */
  readonly side: Float64Array;
  /** J of the ram */
  readonly energy: Float64Array;
  /** rad/s */
  readonly crankSpeed: Float64Array;
  /** m, how far the ram hangs below link level */
  readonly hang: Float64Array;
}

/** A beat in the trace's span, for marking and for sounding. */
export interface TraceBeat {
  readonly time: number;
  readonly kind: BeatKind;
  /** m/s */
  readonly speed: number;
  /** rad */
  readonly angle: number;
  /** dB against the loudest in the span */
  readonly level: number;
  /** true for the blow of a turn */
  readonly blow: boolean;
}

/** Largest forces over the settled turns, N. */
export interface PeakForces {
  /** suspension on ram */
  readonly suspension: number;
  /** in one link or strap */
  readonly link: number;
  /** in the spring */
  readonly spring: number;
  /** along the rod, and so on crank pin and carrier pin */
  readonly rod: number;
  /** of the ram on its guide, from the rod's lean */
  readonly guide: number;
}

/** What is left before something meets something, least over the settled turns; negative where it has met, m. */
export interface ClearancesLeft {
  readonly joint: number;
  readonly upper: number;
  /** ram over the fixed ledge */
  readonly ledge: number;
  /** spring to solid */
  readonly spring: number;
}

/** Everything one hammer does at one setting. */
export interface MotionRan {
  readonly outcome: 'ran';
  readonly beatClass: BeatClass;
  /** m, height of the ram's travel */
  readonly stroke: number;
  /** m/s */
  readonly impactSpeed: number;
  /** J of the moving mass just before the blow: mean, least, most over the settled blows */
  readonly blowEnergy: number;
  readonly blowEnergyLow: number;
  readonly blowEnergyHigh: number;
  /** J that stays in the work and the frame at the blow */
  readonly energyIntoWork: number;
  /** 0 to 1, share of the blow's energy that goes into the work: (1 - e^2) R/(R + 1) by the anvil ratio, or from the anvil where modelled */
  readonly efficiency: number;
  /** rad after top dead centre; `beforeBottom` the same before bottom dead centre */
  readonly blowAngle: number;
  readonly beforeBottom: number;
  /** turns a second of the crank, and what of the drive's speed is lost to slip, 0 to 1 */
  readonly rate: number;
  readonly slip: number;
  /** blows a second */
  readonly blowsPerSecond: number;
  readonly missed: number;
  readonly turns: number;
  readonly secondSounds: readonly SecondSound[];
  readonly unevenness: number;
  readonly peaks: PeakForces;
  readonly left: ClearancesLeft;
  /** m of the anvil, peak, where it is modelled */
  readonly anvilTravel?: number;
  /** W taken from the motor, mean over the whole run */
  readonly power: number;
  /** what it does when started the other way, where that is something else */
  readonly canDoEither?: { readonly beatClass: BeatClass; readonly blowEnergy: number };
  readonly trace: MotionTrace;
  readonly beats: readonly TraceBeat[];
  readonly audit: EnergyAudit;
  /** dotted names of the values taken from the class and not measured */
  readonly assumed: readonly string[];
}

/** The specification cannot be run. */
export interface MotionRefused {
  readonly outcome: 'refused';
  readonly problems: readonly SpecProblem[];
}

/** It was run, and the run did not reach its end. */
export interface MotionNotComputed {
  readonly outcome: 'not-computed';
  readonly code: ReturnCode;
  /** s reached */
  readonly time: number;
  readonly sentence: string;
}

export type MotionResult = MotionRan | MotionRefused | MotionNotComputed;

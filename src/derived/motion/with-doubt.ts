import { nextUniform, normalQuantile, seeded, type Generator } from '../../methods/chance/index.ts';
import { BEAT_CLASSES, type BeatClass } from './beat-class.ts';
import type { MotionSpec } from './motion-spec.ts';
import type { MotionRan } from './motion-result.ts';
import { runHammer } from './run-hammer.ts';
import { restGapOf, withSetting } from './setting.ts';
import type { SurveySpec } from './spec-of-survey.ts';

/** Nine likenesses in ten lie between these, and half below the middle. */
export interface Spread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What a hammer does when everything that is not known of it is let play within its doubt. */
export interface MotionDoubt {
  /** likenesses drawn, and how many of them could be run */
  readonly drawn: number;
  readonly ran: number;
  /** how often each beat came of those that ran, most frequent first */
  readonly classes: readonly { readonly beatClass: BeatClass; readonly share: number }[];
  /** J, m/s, rad, turns a second, m; absent where no likeness struck */
  readonly blowEnergy?: Spread;
  readonly impactSpeed?: Spread;
  readonly beforeBottom?: Spread;
  readonly rate?: Spread;
  readonly jointLeft?: Spread;
  readonly upperLeft?: Spread;
}

/** Standard spread of a value that comes from the class, as a share of it; common practice, no source. Others have a tenth. */
const SHARE: Readonly<Record<string, number>> = {
  'suspension.tipDraw': 0.2, 'suspension.squeeze': 0.2, 'suspension.cushionRate': 0.25, 'suspension.preCompression': 0.15, 'suspension.hardening': 0.5,
  jointStop: 0.12, upperStop: 0.12, ledgeClearance: 0.2, guideFriction: 0.5, sideFriction: 0.3, viscous: 0.4, pinFriction: 0.4, bearingFriction: 0.4,
  crankInertia: 0.25, carrierMass: 0.15, motorInertia: 0.3, pullOutSlip: 0.2, clutchTorque: 0.2, workThickness: 0, treadle: 0, stopStiffness: 0.3, stopDamping: 0.3,
  'suspension.solidRate': 0.3, driveSpeed: 0.05, frameHeight: 0, stackLoss: 0, 'contact.restitution': 0.2,
};
/** The same for values near nothing, as they are, rad. */
const WIDTH: Readonly<Record<string, number>> = { 'suspension.armAngle': 0.03, 'suspension.crankOffset': 0.04, 'suspension.pathAngle': 0.05 };
/** Rest gap that nobody read, m. */
const GAP_WIDTH = 0.003;

/** How the likenesses are drawn and run. */
export interface DoubtOptions {
  /** whole number, 0 to 2^53 - 1 */
  readonly seed: number;
  /** 12 to 64; 24 unless said */
  readonly runs?: number;
  /** s of each run; 4 unless said */
  readonly duration?: number;
}

/**
 * Runs a small population of likenesses of one hammer: readings within their uncertainty, the rest within the spread of its class.
 * The same seed gives the same population, whatever else is asked.
 * @param survey what was read, with its doubt, and what is assumed
 * @param proposal settings laid over every likeness, where they are to be tried with a change; its own values are taken as set exactly
 */
export function motionWithDoubt(survey: SurveySpec, options: DoubtOptions, proposal: (spec: MotionSpec) => MotionSpec = (spec) => spec): MotionDoubt {
  const runs = options.runs ?? 24;
  if (!(Number.isInteger(runs) && runs >= 1 && runs <= 64)) throw new Error(`a population of likenesses has 1 to 64: ${runs}`);
  const generator = seeded(options.seed, 'motion');
  const ran: MotionRan[] = [];
  for (let n = 0; n < runs; n += 1) {
    const result = runHammer(proposal(likeness(survey, generator)), { relative: 1e-4, duration: options.duration ?? 4, sampleEvery: 2e-3, tryEither: false });
    if (result.outcome === 'ran') ran.push(result);
  }
  const struck = ran.filter((one) => one.blowEnergy > 0);
  const classes = BEAT_CLASSES.map((beatClass) => ({ beatClass, share: ran.filter((one) => one.beatClass === beatClass).length / Math.max(1, ran.length) })).filter((one) => one.share > 0).sort((a, b) => b.share - a.share);
  const common = { drawn: runs, ran: ran.length, classes };
  if (struck.length < 3) return common;
  const of = (pick: (one: MotionRan) => number): Spread => spreadOf(struck.map(pick));
  return {
    ...common, blowEnergy: of((one) => one.blowEnergy), impactSpeed: of((one) => one.impactSpeed), beforeBottom: of((one) => one.beforeBottom),
    rate: of((one) => one.rate), jointLeft: of((one) => one.left.joint), upperLeft: of((one) => one.left.upper),
  };
}

/**
 * Standard spread of a value that comes from the class, SI; 0 where it has none of its own.
 * @param name dotted name in the specification
 * @param value as assumed
 */
export const spreadOfAssumed = (name: string, value: number): number => (name === 'frameHeight' ? GAP_WIDTH : (WIDTH[name] ?? Math.abs(value) * (SHARE[name] ?? 0.1)));

/** One plausible hammer behind the readings. */
function likeness(survey: SurveySpec, generator: Generator): MotionSpec {
  const chance = (): number => Math.max(-2.5, Math.min(2.5, normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, nextUniform(generator))))));
  let spec = survey.spec;
  let gap = restGapOf(spec) + chance() * (survey.used.find((one) => one.name === 'restGap')?.uncertainty ?? GAP_WIDTH);
  for (const { name, uncertainty } of survey.used) {
    const z = chance();
    if (name !== 'restGap') spec = withValue(spec, name, (value) => Math.max(0, value + z * uncertainty));
  }
  for (const name of survey.assumed) {
    const z = chance();
    const width = WIDTH[name];
    spec = withValue(spec, name, (value) => (width === undefined ? value * Math.max(0.2, 1 + z * (SHARE[name] ?? 0.1)) : value + z * width));
  }
  gap = Math.max(0.001, gap);
  return withSetting(spec, 'restGap', gap);
}

/** A specification with one value, by its dotted name, made another; left as it is where it has no such number. */
export function withValue(spec: MotionSpec, name: string, change: (value: number) => number): MotionSpec {
  const [outer, inner] = name.split('.') as [keyof MotionSpec, string | undefined];
  const held = spec[outer];
  if (inner === undefined) return typeof held === 'number' ? { ...spec, [outer]: change(held) } : spec;
  const value = (held as unknown as Record<string, unknown> | undefined)?.[inner];
  return typeof value === 'number' ? { ...spec, [outer]: { ...(held as object), [inner]: change(value) } } : spec;
}

function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = sorted[Math.floor(place)] ?? 0;
    return below + (place - Math.floor(place)) * ((sorted[Math.ceil(place)] ?? below) - below);
  };
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}

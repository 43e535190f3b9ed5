import { BEAT_NAMES, BeatLog } from './beat-log.ts';
import { checkSpec } from './check-spec.ts';
import { restitutionAt } from './contact.ts';
import { energyAudit } from './energy-audit.ts';
import { hammerNumbers } from './hammer-numbers.ts';
import { AUDIT } from './hammer-rates.ts';
import { hammerRun } from './hammer-run.ts';
import type { RunEnd } from './hammer-run.ts';
import type { MotionNotComputed, MotionResult, TraceBeat } from './motion-result.ts';
import type { MotionSpec } from './motion-spec.ts';
import { settledBeats } from './settled-beats.ts';
import type { SettledBeats } from './settled-beats.ts';
import { startState } from './start-state.ts';
import type { StartKind } from './start-state.ts';
import { TraceRecorder } from './trace-recorder.ts';

/** How closely and how long to look. */
export interface RunOptions {
  /** s, 2 to 60; 8 unless said */
  readonly duration?: number;
  /** relative tolerance, 1e-10 to 1e-3; 1e-6 unless said */
  readonly relative?: number;
  /** how it is started; `fast` unless said */
  readonly start?: StartKind;
  /** s of trace kept from the end; two turns unless said */
  readonly traceSeconds?: number;
  /** s between samples; half a millisecond unless said */
  readonly sampleEvery?: number;
  /** look whether the other start ends in something else; true unless said */
  readonly tryEither?: boolean;
  /** dotted names of assumed values, passed through to the answer */
  readonly assumed?: readonly string[];
}

/** Steps allowed for a run: far more than any hammer that can be built takes. */
export function stepsAllowed(duration: number, relative: number): number {
  return Math.ceil(20_000 * duration * Math.max(1, (1e-6 / relative) ** 0.2));
}

/** A log with room for what a run of this length may hold. */
export function logFor(duration: number, driveSpeed: number): BeatLog {
  const turns = Math.ceil((duration * driveSpeed * 1.5) / 6.28) + 8;
  return new BeatLog(60 * turns, turns);
}

/** True where two settled states are not the same thing. */
export function differ(a: SettledBeats, b: SettledBeats): boolean {
  if (a.beatClass !== b.beatClass) return true;
  return Math.abs(a.energy - b.energy) > 0.05 * Math.max(a.energy, b.energy);
}

/** Says how a run that did not reach its end failed. */
export function notComputed(end: RunEnd): MotionNotComputed {
  const why: Partial<Record<RunEnd['code'], string>> = {
    'too-many-steps': 'it needs more steps than are allowed',
    'too-many-events': 'its beats follow one another too fast to be followed',
    'step-too-small': 'the motion changes faster than it can be followed',
    'not-finite': 'the motion is no longer a number',
  };
  return {
    outcome: 'not-computed', code: end.code, time: end.time,
    sentence: `the motion was not computed beyond ${end.time.toFixed(3)} s: ${why[end.code] ?? end.code}`,
  };
}

/**
 * Runs one hammer until it has settled and says all that it does.
 *
 * @param spec checked here; what is wrong comes back as `refused` with the field and a sentence
 * @returns never throws and holds no number that is not finite
 */
export function runHammer(spec: MotionSpec, options: RunOptions = {}): MotionResult {
  const problems = checkSpec(spec);
  const duration = options.duration ?? 8;
  const relative = options.relative ?? 1e-6;
  if (!(duration >= 2 && duration <= 60)) problems.push({ field: 'duration', sentence: `the run must last long enough to settle; allowed is 2 to 60 s: ${duration}` });
  if (!(relative >= 1e-10 && relative <= 1e-3)) problems.push({ field: 'relative', sentence: `the tolerance cannot be that; allowed is 1e-10 to 1e-3: ${relative}` });
  const every = options.sampleEvery ?? 5e-4;
  if (!(every >= 1e-5 && every <= 0.1)) problems.push({ field: 'sampleEvery', sentence: `the samples cannot be so far apart; allowed is 0.00001 to 0.1 s: ${every}` });
  if (problems.length > 0) return { outcome: 'refused', problems };

  const numbers = hammerNumbers(spec);
  const log = logFor(duration, spec.driveSpeed);
  const start = options.start ?? 'fast';
  const period = 6.283185307179586 / spec.driveSpeed;
  const traceFrom = duration - Math.min(duration, Math.max(options.traceSeconds ?? 2.2 * period, every));
  const ledgeHeight = spec.stackLoss - spec.ledgeClearance;
  const recorder = new TraceRecorder(Math.min(0.6 * duration, traceFrom), every, traceFrom, numbers, ledgeHeight);
  const first = startState(numbers, start);
  const settings = { duration, relative, mostSteps: stepsAllowed(duration, relative) };
  const end = hammerRun(numbers, first, { ...settings, audit: true, sampler: recorder }, log);
  if (end.code !== 'reached-end') return notComputed(end);

  const ledge = ledgeHeight > spec.workThickness;
  const beats = settledBeats(log, ledge);
  const whole = new Float64Array(end.state.length);
  whole.set(first);
  const audit = energyAudit(numbers, whole, end.state, end.blowLoss);
  const marks = traceBeats(log, beats, traceFrom);

  let either: { beatClass: SettledBeats['beatClass']; blowEnergy: number } | undefined;
  if (options.tryEither ?? true) {
    const other = logFor(duration, spec.driveSpeed);
    const otherEnd = hammerRun(numbers, startState(numbers, start === 'fast' ? 'slow' : 'fast'), settings, other);
    const otherBeats = settledBeats(other, ledge);
    if (otherEnd.code === 'reached-end' && differ(beats, otherBeats)) either = { beatClass: otherBeats.beatClass, blowEnergy: otherBeats.energy };
  }
  const e = restitutionAt(numbers[29]!, numbers[30]!, beats.impactSpeed);
  const ratio = spec.anvil === undefined ? spec.anvilRatio : spec.anvil.mass / numbers[0]!;
  const crank = beats.rate * 6.283185307179586;
  return {
    outcome: 'ran',
    beatClass: beats.beatClass,
    stroke: recorder.strokeHeight,
    impactSpeed: beats.impactSpeed,
    blowEnergy: beats.energy,
    blowEnergyLow: beats.energyLow,
    blowEnergyHigh: beats.energyHigh,
    energyIntoWork: beats.lost,
    efficiency: beats.blows.length === 0 ? 0 : ((1 - e * e) * ratio) / (ratio + 1),
    blowAngle: beats.blowAngle,
    beforeBottom: beats.blows.length === 0 ? 0 : Math.PI - beats.blowAngle,
    rate: beats.rate,
    slip: Math.max(0, 1 - crank / spec.driveSpeed),
    blowsPerSecond: beats.turns === 0 ? 0 : (beats.rate * (beats.turns - beats.missed)) / beats.turns,
    missed: beats.missed,
    turns: beats.turns,
    secondSounds: beats.secondSounds,
    unevenness: beats.unevenness,
    peaks: recorder.peaks,
    left: recorder.left,
    ...(spec.anvil === undefined ? {} : { anvilTravel: recorder.anvilTravel }),
    power: audit.input / duration,
    ...(either === undefined ? {} : { canDoEither: either }),
    trace: recorder.trace(),
    beats: marks,
    audit,
    assumed: options.assumed ?? [],
  };
}

/** The beats inside the trace, with levels against the loudest of them. */
function traceBeats(log: BeatLog, beats: SettledBeats, from: number): TraceBeat[] {
  const main = new Set(beats.blows);
  const marks: Omit<TraceBeat, 'level'>[] = [];
  let loudest = 0;
  for (let i = 0; i < log.count; i++) {
    if (log.time[i]! < from) continue;
    loudest = Math.max(loudest, log.speed[i]!);
    marks.push({ time: log.time[i]!, kind: BEAT_NAMES[log.kind[i]!]!, speed: log.speed[i]!, angle: log.angle[i]!, blow: main.has(i) });
  }
  return marks.map((m) => ({ ...m, level: 20 * Math.log10(m.speed / loudest) }));
}

/** Names of the sums in the audit, in the order a report shows them. */
export const AUDIT_NAMES = AUDIT;

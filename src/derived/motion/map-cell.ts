import type { BeatLog } from './beat-log.ts';
import { BEAT_CLASSES } from './beat-class.ts';
import type { BeatClass } from './beat-class.ts';
import { checkSpec } from './check-spec.ts';
import { hammerNumbers } from './hammer-numbers.ts';
import { hammerRun } from './hammer-run.ts';
import type { MotionSpec } from './motion-spec.ts';
import { logFor, stepsAllowed } from './run-hammer.ts';
import { settledBeats } from './settled-beats.ts';
import { startState } from './start-state.ts';

/** What one setting does, in a few numbers. */
export interface MapCell {
  readonly beatClass: BeatClass;
  /** place in `BEAT_CLASSES` */
  readonly code: number;
  /** J of the ram at the blow; 0 without one */
  readonly energy: number;
  /** dB and s of the loudest second sound; 0 and 0 without one */
  readonly level: number;
  readonly delay: number;
  /** what it does when started slowly, where that was asked and is something else */
  readonly either?: BeatClass;
}

/** How each cell is run. */
export interface CellSettings {
  /** s, 6 unless said */
  readonly duration?: number;
  /** relative tolerance, 1e-4 unless said */
  readonly relative?: number;
  /** run every cell from both starts; false unless said */
  readonly either?: boolean;
}

const empty = { energy: 0, level: 0, delay: 0 };
const cell = (beatClass: BeatClass, more = empty): MapCell => ({ beatClass, code: BEAT_CLASSES.indexOf(beatClass), ...more });

/** Runs one specification as a cell of a map. Pure; the log is scratch that may be used again. */
export function mapCell(spec: MotionSpec, settings: CellSettings = {}, scratch?: BeatLog): MapCell {
  if (checkSpec(spec).length > 0) return cell('refused');
  const duration = settings.duration ?? 6;
  const relative = settings.relative ?? 1e-4;
  const numbers = hammerNumbers(spec);
  const log = scratch ?? logFor(duration, spec.driveSpeed);
  const run = { duration, relative, mostSteps: stepsAllowed(duration, relative) };
  const ledge = spec.stackLoss - spec.ledgeClearance > spec.workThickness;
  if (hammerRun(numbers, startState(numbers, 'fast'), run, log).code !== 'reached-end') return cell('not-computed');
  const beats = settledBeats(log, ledge);
  const loudest = beats.secondSounds[0];
  const found = cell(beats.beatClass, { energy: beats.energy, level: loudest?.level ?? 0, delay: loudest?.delay ?? 0 });
  if (settings.either !== true) return found;
  if (hammerRun(numbers, startState(numbers, 'slow'), run, log).code !== 'reached-end') return found;
  const other = settledBeats(log, ledge).beatClass;
  return other === found.beatClass ? found : { ...found, either: other };
}

import type { Picture, PrintSystem } from '../../derived/index.ts';
import type { MotionRan, MotionSpec } from '../../derived/motion/index.ts';
import { shownLength } from './shown.ts';

/** Something that meets or nearly meets; drawn on the figure where it happens. */
export interface MotionWarning {
  readonly id: 'joint' | 'upper' | 'ledge' | 'spring' | 'slip';
  /** Short, for the figure. */
  readonly mark: string;
  readonly words: string;
}

/** m below which a clearance is worth a warning. */
const NEAR = 0.003;
/** Slip of the drive that a hammer which keeps its speed stays under; common practice, no source. */
const MUCH_SLIP = 0.08;

/** What somebody saw that outranks the reckoning. */
export interface SeenOnHammer {
  /** paint between the coils stayed whole */
  readonly coilsClear?: boolean;
}

export const seenOnHammer = (picture: Picture): SeenOnHammer => ({ coilsClear: picture.known.looks['coil-spring.clash']?.answer === 'clear' });

export function motionWarnings(run: MotionRan, spec: MotionSpec, system: PrintSystem, seen: SeenOnHammer = {}): readonly MotionWarning[] {
  const warnings: MotionWarning[] = [];
  const { left } = run;
  const length = (value: number): string => shownLength(Math.max(0, value), system);
  const helve = spec.suspension.kind === 'helve';
  if (left.joint <= 0) warnings.push({ id: 'joint', mark: helve ? 'beam meets its stop' : 'linkage on guide', words: `${helve ? 'The head hangs back so far that the beam meets its lower stop' : 'The linkage meets its guide'} as it runs.` });
  else if (left.joint < NEAR) warnings.push({ id: 'joint', mark: `${length(left.joint)} left`, words: `Only ${length(left.joint)} is left before ${helve ? 'the beam meets its lower stop' : 'the linkage meets its guide'}.` });
  if (left.upper <= 0) warnings.push({ id: 'upper', mark: helve ? 'beam meets its stop' : 'ram on carrier', words: `${helve ? 'The head is thrown so far that the beam meets its upper stop' : 'The ram is thrown up against what carries it'} every time.` });
  else if (left.upper < NEAR) warnings.push({ id: 'upper', mark: `${length(left.upper)} left`, words: `Only ${length(left.upper)} is left before ${helve ? 'the beam meets its upper stop' : 'the ram meets what carries it'}.` });
  if (left.ledge <= 0 || run.beatClass === 'linkage-takes-the-blow') warnings.push({ id: 'ledge', mark: 'guide takes the blow', words: 'The guide is struck in the place of the work: castings break like that.' });
  else if (left.ledge < NEAR) warnings.push({ id: 'ledge', mark: `${length(left.ledge)} left`, words: `Only ${length(left.ledge)} is left between linkage and guide at the blow.` });
  if (left.spring < NEAR && seen.coilsClear === true) return withSlip(warnings, run);
  if (left.spring <= 0) warnings.push({ id: 'spring', mark: helve ? 'cushion solid' : 'spring solid', words: helve ? 'A cushion is squeezed solid; it hammers the beam.' : spec.suspension.kind === 'bow-strap' ? 'The bow is drawn to its limit.' : 'The coils touch at the end of the stroke; solid, the wire is loaded beyond what it stands.' });
  else if (left.spring < NEAR) warnings.push({ id: 'spring', mark: `${length(left.spring)} to solid`, words: `Only ${length(left.spring)} is left before the spring is solid.` });
  return withSlip(warnings, run);
}

const withSlip = (warnings: readonly MotionWarning[], run: MotionRan): readonly MotionWarning[] =>
  run.slip > MUCH_SLIP ? [...warnings, { id: 'slip', mark: 'drive slips', words: `The drive loses ${Math.round(run.slip * 100)} % of its speed to slip: motor, belt or clutch is too weak for what the blow takes.` }] : warnings;

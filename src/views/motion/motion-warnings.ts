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
  /** what the judgement says of a coil spring that goes solid, where the wire does not stand it */
  readonly solidReason?: string;
  /** bending of the leaves against what a leaf stands, at the deflection that was read */
  readonly leafShare?: number;
  /** blows a second that were counted or timed, never what was only told; and the slip that follows from them */
  readonly rate?: number;
  readonly slip?: number;
}

export function seenOnHammer(picture: Picture): SeenOnHammer {
  const solid = picture.findings.find((finding) => finding.criterion === 'spring.stress-solid' && finding.grade === 'watch');
  const leaf = picture.values['bow.stress-share']?.outcome;
  return {
    coilsClear: picture.known.looks['coil-spring.clash']?.answer === 'clear', ...(solid === undefined ? {} : { solidReason: solid.reason }),
    ...(leaf?.state === 'known' ? { leafShare: leaf.quantity.value } : {}), ...countedRate(picture),
  };
}

/** What was counted at the hammer, with the slip that it means. */
function countedRate({ values }: Picture): Pick<SeenOnHammer, 'rate' | 'slip'> {
  const [rate, slip] = [values['running.rate'], values['drive.slip']?.outcome];
  if (rate?.outcome.state !== 'known' || rate.standing === 'told') return {};
  return { rate: rate.outcome.quantity.value, ...(slip?.state === 'known' ? { slip: slip.quantity.value } : {}) };
}

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
  const words = springWords(spec, length(left.spring), left.spring <= 0, seen);
  if (left.spring < NEAR) warnings.push({ id: 'spring', ...words });
  return withSlip(warnings, run);
}

const withSlip = (warnings: readonly MotionWarning[], run: MotionRan): readonly MotionWarning[] =>
  run.slip > MUCH_SLIP ? [...warnings, { id: 'slip', mark: 'drive slips', words: `The drive loses ${Math.round(run.slip * 100)} % of its speed to slip: motor, belt or clutch is too weak for what the blow takes.` }] : warnings;

/** A coil goes solid, a cushion is squeezed solid, and a bow does neither: its leaves meet crown or clip, and what holds is their bending. */
function springWords(spec: MotionSpec, left: string, met: boolean, seen: SeenOnHammer): { readonly mark: string; readonly words: string } {
  switch (spec.suspension.kind) {
    case 'helve':
      return met ? { mark: 'cushion solid', words: 'A cushion is squeezed solid; it hammers the beam.' } : { mark: `${left} to solid`, words: `Only ${left} is left before a cushion is squeezed solid.` };
    case 'bow-strap': {
      const bent = seen.leafShare === undefined ? '' : ` At the deflection read its leaves are bent to ${Math.round(seen.leafShare * 100)} % of what a leaf stands.`;
      return met ? { mark: 'bow at its limit', words: `The bow is drawn in until its leaves meet crown or clip; leaves that are bent further crack at the clip.${bent}` } : { mark: `${left} of draw left`, words: `Only ${left} is left at each tip before the leaves of the bow meet crown or clip.${bent}` };
    }
    case 'coil-toggle': {
      const solid = seen.solidReason === undefined ? '' : ` ${seen.solidReason}`;
      return met ? { mark: 'spring solid', words: `The coils touch at the end of the stroke: coils that strike one another break.${solid}` } : { mark: `${left} to solid`, words: `Only ${left} is left before the spring is solid.${solid}` };
    }
  }
}

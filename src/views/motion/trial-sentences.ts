import type { PrintSystem } from '../../derived/index.ts';
import type { MotionRan, MotionSpec, MotionTrial } from '../../derived/motion/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import { BEAT_WORDS } from './class-words.ts';
import { shownEnergy, shownLength, shownShare } from './shown.ts';

const TRIED: Readonly<Record<MotionTrial['id'], string>> = {
  slower: 'A tenth slower', faster: 'A tenth faster', 'new-spring': 'With a spring of its first length at the same nut', 'tight-joints': 'With no play in its joints', 'full-stack': 'With dies and seat of full height',
  'leaf-lost': 'With one leaf of the bow parted', 'strong-motor': 'With twice the motor and a clutch that holds it', 'bare-dies': 'On bare cold dies', 'thick-work': 'On work half an inch thicker',
};
const WHAT: Readonly<Record<'upper-stop-knock' | 'joint-knock' | 'die-re-strike', string>> = { 'upper-stop-knock': 'the knock', 'joint-knock': 'the knock', 'die-re-strike': 'the second strike' };

/** What each thing tried alone does, beside the hammer as it is. Trials that change nothing worth saying are left out. */
export function trialSentences(run: MotionRan, spec: MotionSpec, trials: readonly MotionTrial[], system: PrintSystem): readonly string[] {
  return trials.flatMap((trial) => {
    const { cell } = trial;
    const same = cell.beatClass === run.beatClass && cell.either === undefined;
    const more = run.blowEnergy > 0 ? cell.energy / run.blowEnergy : 1;
    if (trial.id !== 'leaf-lost' && same && Math.abs(more - 1) < 0.06 && Math.abs((run.secondSounds[0]?.level ?? 0) - cell.level) < 1.5) return [];
    if (cell.beatClass === 'refused') return [`${TRIED[trial.id]}: it cannot be built or set like that.`];
    const energy = cell.energy > 0 ? `, ${shownEnergy(cell.energy, system)} a blow` : '';
    const either = cell.either === undefined ? '' : `, or by how it is started ${BEAT_WORDS[cell.either].words}`;
    const second = run.beatClass === 'upper-stop-knock' || run.beatClass === 'joint-knock' || run.beatClass === 'die-re-strike' ? run.beatClass : undefined;
    if (second !== undefined && cell.beatClass === second) {
      const louder = cell.level - (run.secondSounds[0]?.level ?? 0);
      return [`${TRIED[trial.id]}: ${WHAT[second]} stays${Math.abs(louder) < 0.5 ? '' : `, ${Math.abs(Math.round(louder * 10) / 10)} dB ${louder > 0 ? 'louder' : 'fainter'} against the blow`}${energy}.`];
    }
    if (second !== undefined && cell.beatClass === 'clean' && cell.either === undefined) return [`${TRIED[trial.id]}: ${WHAT[second]} is gone${energy}.`];
    return [`${TRIED[trial.id]}: ${same ? 'the same beat' : BEAT_WORDS[cell.beatClass].words}${either}${energy}.`];
  }).concat(ledgeSentence(spec, system)).map((words) => inSystem(words, system));
}

/** What short dies leave between linkage and guide, where it is little. */
function ledgeSentence(spec: MotionSpec, system: PrintSystem): readonly string[] {
  if (spec.suspension.kind === 'helve' || spec.stackLoss < 0.002) return [];
  const spare = spec.ledgeClearance - spec.stackLoss;
  if (spare > 0.008) return [];
  const share = spec.stackLoss / Math.max(1e-6, spec.ledgeClearance);
  if (spare <= 0) return [`Dies and seat are ${shownLength(spec.stackLoss, system)} short: the linkage meets its guide before the dies close. On work thinner than ${shownLength(-spare, system)} the guide is struck and not the work.`];
  return [`Dies and seat are ${shownLength(spec.stackLoss, system)} short, ${shownShare(Math.min(1, share))} of what the guide allows: with the dies closed ${shownLength(spare, system)} is left. Lose that too and the guide takes the blow.`];
}

import type { LinkageFamily } from '../../hammer/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { Lookup } from '../stack/index.ts';
import { changesStack, type GapPlan } from './gap-plan.ts';

const NEW: Readonly<Record<string, string>> = { 'seat.fit-filler-plate': 'the filler plate', 'dies.new-upper': 'the new upper die', 'dies.new-lower': 'the new lower die' };

/** A gap that is as good as nothing: half a thousandth of an inch. */
const JUST = 0.0254 / 2000;

/** To the next sixteenth, or half millimetre, up: a little more room than wanted does no harm. */
const size = (value: number, system: PrintSystem, rounding: 'up' | 'down' = 'up'): string => printQuantity({ dimension: 'length', value: Math.abs(value), uncertainty: 0 }, system, rounding);
const list = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`);
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What to do to the linkage, in an order that stands in a sentence: `shorten the rod by 1 3/16 in`. */
export function moveWords(move: number, family: LinkageFamily, system: PrintSystem): string {
  const far = size(move, system, move > 0 ? 'up' : 'down');
  if (family === 'helve') return `${move > 0 ? 'raise' : 'lower'} the head by ${far} at the die, with the height screws, or with the rod where it has none`;
  return `${move > 0 ? 'shorten' : 'lengthen'} the rod by ${far}, which ${move > 0 ? 'lifts' : 'lowers'} the ram as much`;
}

/** The gap that it is set to in the end: one figure, or a range. */
export function wantedWords({ wanted: { from, to }, later, move }: GapPlan, system: PrintSystem): string {
  const [least, most] = [printQuantity(from, system, 'up'), printQuantity(to, system, 'down')];
  if (later !== undefined && move !== 0) return move > 0 ? least : most;
  return from.value === to.value ? least : `${least} to ${most}`;
}

/** Why the ram is moved first: what would happen with the linkage as it stands. */
export function meetWords({ later, waiting }: GapPlan, system: PrintSystem): string {
  if (waiting.length === 0) return '';
  const warned = 'the crank then stops on the dies, or rod, arms or pin bend';
  if (later === undefined) return `Nobody read the gap: with the linkage as it stands the dies may meet before the bottom, and ${warned}.`;
  if (Math.abs(later.value) < JUST) return `With the linkage as it stands the dies would just meet at the bottom: barred over like that, ${warned}.`;
  return later.value <= 0
    ? `With the linkage as it stands the dies would meet ${size(later.value, system)} before the bottom: barred over like that, ${warned}.`
    : `With the linkage as it stands ${size(later.value, system, 'down')} would be left at the bottom, less than these readings are sure of: the dies may meet, and ${warned}.`;
}

/** The one line that a die or a plate brings with it, and the job: what is done to the linkage before it goes in. */
export function beforeTheDies(plan: GapPlan, family: LinkageFamily, system: PrintSystem): string {
  if (plan.waiting.length === 0 || plan.move <= 0) return '';
  return `Before ${list(plan.waiting.map((job) => NEW[job] ?? job))} ${plan.waiting.length === 1 ? 'goes' : 'go'} in and anything is barred over: ${moveWords(plan.move, family, system)}. ${meetWords(plan, system)}`;
}

/** Everything that the setting sheet says before the gap is set; nothing where no open job changes the stack. */
export function gapSentences(plan: GapPlan, family: LinkageFamily, lookup: Lookup, system: PrintSystem): readonly string[] {
  const { stack, later, move, movedOn } = plan;
  const besides = stack.unreckoned.length === 0 ? [] : [`${capital(list(stack.unreckoned))} ${stack.unreckoned.length === 1 ? 'changes' : 'change'} the gap too, by an amount that no reading gives: bar it round slowly by hand, ready to stop, and read the gap again before it is set and before any power.`];
  if (movedOn !== undefined) return [`The rod was set on ${movedOn}, after the gap was read: read the gap again before anything is reckoned from it.`, ...besides];
  if (!changesStack(plan)) return besides;
  const who = capital(list(stack.changing.map((one) => NEW[one.job] ?? one.job)));
  const nearer = stack.rise.value > 0;
  const brings = `${who} ${stack.changing.length === 1 ? 'brings' : 'bring'} the dies ${size(stack.rise.value, system)} ${nearer ? 'nearer to one another' : 'further apart'}`;
  const left = later === undefined ? '.' : Math.abs(later.value) < JUST ? ': no gap is left.' : later.value <= 0 ? `: no gap is left, and ${size(later.value, system)} is wanting.` : `: with the linkage as it stands now the gap becomes ${size(later.value, system, 'down')}.`;
  const first = beforeTheDies(plan, family, system);
  const setting = first !== '' ? `Then bar it round by hand, a whole turn, power locked off, and set the gap to ${wantedWords(plan, system)} on the finished dies.`
    : move === 0 ? 'That is near enough: read it again when they are in, and leave the linkage as it is.'
      : `When they are in: ${moveWords(move, family, system)}, bar it round by hand, and set the gap to ${wantedWords(plan, system)}.`;
  return [`${brings}${left}`, ...(first === '' ? [] : [first]), setting, ...threadWords(plan, family, lookup, system), ...besides];
}

/** Whether the thread allows it: what was read, and what still has to be looked at. */
function threadWords({ move }: GapPlan, family: LinkageFamily, lookup: Lookup, system: PrintSystem): readonly string[] {
  if (move === 0 || family === 'helve') return [];
  const left = lookup('connecting-rod.thread-left');
  if (move < 0) {
    if (left === undefined) return ['How much thread is left to lengthen the rod was not read: read it first; one diameter stays in engagement at each end.'];
    return left.value >= -move ? [`The rod has ${size(left.value, system, 'down')} of thread left for it.`] : [];
  }
  const [now, made] = [lookup('connecting-rod.length'), lookup('connecting-rod.length#as-made')];
  const longer = now === undefined || made === undefined ? undefined : now.value - made.value;
  if (longer !== undefined && longer >= move) return [`The thread allows it: the rod is ${size(longer, system, 'down')} longer than it was made.`];
  const look = `Nobody read how far the rod still goes into its ends: look that both together take ${size(move, system)} more before a nut is slackened, and that no thread comes to its bottom. Where they do not, the rod is cut or made anew; the dies are not made lower for it.`;
  const loss = lookup('stack.loss');
  const guess = left !== undefined && loss !== undefined && loss.value > 0 && left.value < loss.value
    ? [`A guess only: the dies lost ${size(loss.value, system)} and the rod has ${size(left.value, system, 'down')} of thread left, so somebody may have taken the loss up by lengthening the rod. Then the room to shorten it again is there.`] : [];
  return [...(longer !== undefined && longer > 0 ? [`The rod is ${size(longer, system, 'down')} longer than it was made; the rest of the way is not known.`] : []), look, ...guess];
}

import type { PrintSystem } from '../../derived/index.ts';
import type { MotionDoubt, MotionResult, MotionRan, MotionSpec, SecondSound, Spread } from '../../derived/motion/index.ts';
import { BEAT_WORDS, SOUND_WORDS } from './class-words.ts';
import { motionWarnings, type SeenOnHammer } from './motion-warnings.ts';
import { refusalWords, settingWords } from './setting-words.ts';
import { shownAngle, shownDelay, shownEnergy, shownForce, shownLength, shownPower, shownRate, shownShare, shownSpeed } from './shown.ts';

export interface MotionSentence {
  /** `refused` names a field at which the sentence belongs. */
  readonly kind: 'headline' | 'sound' | 'warning' | 'figure' | 'note' | 'refused';
  readonly words: string;
  readonly field?: string;
}

/** What one hammer does, in sentences for somebody at the machine, weightiest first. */
export function motionSentences(result: MotionResult, spec: MotionSpec, system: PrintSystem, doubt?: MotionDoubt, seen: SeenOnHammer = {}): readonly MotionSentence[] {
  if (result.outcome === 'refused') return result.problems.map(({ field, sentence }) => ({ kind: 'refused', field, words: capital(`${refusalWords(field, sentence)}.`) }));
  if (result.outcome === 'not-computed') return [{ kind: 'refused', words: capital(`${result.sentence}.`) }];
  return [
    { kind: 'headline', words: headline(result, doubt) },
    ...(doubt?.blowEnergy === undefined ? [] : [{ kind: 'headline' as const, words: energyHeadline(doubt, doubt.blowEnergy, system) }]),
    ...result.secondSounds.map((sound): MotionSentence => ({ kind: 'sound', words: soundSentence(sound) })),
    ...(result.canDoEither === undefined ? [] : [{ kind: 'warning' as const, words: eitherSentence(result, system) }]),
    ...motionWarnings(result, spec, system, seen).filter(({ id }) => !result.secondSounds.some((sound) => MET_BY[sound.kind] === id)).map((warning): MotionSentence => ({ kind: 'warning', words: warning.words })),
    ...(result.left.spring <= 0 && seen.coilsClear === true ? [{ kind: 'note' as const, words: 'By this reckoning the coils would just touch; the paint between them says that they do not, and the paint is right. Measure the arms from pivot to spring pin.' }] : []),
    ...figures(result, spec, system, doubt, seen).map((words): MotionSentence => ({ kind: 'figure', words })),
    ...(doubt === undefined || doubt.ran === doubt.drawn ? [] : [{ kind: 'note' as const, words: `Of ${doubt.drawn} likenesses within the doubt of the readings ${doubt.drawn - doubt.ran} could not be built: some assumed lengths do not go together.` }]),
  ];
}

/** The warning that a second sound has said already. */
const MET_BY: Readonly<Record<SecondSound['kind'], string>> = { 'upper-stop-knock': 'upper', 'joint-knock': 'joint', 'die-re-strike': '' };

/** The beat in a line, and how sure it is: what most likenesses do, which need not be what the one drawn does. */
export function headline(run: MotionRan, doubt?: MotionDoubt): string {
  const words = capital(BEAT_WORDS[run.beatClass].words);
  const [top, second] = doubt?.classes ?? [];
  if (doubt === undefined || doubt.ran < 6 || top === undefined) return `${words}.`;
  const hundredths = `${Math.round(top.share * 100)} in 100`;
  if (top.beatClass !== run.beatClass) return `Most likely: ${BEAT_WORDS[top.beatClass].words}. Within the doubt of its readings ${hundredths} do this; the one likeness drawn here does not: ${BEAT_WORDS[run.beatClass].words}.`;
  const sure = top.share > 0.95 ? 'Within the doubt of its readings it stays so' : `Within the doubt of its readings ${hundredths} do this`;
  return `${words}. ${sure}${second === undefined || top.share > 0.95 ? '' : `; next most likely: ${BEAT_WORDS[second.beatClass].words}`}.`;
}

/** The blow by the middle of the likenesses, since the one drawn may lie at the edge of them. */
const energyHeadline = (doubt: MotionDoubt, spread: Spread, system: PrintSystem): string =>
  `Blow energy about ${shownEnergy(spread.middle, system)}: half of ${doubt.ran} likenesses lie above it, nine in ten between ${shownEnergy(spread.low, system)} and ${shownEnergy(spread.high, system)}.`;

/** Where the one drawn stands among the likenesses, where it stands outside of nine in ten. */
function standsOutside(energy: number, spread: Spread): string {
  if (energy > spread.high) return ', above nine in ten of the likenesses: where everything is as usual it all suits, and in a real hammer something does not';
  return energy < spread.low ? ', below nine in ten of the likenesses' : '';
}

/** One second sound: what meets what, when, how loud, why, and what makes it worse. */
export function soundSentence(sound: SecondSound): string {
  const { name, cause, worse } = SOUND_WORDS[sound.kind];
  const often = sound.share > 0.95 ? 'every blow' : `${Math.round(sound.share * 100)} blows in 100`;
  return `${capital(name)} ${shownDelay(sound.delay)} ${sound.delay < 0 ? 'before' : 'after'} ${often}, ${Math.abs(Math.round(sound.level))} dB ${sound.level > 0 ? 'louder' : 'fainter'} than it. Usual cause: ${cause}. It gets worse when it runs ${worse}.`;
}

function eitherSentence(run: MotionRan, system: PrintSystem): string {
  const other = run.canDoEither;
  if (other === undefined) return '';
  const same = other.beatClass === run.beatClass;
  return `This setting can do either: trodden hard it does this, let in slowly ${same ? 'the same with another blow' : BEAT_WORDS[other.beatClass].words}${other.blowEnergy > 0 ? `, ${shownEnergy(other.blowEnergy, system)} a blow` : ''}. It depends on how it was started.`;
}

function figures(run: MotionRan, spec: MotionSpec, system: PrintSystem, doubt?: MotionDoubt, seen: SeenOnHammer = {}): readonly string[] {
  const helve = spec.suspension.kind === 'helve';
  const struck = run.blowEnergy > 0;
  const spread = doubt?.blowEnergy;
  const uneven = run.blowEnergyHigh - run.blowEnergyLow > 0.08 * run.blowEnergy;
  const early = run.beforeBottom >= 0;
  return [
    ...(struck
      ? [
        `${spread === undefined ? 'Blow energy' : 'The one likeness drawn here: blow energy'} ${shownEnergy(run.blowEnergy, system)}${spread === undefined ? '' : standsOutside(run.blowEnergy, spread)}${uneven ? `; from ${shownEnergy(run.blowEnergyLow, system)} to ${shownEnergy(run.blowEnergyHigh, system)} from blow to blow` : ''}. ${shownShare(run.efficiency)} of it goes into the work.`,
        `The dies meet at ${shownSpeed(run.impactSpeed, system)}, ${shownAngle(Math.abs(run.beforeBottom))} ${early ? 'before' : 'after'} bottom dead centre. Stroke of the ram ${shownLength(run.stroke, system)}.`,
      ]
      : [`The dies do not meet over the work of ${shownLength(spec.workThickness, system)}. Stroke of the ram ${shownLength(run.stroke, system)}.`]),
    `${capital(shownRate(run.rate))}, with ${shownShare(run.slip)} lost to slip${run.missed > 0 ? `; ${run.missed} turns in ${run.turns} without a blow` : ''}. It takes ${shownPower(Math.max(0, run.power), system)} from the motor.${countedWords(run, seen)}`,
    `Left at the nearest: ${helve ? 'lower stop' : 'linkage to guide'} ${left(run.left.joint, system)}; ${helve ? 'upper stop' : 'ram to what carries it'} ${left(run.left.upper, system)}${helve ? '' : `; over the guide's ledge at the blow ${left(run.left.ledge, system)}`}; ${SPRING_LEFT[spec.suspension.kind]} ${left(run.left.spring, system)}.`,
    `Greatest forces: ${helve ? 'one cushion' : spec.suspension.kind === 'bow-strap' ? 'one tip of the bow' : 'spring'} ${shownForce(run.peaks.spring, system)}${run.peaks.link > 0 ? `, one link ${shownForce(run.peaks.link, system)}` : ''}, rod and crank pin ${shownForce(run.peaks.rod, system)}${helve ? '' : `, ram on its guide ${shownForce(run.peaks.guide, system)}`}.`,
  ];
}

/** A count that the reckoning does not come to within a twenty-fifth, beside it: the count is right. */
function countedWords(run: MotionRan, { rate, slip }: SeenOnHammer): string {
  if (rate === undefined || Math.abs(run.rate - rate) < 0.04 * rate) return '';
  return ` Counted on the hammer: ${shownRate(rate)}${slip === undefined ? '' : `, ${shownShare(slip)} lost to slip`}. The count is right: ${run.rate > rate ? 'more slips here than is reckoned, and the blow is softer for it' : 'pulleys or motor are not as they were read'}.`;
}

/** What the travel of the springy part ends at; a bow never goes solid. */
const SPRING_LEFT: Readonly<Record<MotionSpec['suspension']['kind'], string>> = { 'coil-toggle': 'spring to solid', helve: 'cushion to solid', 'bow-strap': 'each tip of the bow before its leaves meet crown or clip' };

const left = (value: number, system: PrintSystem): string => (value <= 0 ? 'none: they meet' : shownLength(value, system));

/** Upper case at the start of a sentence. */
export const capital = (words: string): string => (words === '' ? '' : words[0]!.toUpperCase() + words.slice(1));

/** What of the hammer was read and what the class had to lend, in two sentences. */
export function readAndAssumed(used: readonly { readonly name: string }[], assumed: readonly string[]): { readonly read: string; readonly assumed: string } {
  const list = (names: readonly string[]): string => [...new Set(names.map(settingWords))].join('; ');
  return { read: used.length === 0 ? 'Nothing of this hammer was read for its motion.' : `Read on this hammer: ${list(used.map((one) => one.name))}.`, assumed: assumed.length === 0 ? 'Nothing is assumed.' : `Assumed from its class, because nobody read it: ${list(assumed)}.` };
}

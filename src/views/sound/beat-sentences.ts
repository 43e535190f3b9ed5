import type { Picture } from '../../derived/index.ts';
import { SOUND_WORDS } from '../motion/index.ts';
import type { Advice, AdviceKind, BeatHeard, BeatNotHeard, BeatResult, SecondSound } from '../../derived/sound/index.ts';
import { hardAndSoft } from './hard-and-soft.ts';
import { eitherIsBlow, secondCandidates } from './second-candidates.ts';
import { counted, halfWidth, plainDelay, plainRate, shownDelay, shownLevel, shownRate, shownShare, shownTime } from './shown.ts';
import { slipOf } from './slip-sentence.ts';

export type SoundSentenceKind = 'headline' | 'second' | 'figure' | 'warning' | 'advice' | 'note';

export interface SoundSentence {
  readonly kind: SoundSentenceKind;
  readonly words: string;
}

/** Said elsewhere on every sheet, or in the sentence about what they qualify. */
const SAID_ELSEWHERE: ReadonlySet<AdviceKind> = new Set(['is-this-the-hammer', 'not-a-level-meter', 'only-a-limit', 'possible-second', 'other-chain', 'other-rate', 'before-or-after', 'some-strokes-only', 'echo-or-beat']);

/**
 * What a recording tells, in sentences for somebody at the machine, weightiest first. What sound cannot tell is said with
 * what would settle it; no sentence names a cause, kinds of second sound are candidates.
 * @param picture the hammer that it is taken for, for the slip; left out where none is known
 */
export function beatSentences(result: BeatResult, picture?: Picture): readonly SoundSentence[] {
  if (result.state === 'cannot tell') return cannotTell(result);
  const second = result.second.verdict === 'double' || result.second.verdict === 'possible' || hardAndSoft(result.strokes, 1 / result.rate.value) !== undefined ? 'second' : 'figure';
  return [
    { kind: 'headline', words: headline(result) },
    ...(result.trust === 'doubtful' ? [say('warning', result.advice.some((one) => one.kind === 'uneven') ? 'All of this is doubtful: the blows are uneven or hardly stand out from what else is heard; talk and tunes have been read like this.' : 'Two machines beat here, as loud as one another and as even. Which of them is the hammer is a guess, and all that follows rests on it.')] : []),
    ...secondSentences(result).map((words) => say(second, words)),
    ...figures(result, picture).map((words) => say('figure', words)),
    ...others(result).map((words) => say('warning', words)),
    ...result.advice.filter((one) => !SAID_ELSEWHERE.has(one.kind)).map((one) => say('advice', one.words)),
    say('note', 'Sound is for sorting and for proof of cure; the tape decides.'),
  ];
}

const say = (kind: SoundSentenceKind, words: string): SoundSentence => ({ kind, words });

function cannotTell(result: BeatNotHeard): readonly SoundSentence[] {
  const [first, ...rest] = result.advice.filter((one: Advice) => one.kind !== 'not-a-level-meter');
  return [say('headline', 'No beat can be told from this recording.'), ...(first === undefined ? [] : [say('advice', first.words)]), ...rest.map((one) => say('advice', one.words))];
}

/** The rate and the second sound in a line. */
export function headline(result: BeatHeard): string {
  const { second } = result;
  const rate = `${result.trust === 'doubtful' ? 'Perhaps regular blows' : 'Regular blows'}, ${shownRate(result.rate)}`;
  const uneven = hardAndSoft(result.strokes, 1 / result.rate.value);
  const turns = uneven === undefined ? '' : ', hard and soft by turns';
  switch (second.verdict) {
    case 'double':
      return `${rate}${turns}, each with a second sound${second.delay === undefined ? '' : ` ${plainDelay(second.delay.value)} ${second.place === 'before' ? 'before it' : second.place === 'either' ? 'after it or before the next' : 'after it'}`}.`;
    case 'possible':
      return `${rate}${turns}; perhaps with a second sound.`;
    case 'none seen':
      return `${rate}${turns}; no second sound is heard.`;
    default:
      return `${rate}${turns}; whether there is a second sound cannot be told.`;
  }
}

function secondSentences(result: BeatHeard): readonly string[] {
  const { second } = result;
  const words: string[] = [];
  if (second.verdict === 'double' || second.verdict === 'possible') {
    words.push(where(second, result.rate.value));
    const candidates = secondCandidates(second);
    if (eitherIsBlow(second) && !maybeNextBlow(second, result.rate.value)) words.push(`The two are nearly equally loud, so which of them is the blow cannot be told: it may as well be ${plainDelay(second.delay!.value)} ${second.delay!.value < 0 ? 'after' : 'before'} it. Listen closer to the dies.`);
    if (second.likeEcho) words.push('It is the same at every stroke, as the echo of a wall would be. Move the phone two metres aside and record again: the delay of an echo changes, that of a second blow does not.');
    if (candidates.length === 0) words.push('At that place no kind of knock that this program knows is usual: an echo, a belt joint, or something loose that follows the blow.');
    for (const { kind, delay } of candidates) {
      const { name, cause, worse } = SOUND_WORDS[kind];
      words.push(`Candidate: ${name}${second.place === 'either' || eitherIsBlow(second) ? `, if it comes ${delay < 0 ? 'before' : 'after'} the blow` : ''}. Usual cause: ${cause}. Worse when it runs ${worse}.`);
    }
    if (candidates.length > 1) words.push(new Set(candidates.map(({ kind }) => SOUND_WORDS[kind].worse)).size > 1 ? 'Candidates only. Does it get worse faster, or slower? That parts them.' : 'Candidates only. The rest gap by the rule, and the room between linkage and guide by the feeler, part them.');
    if (maybeNextBlow(second, result.rate.value)) words.push(`It is nearly as loud as the blow and near the middle of the turn, so it may be the next blow: then it strikes ${plainRate(2 * result.rate.value)}, hard and soft by turns as in a gallop. Count ten blows against a clock.`);
    if (second.verdict === 'possible') words.push('It is not sure: go closer and record 20 seconds more.');
  }
  if (second.verdict === 'none seen') words.push(limitWords(second));
  if (second.echo !== undefined && !second.likeEcho) words.push(`What comes ${plainDelay(second.echo.delay)} after every blow, ${Math.abs(Math.round(second.echo.levelDecibels))} dB fainter, follows from the blow to the millisecond: the echo of a wall, or a second beat that repeats perfectly. Move the phone two metres aside and record again: the delay of an echo changes, that of a second blow does not.`);
  const uneven = hardAndSoft(result.strokes, 1 / result.rate.value);
  if (uneven !== undefined) words.push(`Every second blow comes early by ${shownShare(uneven.unevenness)} of a turn${uneven.levelDecibels >= 0.5 ? ` and the two differ by ${uneven.levelDecibels.toFixed(1)} dB` : ''}: hard and soft by turns, as in a gallop. Cold dies and speed make it; slower cures it.`);
  return words;
}

/** dB and shares of a turn within which a second sound may be a blow of its own. */
const maybeNextBlow = (second: SecondSound, rate: number): boolean =>
  second.delay !== undefined && Math.abs(second.levelDecibels?.value ?? -9) < 4 && Math.abs(Math.abs(second.delay.value) * rate - 0.5) < 0.06;

function where(second: SecondSound, rate: number): string {
  const { delay, levelDecibels } = second;
  const level = levelDecibels === undefined ? '' : `, ${shownLevel(levelDecibels)}`;
  const share = second.share === undefined ? '' : second.share > 0.95 ? ', with every stroke' : `, with about ${Math.round(second.share * 100)} of 100 strokes`;
  if (delay === undefined) return `There may be a second sound${level}.`;
  const often = second.verdict === 'double' ? `Sure in ${Math.min(99, Math.round(second.sure * 100))} of 100 made-up recordings like this.` : `Right in about ${Math.round(second.sure * 100)} of 100 made-up recordings like this.`;
  const place = second.place === 'either'
    ? `${shownDelay(delay)} ${delay.value < 0 ? 'before' : 'after'} a blow, which is ${plainDelay(second.otherDelay ?? 1 / rate - Math.abs(delay.value))} ${delay.value < 0 ? 'after the last' : 'before the next'}: so near the middle of the turn the two cannot be told apart`
    : `${shownDelay(delay)} ${delay.value < 0 ? 'before' : 'after'} the blow`;
  return `Second sound: ${place}${level}${share}. ${often}`;
}

/** What would have been noticed, by stretch of delay. */
function limitWords(second: SecondSound): string {
  const stretch = (from: number, to: number): string | undefined => {
    const rows = second.limit.filter(({ delay }) => delay >= from && delay < to);
    if (rows.length === 0) return undefined;
    const worst = Math.max(...rows.map((row) => row.levelDecibels));
    const ends = [Math.abs(rows[0]!.delay), Math.abs(rows.at(-1)!.delay)].sort((a, b) => a - b).map((delay) => Math.round(delay * 1000));
    const range = `${ends.join(' to ')} ms ${from < 0 ? 'before' : 'after'} the blow`;
    return `${range}: ${worst >= -1 ? 'only one as loud as the blow' : `down to ${Math.abs(Math.round(worst))} dB fainter`}`;
  };
  const parts = [stretch(0, 0.12), stretch(-0.12, 0)].filter((one) => one !== undefined);
  return `No second sound was found. One would have been noticed ${parts.join('; ')}. A fainter one, or one closer to the blow, could still be there.`;
}

function figures(result: BeatHeard, picture?: Picture): readonly string[] {
  const { rate, drift, runs, missed, strokes } = result;
  const period = 1 / rate.value;
  const words = [
    `Rate ${shownRate(rate)} over the longest run.`,
    `Even within ${(result.jitter * 1000).toFixed(1)} ms from blow to blow, ${shownShare(result.jitter / period)} of a turn.`,
    `${counted(strokes.length, 'blow')} heard${missed === 0 ? ', none missed' : `, ${counted(missed, 'stroke')} missed or not heard at ${some(runs.flatMap((run) => run.missedAt).map((time) => shownTime(time)))}`}.`,
  ];
  if (drift !== undefined && Math.abs(drift.value) > Math.max(halfWidth(drift), 1e-4)) words.push(`The rate ${drift.value < 0 ? 'falls' : 'rises'} by ${shownShare(Math.abs(drift.value) * 60)} a minute.`);
  if (runs.length > 1) words.push(`${runs.length} runs: ${some(runs.map((run) => `${counted(run.strokes, 'blow')} from ${shownTime(run.first)} at ${plainRate(run.rate.value)}`))}.`);
  for (const run of runs) if (run.runDown !== undefined) words.push(`After the release at about ${shownTime(run.last - run.runDown.seconds)} it makes ${counted(run.runDown.strokes, 'more stroke')} in ${shownTime(run.runDown.seconds)}.`);
  const slip = picture === undefined ? undefined : slipOf(picture, rate);
  if (slip !== undefined) words.push(slip.words);
  else if (picture !== undefined) words.push('Speed by the pulleys is not known: read motor speed, motor pulley and hammer pulley, and slip can be told from the same recording.');
  return words;
}

const MOST = 5;
const some = (words: readonly string[]): string => (words.length > MOST ? `${words.slice(0, MOST).join(', ')} and ${words.length - MOST} more` : words.join(', '));

function others(result: BeatHeard): readonly string[] {
  const words: string[] = [];
  const near = result.otherReadings.filter((one) => one.against > 0.8);
  for (const one of near) words.push(`${one.kind === 'another rate' ? 'Another rate' : one.kind === 'half the rate' ? 'Half the rate' : 'Double the rate'}, ${plainRate(one.rate)}, would explain the blows nearly as well. Count ten blows against a clock.`);
  for (const chain of result.otherChains)
    words.push(`Something else strikes regularly too, ${shownRate(chain.rate)}, ${Math.abs(Math.round(chain.levelDecibels))} dB ${chain.levelDecibels > 0 ? 'louder' : 'fainter'}: a belt joint, another machine. Which of the two is the hammer sound cannot tell; record again with the other one standing.`);
  return words;
}

import type { Command } from 'commander';
import type { Picture } from '../derived/index.ts';
import { analyseBeat, FASTEST, LONGEST_READ, noiseAtEar, SLOWEST, type BeatResult } from '../derived/sound/index.ts';
import { decodeFile, type DecodedSound } from '../sound-files/node/index.ts';
import { beatDrawing, beatSentences, cureOf, expectedRates, noiseSentences, secondCandidates, sentencesOfNoise, slipOf, soundView, type CureShown, type ExpectedRates, type SoundSentence } from '../views/sound/index.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import { hasProblems, pictureOf, problemLines, readSurvey, type SurveyOptions } from './survey-input.ts';
import { inventedLine, listUnder } from './words.ts';
import { writeText } from './write-text.ts';

interface ListenOptions extends SurveyOptions {
  readonly survey?: string;
  readonly rate?: string;
  readonly before?: string;
  readonly svg?: string;
  readonly longest?: string;
  readonly calibrator?: string;
  readonly calibratorLevel?: string;
}

const VIEW_COLUMNS = 690;

/** `listen RECORDING`: the beat of a running hammer out of a recording of it. */
export const listenCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  program
    .command('listen <recording>')
    .description('hear the beat in a recording of the running hammer: rate, regularity, missed strokes, second sounds, run-down, slip; WAV is read here, other kinds where ffmpeg is installed')
    .option('--survey <file>', 'survey of the hammer that it is taken for: its pulleys say which rate to expect, and give the slip')
    .option('--rate <from-to>', 'look only for rates in this range, blows a minute, such as 180-330')
    .option('--before <recording>', 'an earlier recording, laid beside this one as proof of cure')
    .option('--calibrator <recording>', 'a calibrator’s tone, recorded by the same phone, app and gain: only then is a level told')
    .option('--calibrator-level <decibels>', 'level of that tone, dB(A)', '94')
    .option('--longest <seconds>', 'seconds of the recording to read from its beginning, 2 to 3600', String(LONGEST_READ))
    .option('--svg <file>', 'write the drawing: wave, blows, folded turn and words')
    .option('--as-of <day>', 'judge the survey as of this day, such as 2026-04-11; today where it is left out')
    .option('--metric', 'print millimetres; inches where it is left out')
    .option('--seed <number>', 'seed for what is drawn by chance', '1')
    .option('--despite-problems', 'go on with what could be read of the survey; the exit code stays 2')
    .option('--json', 'write for machines')
    .action(async (recording: string, options: ListenOptions) => ended(await listen(recording, options, door)));
};

async function listen(recording: string, options: ListenOptions, door: Door): Promise<number> {
  const longest = numberIn(options.longest ?? String(LONGEST_READ), 2, 3600, 'the seconds to read');
  const asked = options.rate === undefined ? undefined : rangeOf(options.rate);
  const survey = options.survey === undefined ? undefined : await surveyOf(options.survey, options, door);
  if (survey?.picture === undefined && survey !== undefined) return EXIT.badInput;
  const picture = survey?.picture;
  const expected = asked ?? (picture === undefined ? undefined : expectedRates(picture));
  const seed = numberIn(options.seed ?? '1', 0, 999_999_999, 'the seed');
  const hear = (sound: DecodedSound): BeatResult => analyseBeat(sound.samples, sound.rate, { ...(expected === undefined ? {} : { slowest: expected.slowest, fastest: expected.fastest }), longest, seed }, (share) => door.passing?.(share < 1 ? `Listening, ${Math.round(share * 100)} of 100 done.` : ''));
  const sound = await opened(recording, longest);
  const result = hear(sound);
  const before = options.before === undefined ? undefined : hear(await opened(options.before, longest));
  const cure = before === undefined ? undefined : cureOf(before, result);
  const sentences = beatSentences(result, picture);
  const noise = await noiseOf(options, sound, result, picture);
  const title = picture === undefined ? `Sound of ${recording}` : `${picture.known.identity.tag}: how it sounds`;
  if (options.svg !== undefined) {
    const view = soundView(sound.samples, sound.rate, 0, Math.max(0.1, sound.secondsDecoded), VIEW_COLUMNS, 8);
    await writeText(options.svg, beatDrawing(result, { title, sentences, view, ...(before?.state === 'heard' ? { before } : {}) }), door);
  }
  if (options.json === true) door.out(`${JSON.stringify({ problems: survey?.problems ?? [], file: { kind: sound.kind, notes: sound.notes }, expected: expected ?? null, beat: withoutFold(result), candidates: result.state === 'heard' ? secondCandidates(result.second) : [], slip: picture !== undefined && result.state === 'heard' ? (slipOf(picture, result.rate) ?? null) : null, cure: cure ?? null, sentences, noise }, null, 2)}\n`);
  else door.out(textOf({ title, sound, result, sentences, expected, noise, cure, picture }));
  if (survey?.bad === true) return EXIT.badInput;
  // A doubtful beat is not known yet: nobody should build on it.
  return result.state === 'heard' && result.trust === 'good' ? EXIT.fine : EXIT.notKnownYet;
}

async function noiseOf(options: ListenOptions, sound: DecodedSound, beat: BeatResult, picture: Picture | undefined): Promise<readonly string[]> {
  if (options.calibrator === undefined) return picture === undefined ? sentencesOfNoise(noiseAtEar({ by: 'phone' })) : noiseSentences(picture);
  const toneLevel = numberIn(options.calibratorLevel ?? '94', 60, 130, 'the level of the calibrator’s tone in dB(A)');
  const tone = await opened(options.calibrator, 60);
  return sentencesOfNoise(noiseAtEar({ by: 'calibrated recording', samples: sound.samples, rate: sound.rate, tone: tone.samples, toneRate: tone.rate, toneLevel, beat }), 'by a recording beside a calibrator');
}

async function opened(path: string, longest: number): Promise<DecodedSound> {
  const outcome = await decodeFile(path, { longest });
  if (outcome.state === 'not decoded') throw new BadInput(outcome.kind === 'missing' ? outcome.words : `${outcome.words} (${path})`);
  return outcome;
}

async function surveyOf(file: string, options: ListenOptions, door: Door): Promise<{ readonly picture: Picture | undefined; readonly problems: unknown; readonly bad: boolean }> {
  const input = await readSurvey(file, options, door);
  const bad = hasProblems(input.problems);
  door.err(problemLines(file, input.problems));
  if (bad && options.despiteProblems !== true) {
    door.err(`${input.entries.length} entries could be read; put the problems right, or go on without them: --despite-problems\n`);
    return { picture: undefined, problems: input.problems, bad };
  }
  return { picture: pictureOf(input, options), problems: input.problems, bad };
}

function textOf({ title, sound, result, sentences, expected, noise, cure, picture }: { readonly title: string; readonly sound: DecodedSound; readonly result: BeatResult; readonly sentences: readonly SoundSentence[]; readonly expected: ExpectedRates | undefined; readonly noise: readonly string[]; readonly cure: CureShown | undefined; readonly picture: Picture | undefined }): string {
  const of = (...kinds: readonly SoundSentence['kind'][]): readonly string[] => sentences.filter((one) => kinds.includes(one.kind)).map((one) => one.words);
  const looked = expected === undefined
    ? `Looked for rates from ${Math.round(SLOWEST * 60)} to ${Math.round(FASTEST * 60)} a minute; with the pulleys known the range is closer (--survey, or --rate).`
    : `Looked for rates from ${Math.round(expected.slowest * 60)} to ${Math.round(expected.fastest * 60)} a minute, ${expected.from}.`;
  return [
    `${title}\n`, inventedLine(picture?.known.identity.invented), '\n',
    ...of('headline').map((words) => `${words}\n`),
    result.state === 'heard' ? '' : listUnder('What to do', of('advice')),
    listUnder('Second sound', of('second')),
    listUnder('Figures', of('figure')),
    listUnder('Warnings', of('warning')),
    cure === undefined ? '' : listUnder('Beside the earlier recording', cure.words),
    result.state === 'heard' ? listUnder('What would settle more', of('advice')) : '',
    listUnder('The recording', [`${sound.kind[0]?.toUpperCase() ?? ''}${sound.kind.slice(1)}, ${result.recording.secondsRead.toFixed(1)} s read.`, ...sound.notes, looked]),
    listUnder('Noise', noise),
    `\n${result.state === 'heard' ? 'These are regular impacts; whether they are the hammer is for the ear. ' : ''}Sound is for sorting and for proof of cure; the tape decides.\n`,
  ].join('');
}

/** The result without its drawn curves, which the drawing has. */
function withoutFold(result: BeatResult): unknown {
  if (result.state !== 'heard') return result;
  const { folded: _folded, ...rest } = result;
  return rest;
}

function rangeOf(text: string): ExpectedRates {
  const found = /^(\d{1,4}(?:\.\d+)?)\s*(?:-|to)\s*(\d{1,4}(?:\.\d+)?)$/.exec(text.trim());
  const [slow, fast] = [Number(found?.[1]), Number(found?.[2])];
  if (!(slow >= 20 && fast > slow * 1.05 && fast <= 1200)) throw new BadInput(`the range of rates cannot be used; two numbers from 20 to 1200 blows a minute, the slower first, such as 180-330: ${text}`);
  return { slowest: slow / 60, fastest: fast / 60, from: 'as asked' };
}

function numberIn(text: string, least: number, most: number, what: string): number {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (!(value >= least && value <= most)) throw new BadInput(`${what} cannot be used; a whole number from ${least} to ${most}: ${text}`);
  return value;
}

import type { Picture } from '../../derived/index.ts';
import { motionWithDoubt, runHammer, specOfSurvey, type MotionDoubt, type Spread } from '../../derived/motion/index.ts';
import type { Svg } from '../drawing/svg.ts';
import { motionDrawing, motionSentences, movingFigure, movingLengths, readAndAssumed, seenOnHammer, shownAngle, shownEnergy, shownLength, shownRate, shownSpeed, traces } from '../motion/index.ts';
import type { Block } from '../report/block.ts';
import { standingBlocks } from '../report/standing-blocks.ts';

/** How the hammer moves as found, said and drawn for paper. */
export interface MotionOnPaper {
  readonly blocks: readonly Block[];
  /** Absent where the hammer could not be run. */
  readonly svg?: Svg;
}

/** Turns whose traces are drawn. */
const TURNS = 5;

/**
 * Runs the hammer as it was read, and says what it does; where it cannot be run, says why.
 * @param population its likenesses within the doubt of the readings, where they were run already; else they are run here, which takes some tenths of a second
 */
export function motionOnPaper(picture: Picture, population?: MotionDoubt): MotionOnPaper {
  const { identity } = picture.known;
  const survey = specOfSurvey(picture.values, identity.family, identity.ramClass.quantity.value);
  const result = runHammer(survey.spec, { assumed: survey.assumed, traceSeconds: (TURNS * 2 * Math.PI) / survey.spec.driveSpeed });
  const doubt = result.outcome === 'ran' ? (population ?? motionWithDoubt(survey, { seed: picture.provenance.seed })) : undefined;
  const sentences = motionSentences(result, survey.spec, picture.system, doubt, seenOnHammer(picture));
  const of = (...kinds: readonly string[]): readonly string[] => sentences.filter((one) => kinds.includes(one.kind)).map((one) => one.words);
  const known = readAndAssumed(survey.used, survey.assumed);
  const { system } = picture;
  const seen = seenOnHammer(picture);
  const ran = result.outcome === 'ran' ? result : undefined;
  const lengths = movingLengths(picture);
  const words = of('headline', 'sound').join(' ');
  const figure = ran === undefined ? '' : movingFigure(survey.spec, lengths, ran, { system, aspect: 1.1, seen, still: true }).svg;
  const svg = ran === undefined ? undefined : motionDrawing(`${identity.tag}: how it moves`, survey.spec, lengths, ran, system, seen);
  const listed = (text: string, items: readonly string[]): readonly Block[] => (items.length === 0 ? [] : [{ kind: 'heading', level: 2, text }, { kind: 'list', ordered: false, items }]);
  return {
    blocks: [
      ...(picture.duty.verdict === 'fit' ? [] : standingBlocks(picture)),
      ...of('headline', 'refused').map((text) => ({ kind: 'paragraph', text }) as const),
      ...(ran === undefined ? [] : [
        { kind: 'figure', svg: traces(ran, survey.spec, { system, width: 640, seen }), words, caption: 'Traces of the last turns. The ram’s energy is greatest in mid-stroke, and most of it goes back into what springs; the blow is what is left of it where the dies meet.' } as const,
        // A long hammer leaves no room beside it for the run-off.
        { kind: 'figure', svg: figure, words: `The linkage of ${identity.tag} to scale.`, caption: figure.includes('data-paper') ? 'The linkage to scale with its run-off: time runs from left to right, as on the traces.' : 'The linkage to scale.' } as const,
      ]),
      ...listed('Second sounds', of('sound')), ...listed('Warnings', of('warning')), ...(doubt === undefined ? [] : doubtBlocks(picture, doubt)), ...listed('Figures of the one likeness drawn, without doubt: model figures', of('figure')),
      ...listed('What this rests on', [...of('note'), known.read, known.assumed, ...survey.atOdds.map((one) => `At odds${one.from === '' ? '' : `, ${one.from}`}: ${one.sentence}.`)]),
      { kind: 'paragraph', tone: 'small', text: 'A reckoning of a simplified hammer, held against no real one; the tape decides.' },
    ],
    ...(svg === undefined ? {} : { svg }),
  };
}

/** What the readings' doubt leaves of each figure: middle of the likenesses, and where nine in ten of them lie. */
function doubtBlocks({ system }: Picture, doubt: MotionDoubt): readonly Block[] {
  const row = (title: string, spread: Spread | undefined, print: (value: number) => string): readonly { readonly cells: readonly string[] }[] => (spread === undefined ? [] : [{ cells: [title, print(spread.middle), `${print(spread.low)} to ${print(spread.high)}`] }]);
  const length = (value: number): string => (value <= 0 ? 'none: they meet' : shownLength(value, system));
  const rows = [
    ...row('Energy of a blow', doubt.blowEnergy, (value) => shownEnergy(value, system)),
    ...row('Speed at which the dies meet', doubt.impactSpeed, (value) => shownSpeed(value, system)),
    ...row('Blows', doubt.rate, shownRate),
    ...row('Where the dies meet', doubt.beforeBottom, (value) => `${shownAngle(Math.abs(value))} ${value >= 0 ? 'before' : 'after'} bottom`),
    ...row('Room left, linkage to guide or lower stop', doubt.jointLeft, length),
    ...row('Room left, ram to what carries it or upper stop', doubt.upperLeft, length),
  ];
  return rows.length === 0 ? [] : [
    { kind: 'heading', level: 2, text: 'Figures with their doubt' },
    { kind: 'table', caption: `From ${doubt.ran} likenesses of this hammer within the doubt of its readings and the spread of its class`, columns: ['Figure', 'Half lie above', 'Nine in ten lie between'], rows },
  ];
}

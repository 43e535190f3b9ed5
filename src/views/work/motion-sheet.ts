import type { Picture } from '../../derived/index.ts';
import { runHammer, specOfSurvey } from '../../derived/motion/index.ts';
import type { Svg } from '../drawing/svg.ts';
import { motionDrawing, motionSentences, movingFigure, movingLengths, readAndAssumed, seenOnHammer, traces } from '../motion/index.ts';
import type { Block } from '../report/block.ts';

/** How the hammer moves as found, said and drawn for paper. */
export interface MotionOnPaper {
  readonly blocks: readonly Block[];
  /** Absent where the hammer could not be run. */
  readonly svg?: Svg;
}

/** Turns whose traces are drawn. */
const TURNS = 5;

/** Runs the hammer as it was read, and says what it does; where it cannot be run, says why. */
export function motionOnPaper(picture: Picture): MotionOnPaper {
  const { identity } = picture.known;
  const survey = specOfSurvey(picture.values, identity.family, identity.ramClass.quantity.value);
  const result = runHammer(survey.spec, { assumed: survey.assumed, traceSeconds: (TURNS * 2 * Math.PI) / survey.spec.driveSpeed });
  const sentences = motionSentences(result, survey.spec, picture.system, undefined, seenOnHammer(picture));
  const of = (...kinds: readonly string[]): readonly string[] => sentences.filter((one) => kinds.includes(one.kind)).map((one) => one.words);
  const known = readAndAssumed(survey.used, survey.assumed);
  const { system } = picture;
  const seen = seenOnHammer(picture);
  const ran = result.outcome === 'ran' ? result : undefined;
  const lengths = movingLengths(picture);
  const words = of('headline', 'sound').join(' ');
  const svg = ran === undefined ? undefined : motionDrawing(`${identity.tag}: how it moves`, survey.spec, lengths, ran, system, seen);
  const listed = (text: string, items: readonly string[]): readonly Block[] => (items.length === 0 ? [] : [{ kind: 'heading', level: 2, text }, { kind: 'list', ordered: false, items }]);
  return {
    blocks: [
      ...of('headline', 'refused').map((text) => ({ kind: 'paragraph', text }) as const),
      ...(ran === undefined ? [] : [
        { kind: 'figure', svg: traces(ran, survey.spec, { system, width: 640, seen }), words, caption: 'Traces of the last turns.' } as const,
        { kind: 'figure', svg: movingFigure(survey.spec, lengths, ran, { system, aspect: 1.1, seen }).svg, words: `The linkage of ${identity.tag} to scale.`, caption: 'The linkage to scale with its run-off.' } as const,
      ]),
      ...listed('Second sounds', of('sound')), ...listed('Warnings', of('warning')), ...listed('Figures', of('figure')),
      ...listed('What this rests on', [...of('note'), known.read, known.assumed, ...survey.atOdds.map((one) => `At odds${one.from === '' ? '' : `, ${one.from}`}: ${one.sentence}.`)]),
      { kind: 'paragraph', tone: 'small', text: 'A reckoning of a simplified hammer, held against no real one; the tape decides.' },
    ],
    ...(svg === undefined ? {} : { svg }),
  };
}

import { movingInputOf, movingOf, type Moving, type MovingAnswer, type MovingInput, type Standing } from '../../derived/moving/index.ts';
import type { Picture, PrintSystem } from '../../derived/index.ts';
import type { Block, TableRow } from '../report/block.ts';
import { inSystem } from '../sentences/in-system.ts';
import { gravityDrawing } from './gravity-drawing.ts';
import { missingOf, type OutlookGround, type SheetParts } from './sheet-parts.ts';
import { shownDoubt, shownRange, shownRough } from './shown.ts';
import { keyWords } from '../work/key-words.ts';

const READ = ['whole-machine.mass', 'anvil.kind', 'frame.height', 'frame.base-length', 'frame.base-width', 'main-shaft.height', 'frame.seat-height'] as const;

/** Weight, centre of gravity, tipping, slings, floor and door. */
export function movingSheet(ground: OutlookGround): SheetParts {
  const { picture, outlook, moving: asked = {} } = ground;
  const { system } = picture;
  const input = movingInputOf(outlook.values, picture.known, asked);
  const answer = movingOf(input, picture.provenance.seed, system);
  const moving = answer.state === 'known' ? answer : undefined;
  const missing = missingOf(picture, READ);
  return {
    answer: answerOf(answer, input, picture),
    measureFirst: [...missing.map((key) => `${keyWords(key)}.`), ...(asked.door === undefined ? ['Door: width and height in the clear.'] : []), ...(asked.floor === undefined ? ['Floor: what it carries, from somebody who knows, and what lies below it.'] : [])],
    body: () => moving === undefined ? [] : [...drawingBlocks(ground, input, moving), ...weightBlocks(input, moving, system), ...adviceBlocks(moving, system), ...floorBlocks(moving, system)],
    assumed: [...(moving === undefined ? [] : [`${moving.basis[0]!.toUpperCase()}${moving.basis.slice(1)}.`]), ...(moving?.notKnown.map((one) => `Not known: ${one}.`) ?? [])],
    doubt: ['Angles hold for a machine that stands still on hard level ground; a jolt, a soft floor or a sling that slips takes it over sooner. A third of the least of them is kept.', 'The weight is the whole of it: motor, block and dies may or may not be counted in a weight that was told.'],
    cautions: moving?.cautions ?? ['top-heavy', 'two-people'],
    defers: 'It helps to talk with a rigger and does not stand in for one. Local rules for lifting gear and for the road come first.',
    sources: ['rigid-body-mechanics', 'from-memory', 'page-safety', 'page-other-families', 'common-practice'],
  };
}

/** Whole degrees on the safe side. */
const downTo = (angle: number): string => `${Math.floor((angle * 180) / Math.PI)}°`;

/** The least lean of the machine whole, and of what is left of it where that stands worse. */
function leanWords({ wholeLean = 0 }: Moving, least: number): string {
  return wholeLean === 0 || downTo(least) === downTo(wholeLean) ? downTo(least) : `${downTo(wholeLean)}, without its anvil from ${downTo(least)}`;
}

/** A throat that is cracked, or that nobody looked at, may part under a sling. */
function crackedWords({ findings, known }: Picture): string {
  const crack = findings.find((one) => one.criterion === 'frame.crack');
  const answer = known.looks['frame.crack']?.answer;
  if (answer === 'present' || answer === 'suspected') return `Do not sling it through the throat or by the column: ${answer === 'present' ? 'the frame is cracked' : 'a crack in the frame is suspected'}, and it may part under its own weight. A professional rigger decides how it is carried, from below.`;
  return crack === undefined || crack.grade === 'not-known' ? 'Look at throat and spine for cracks before anything is slung: nobody has.' : '';
}

function answerOf(answer: MovingAnswer, input: MovingInput, picture: Picture): SheetParts['answer'] {
  const { system } = picture;
  if (answer.state !== 'known') return { kind: 'answer', words: 'The weights cannot be as read', sentence: answer.problems.map((problem) => problem.sentence).join('. '), estimate: true, rests: 'Read them again.' };
  const angle = answer.leastLean;
  const base = answer.bearings.find((one) => one.id === 'base');
  const rollers = answer.bearings.find((one) => one.id === 'rollers');
  return {
    kind: 'answer', estimate: !input.weighed || input.assumedLengths.length > 0,
    words: `It weighs ${shownDoubt(input.mass, 'mass', system)}${angle === undefined ? '' : ` and goes over at a lean from ${leanWords(answer, angle)}`}`,
    sentence: [crackedWords(picture), answer.rigger.sentence, angle === undefined ? '' : `Keep every slope, jack and skid below ${downTo(angle / 3)}.`, base === undefined ? '' : `On the floor: ${shownRough(base.pressure, 'pressure', system, system === 'inch' ? 'psf' : 'kPa')} on its whole base${rollers === undefined ? '' : `, ${shownRough(rollers.pointLoad, 'force', system)} on one pipe roller`}.`].filter((one) => one !== '').join(' '),
    rests: input.weighed ? 'Weighed; the place of its weight is judged from the usual shape of such machines.' : 'Nobody weighed it: usual for its class. The place of its weight is judged from the usual shape of such machines.',
  };
}

function drawingBlocks({ picture, width }: OutlookGround, input: MovingInput, { whole }: Moving): readonly Block[] {
  if ('state' in whole) return [{ kind: 'paragraph', text: `No centre of gravity: ${whole.because}.` }];
  const drawn = gravityDrawing(picture, input, whole, width ?? 'sheet');
  return [
    { kind: 'heading', level: 2, text: 'Where its weight sits, and where it is held' },
    { kind: 'figure', svg: drawn.svg, words: drawn.words, tallest: 92, caption: 'Centre of gravity as a quartered circle, with the heights that hold it in 95 of a hundred. Chain line: what must stay over the base. Red: the tipping edge, and where slings and ties go.' },
  ];
}

function weightBlocks(input: MovingInput, moving: Moving, system: PrintSystem): readonly Block[] {
  const standing = (words: string, of: Standing | { readonly state: 'outside-validity'; readonly because: string }): TableRow => ({ cells: 'state' in of ? [words, `no figure: ${of.because}`, '', '', '', ''] : [words, shownRange(of.gravityHeight, 'length', system), ...[of.sideways, of.forwards, of.backwards].map((one) => shownRange(one, 'angle', system)), shownRange(of.pullAtTop, 'force', system)] });
  return [
    { kind: 'table', caption: 'How it stands, and the lean at which it goes over; the last column is the level pull at its top that starts it over its side', columns: ['What', 'Centre of gravity', 'Sideways', 'Forwards', 'Backwards', 'Pull at the top'], rows: [standing('whole', moving.whole), ...(moving.body === undefined ? [] : [standing('without its anvil', moving.body)])] },
    { kind: 'facts', rows: [
      ...moving.pieces.map((piece) => [`Lift: ${piece.words}`, `${shownDoubt(piece.mass, 'mass', system)}${input.weighed ? '' : ', estimate'}`] as const),
      ['In each sling leg', `${shownRange(moving.legTension, 'force', system)}: two legs at 60° from level, with a quarter added for the start of the lift`],
      ['To roll it on pipes', `${shownRough(moving.push.least, 'force', system)} to ${shownRough(moving.push.most, 'force', system)}, on a sound level floor`],
    ] },
  ];
}

function adviceBlocks(moving: Moving, system: PrintSystem): readonly Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Slings, skids and slopes' },
    { kind: 'list', ordered: false, items: [...moving.lift, ...moving.advice].map((one) => inSystem(one.sentence, system)) },
  ];
}

function floorBlocks(moving: Moving, system: PrintSystem): readonly Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Floor and door' },
    { kind: 'table', caption: 'Standing still, at the upper end of its weight; a jolt or one corner in the air doubles it', dense: true, columns: ['How it stands', 'Touches', 'Pressure', 'On one of them'], rows: moving.bearings.map((one) => ({ cells: [inSystem(one.words, system), shownRough(one.area, 'area', system), shownRough(one.pressure, 'pressure', system), shownRough(one.pointLoad, 'force', system)] })) },
    { kind: 'list', ordered: false, items: [inSystem(moving.floor.sentence, system), ...moving.door] },
  ];
}

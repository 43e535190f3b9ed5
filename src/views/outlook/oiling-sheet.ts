import { bearingTemperature, oilingRound, type OilingRound, type RoundPoint } from '../../derived/oiling/index.ts';
import { oilingLimit } from '../../derived/duty/index.ts';
import type { PrintSystem } from '../../derived/index.ts';
import { elevation } from '../elevation/elevation.ts';
import type { Block, TableRow } from '../report/block.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import type { OutlookGround, SheetParts } from './sheet-parts.ts';
import { shownPlain } from './shown.ts';

const WAY: Readonly<Record<RoundPoint['way'], string>> = { runs: 'runs', greased: 'packed with grease: wash it out', blocked: 'blocked: open it', none: 'no hole: from outside', 'not-checked': 'not probed' };
const MINUTE = 60;

/** Numbered points of one hammer's round: the page lets them be ticked off, the drawing and the table carry the same numbers. */
export interface NumberedPoint extends RoundPoint {
  readonly number: number;
  readonly drops: string;
  readonly when: string;
  readonly oil: string;
}

/** The round of this hammer with its numbers, at the temperature that was felt or measured at its bearings. */
export function numberedRound({ picture, outlook }: Pick<OutlookGround, 'picture' | 'outlook'>): { readonly round: OilingRound; readonly points: readonly NumberedPoint[] } {
  const temperature = bearingTemperature({ family: picture.known.identity.family, values: new Map(Object.entries(outlook.values)) });
  const round = oilingRound(picture.known, temperature, oilingLimit(picture.duty));
  return { round, points: round.points.map((one, index) => ({
    ...one, number: index + 1,
    drops: one.untouched !== undefined ? 'none' : `${one.point.count === 1 ? '' : `${one.point.count} × `}${span(one.point.drops)} drops`,
    when: one.untouched !== undefined ? 'never' : one.point.every === undefined ? 'before each session' : `every ${span([one.point.every[0] / MINUTE, one.point.every[1] / MINUTE])} min`,
    oil: `${one.grade === undefined ? `ISO VG ${one.point.grades.join(', ')}` : `ISO VG ${one.grade.grade}`}, ${one.point.what}`,
  })) };
}

/** Where oil goes, how much, how often, and what has to be opened before the first turn. */
export function oilingSheet(ground: OutlookGround): SheetParts {
  const { picture } = ground;
  const { system } = picture;
  const { round, points } = numberedRound(ground);
  const oiled = points.filter((one) => one.untouched === undefined);
  const places = points.reduce((sum, one) => sum + one.point.count, 0);
  // In the words of the limits card: two papers of one hammer say one thing.
  const shut = picture.duty.limits.find((limit) => limit.kind === 'oil-way-first');
  const unprobed = points.filter((one) => one.way === 'not-checked' && one.point.look !== undefined);
  const often = [...new Set(points.flatMap((one) => (one.point.every === undefined ? [] : [one.point.every[0] / MINUTE])))];
  return {
    answer: {
      kind: 'answer', estimate: unprobed.length > 0,
      words: shut !== undefined ? shut.sentence.slice(0, -1) : `Oil these ${oiled.length} points before starting`,
      sentence: [
        ...points.flatMap((one) => (one.untouched === undefined ? [] : [`${sentence(one.point.words)}: ${one.untouched.charAt(0).toLowerCase()}${one.untouched.slice(1)}`])),
        ...round.first.filter((_, index, all) => all.indexOf(round.first[index] ?? '') === index),
        `${places} places at ${oiled.length} points; then those of the shaft, linkage and ways again every ${often.length === 0 ? '15' : Math.min(...often)} min or so while it runs. About ${oilWords(round.perHour, system)} an hour in all.`,
      ].join(' '),
      rests: unprobed.length === 0 ? 'Every oil way was probed. Drops and intervals are common practice, no source.' : `${unprobed.length} oil ways were not probed on this hammer; drops and intervals are common practice, no source.`,
    },
    measureFirst: [
      ...(unprobed.length === 0 ? [] : [`Push a wire through the oil ways that nobody probed: ${unprobed.map((one) => `${one.number}, ${one.point.words}`).join('; ')}. A drop must run in by itself.`]),
      ...(temperatureRead(ground) ? [] : [onceItMayRun(picture, ['running.bearing-temperature'], 'Feel the bearings after ten minutes of running, or read them: a warm bearing wants a thicker oil.')]),
    ],
    body: () => [
      ...mapBlocks(ground, points),
      ...tableBlocks(points),
      { kind: 'heading', level: 2, text: 'How it is done' },
      { kind: 'list', ordered: false, items: [
        'Power off and locked and ram blocked, or from where no hand comes near a moving part.',
        'A drop that stands on the hole and does not run in: wire it through before more is poured on.',
        'It is a machine that loses its oil: what runs in runs out below. Wipe the floor; look whether each point is wet after ten minutes.',
        'Oil, not grease: grease shuts the holes. Dies, keys and dovetails stay dry.',
        'A new or a hot bearing gets twice as much for the first hours.',
      ] },
      { kind: 'facts', rows: [['In an hour of running', oilWords(round.perHour, system)], ['Before each session', `${dropWords(points.filter((one) => one.point.every === undefined))} for the points that are oiled only then, ${dropWords(points)} in all`], ['Bearings taken at', `${shownPlain(round.temperature, 'temperature', system, { resolution: 1 })}${temperatureRead(ground) ? '' : ', hand-warm, not measured'}`]] },
    ],
    assumed: [round.standing[0]!.toUpperCase() + round.standing.slice(1)],
    doubt: ['One owner counts a point as oiled only when it drips or flings; another counts drops. Both are practice, and both run.', ...(points.some((one) => one.grade?.fits === false) ? ['For some points no grade of the list holds at that temperature; the nearest is named.'] : [])],
    cautions: ['isolate', 'block-ram', 'pinch', 'dry-dovetail'],
    defers: 'A data sheet of the oil used is better than the grades here; where an owner or a maker of a new bearing says otherwise, that holds.',
    sources: ['common-practice', 'from-memory', 'page-bearings'],
  };
}

/** The round in the numbers of the drawing; oils are few, so each has a letter. */
function tableBlocks(points: readonly NumberedPoint[]): readonly Block[] {
  const oils = [...new Set(points.filter((one) => one.untouched === undefined).map((one) => one.oil))];
  const letter = (oil: string): string => 'ABCDEFGH'[oils.indexOf(oil)] ?? oil;
  const rowOf = (one: NumberedPoint): TableRow => ({ ...(one.untouched === undefined ? {} : { condition: 'stand-down' as const }), cells: [String(one.number), one.untouched === undefined ? `${sentence(one.point.words)}${one.point.note === undefined ? '' : `; ${one.point.note}`}` : `${sentence(one.point.words)}: ${one.untouched}`, one.drops, one.when, one.untouched === undefined ? letter(one.oil) : '–', one.point.look === undefined ? 'nothing to probe' : WAY[one.way]] });
  return [
    { kind: 'table', caption: 'All of them before starting, and while it runs as said; front to back, in the numbers of the drawing', columns: ['No.', 'Where', 'Drops', 'When', 'Oil', 'Oil way'], rows: points.map(rowOf) },
    { kind: 'facts', rows: oils.map((oil) => [`Oil ${letter(oil)}`, oil] as const) },
  ];
}

const sentence = (words: string): string => words[0]!.toUpperCase() + words.slice(1);
const span = ([least, most]: readonly [number, number]): string => (least === most ? String(least) : `${least} to ${most}`);

/** Oil is measured in what stands on the can. */
const oilWords = ({ least, most }: { readonly least: number; readonly most: number }, system: PrintSystem): string => {
  const print = (volume: number): string => shownPlain(volume, 'volume', system, system === 'inch' ? { unit: 'fl-oz', resolution: 2.95735295625e-7 } : { unit: 'cm3', resolution: 1e-6 });
  return `${print(least)} to ${print(most)}`;
};

const dropWords = (points: readonly NumberedPoint[]): string => [0, 1].map((end) => points.reduce((sum, { point }) => sum + point.count * (point.drops[end] ?? 0), 0)).join(' to ') + ' drops';

const temperatureRead = ({ outlook, picture }: OutlookGround): boolean => bearingTemperature({ family: picture.known.identity.family, values: new Map(Object.entries(outlook.values)) }) !== undefined;

/** Elevation with the numbers of the round on it; points of parts that it does not show are named under it. */
function mapBlocks({ picture, width }: OutlookGround, points: readonly NumberedPoint[]): readonly Block[] {
  const numbers = new Map<string, string>();
  for (const { number, point } of points) numbers.set(point.part, [numbers.get(point.part), String(number)].filter((one) => one !== undefined).join(', '));
  const svg = elevation(picture, { plain: true, oil: true, numbers, lettering: width === 'phone' ? 'phone' : 'small', view: width === 'phone' && picture.known.identity.family !== 'helve' ? 'side' : 'both' });
  const unseen = points.filter(({ point }) => !svg.includes(`class="balloon sound" data-part="${point.part}"`));
  return [
    { kind: 'heading', level: 2, text: 'Where' },
    { kind: 'figure', svg, words: `Oiling map of ${picture.known.identity.tag}: ${points.map(({ number, point }) => `${number}, ${point.words}`).join('; ')}.`, tallest: 96, caption: `Numbers as in the table.${unseen.length === 0 ? '' : ` Not on the drawing: ${unseen.map(({ number, point }) => `${number}, ${point.words}`).join('; ')}.`}` },
  ];
}

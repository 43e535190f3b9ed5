import { partOf, saysLeftOut, type AnswersOf, type LinkageFamily } from '../../hammer/index.ts';
import { asbestosWords, oilWayName } from '../../knowledge/index.ts';
import { oilFlow, type IsoGrade } from '../../methods/power/index.ts';
import type { Known } from '../survey/index.ts';
import { OIL_POINTS, type OilPoint } from './oil-points.ts';
import { gradeFor } from './viscosity.ts';

/** One point of the round on this hammer. */
export interface RoundPoint {
  readonly point: OilPoint;
  readonly part: string;
  /** as found; `not-checked` where nobody pushed a wire through */
  readonly way: 'runs' | 'greased' | 'blocked' | 'none' | 'not-checked';
  readonly grade?: { readonly grade: IsoGrade; readonly viscosity: number; readonly fits: boolean };
  /** m³/s while running, least and most */
  readonly flow: { readonly least: number; readonly most: number };
  /** Why no hand and no oil goes there; absent where it is oiled. */
  readonly untouched?: string;
  readonly sentence: string;
}

export interface OilingRound {
  readonly points: readonly RoundPoint[];
  /** m³ in an hour of running, least and most by drops, intervals and drop size; without the drops before each session */
  readonly perHour: { readonly least: number; readonly most: number };
  /** m³ for the drops before each session */
  readonly perSession: { readonly least: number; readonly most: number };
  /** K taken for the bearings */
  readonly temperature: number;
  /** what has to be put right before running */
  readonly first: readonly string[];
  /** lines for a card at the machine */
  readonly card: readonly string[];
  readonly standing: string;
}

/** K of a bearing where none was measured: hand-warm */
const HAND_WARM = 308;
const HOUR = 3600;
const MINUTE = 60;

const WAYS = ['runs', 'greased', 'blocked', 'none'] as const;

const range = ([least, most]: readonly [number, number]): string => (least === most ? `${least}` : `${least} to ${most}`);

/** s between two oilings as words. */
const interval = (point: OilPoint): string => (point.every === undefined ? 'before each session' : `every ${range([point.every[0] / MINUTE, point.every[1] / MINUTE])} min of running`);

/** Whether this hammer has the part, and what else the point asks for. */
const isHere = ({ part, onlyWhere }: OilPoint, looks: AnswersOf): boolean => saysLeftOut(part, looks) === undefined && (onlyWhere === undefined || onlyWhere.answers.includes(looks[onlyWhere.look]?.answer ?? ''));

/** A point as often as it is usual, or as the limit asks where that is sooner. */
const within = (point: OilPoint, limit: number | undefined): OilPoint => (point.every === undefined || limit === undefined ? point : { ...point, every: [Math.min(point.every[0], limit), Math.min(point.every[1], limit)] });

/** Oil that a point takes, m³/s of running: least drops at the longest interval, most at the shortest. */
function flowOf(point: OilPoint): { readonly least: number; readonly most: number } {
  if (point.every === undefined) return { least: 0, most: 0 };
  return { least: oilFlow((point.count * point.drops[0]) / point.every[1]).least, most: oilFlow((point.count * point.drops[1]) / point.every[0]).most };
}

/**
 * The oiling round of a hammer: points by family, what to put where, how much and how often.
 * @param known the hammer as known, for its family and for the oil ways that were probed; or a family alone
 * Points on parts that it has not got are left out.
 * @param temperature K of the bearings running, where it was measured
 * @param limit s between two oilings that the limits allow at the most: no point waits longer while it stands
 */
export function oilingRound(known: Pick<Known, 'identity' | 'looks'> | LinkageFamily, temperature = HAND_WARM, limit?: number): OilingRound {
  const family = typeof known === 'string' ? known : known.identity.family;
  const looks = typeof known === 'string' ? {} : known.looks;
  const points = OIL_POINTS.filter((point) => point.families.includes(family) && isHere(point, looks)).map((one): RoundPoint => {
    const untouched = one.part === 'clutch-facing' ? asbestosWords(looks) : undefined;
    const point: OilPoint = untouched === undefined ? within(one, limit) : { ...one, count: 0, drops: [0, 0] };
    const answer = point.look === undefined ? undefined : looks[point.look]?.answer;
    const grade = gradeFor(point.grades, temperature);
    return {
      point, part: partOf(point.part)?.name.us ?? point.part, way: WAYS.find((way) => way === answer) ?? 'not-checked', flow: flowOf(point), ...(untouched === undefined ? {} : { untouched }), ...(grade === undefined ? {} : { grade }),
      sentence: untouched !== undefined ? `${point.words}: ${untouched}` : `${point.words}: ${point.count === 1 ? '' : `${point.count} places, each `}${range(point.drops)} drops ${interval(point)}; ISO VG ${point.grades.join(', ')}; ${point.what}${point.note === undefined ? '' : `; ${point.note}`}.`,
    };
  });
  const perHour = sum(points.map((one) => ({ least: one.flow.least * HOUR, most: one.flow.most * HOUR })));
  const perSession = sum(points.filter((one) => one.point.every === undefined && one.untouched === undefined).map((one) => ({ least: oilFlow(one.point.count * one.point.drops[0]).least, most: oilFlow(one.point.count * one.point.drops[1]).most })));
  const first = points.flatMap((one) => firstOf(one, family));
  return {
    points, perHour, perSession, temperature, first, card: cardOf(points, perHour, first),
    standing: 'drops, intervals and grades are common practice, no source; drop size and 100 °C viscosities from memory; viscosity at temperature by ASTM D341',
  };
}

const sum = (parts: readonly { readonly least: number; readonly most: number }[]): { readonly least: number; readonly most: number } => parts.reduce((all, one) => ({ least: all.least + one.least, most: all.most + one.most }), { least: 0, most: 0 });

function firstOf({ point, way }: RoundPoint, family: LinkageFamily): readonly string[] {
  const name = (point.look === undefined ? undefined : oilWayName(point.look, family)) ?? point.words;
  switch (way) {
    case 'blocked':
      return [`Open the blocked oil way first: ${name}.`];
    case 'greased':
      return [`Wash the grease out first: ${name}.`];
    case 'none':
      return [`No oil hole at ${point.words}: oil it from outside, where the joint opens, or have one drilled.`];
    default:
      return [];
  }
}

function cardOf(points: readonly RoundPoint[], perHour: OilingRound['perHour'], first: readonly string[]): readonly string[] {
  const millilitres = (volume: number): string => (volume * 1e6).toPrecision(2);
  const often = points.filter((one) => one.point.every !== undefined);
  const session = points.filter((one) => one.point.every === undefined);
  const line = (one: RoundPoint): string => one.untouched !== undefined ? `${one.point.words}: ${one.untouched}` : `${one.point.words}: ${one.point.count === 1 ? '' : `${one.point.count} x `}${range(one.point.drops)} drops${one.grade === undefined ? '' : `, ISO VG ${one.grade.grade}`}`;
  return [
    ...first,
    'Power off and ram blocked, or from where no hand comes near a moving part.',
    ...[...new Set(often.map((one) => interval(one.point)))].flatMap((when) => [`${when[0]!.toUpperCase()}${when.slice(1)}:`, ...often.filter((one) => interval(one.point) === when).map((one) => `  ${line(one)}`)]),
    'Before each session:', ...session.map((one) => `  ${line(one)}`),
    `About ${millilitres(perHour.least)} to ${millilitres(perHour.most)} ml an hour in all; it runs out at the bottom: wipe the floor. Oil, not grease. Dies, keys and dovetails stay dry.`,
  ];
}


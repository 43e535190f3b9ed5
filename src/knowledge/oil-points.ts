import { LINKAGE_FAMILIES, type LinkageFamily } from '../hammer/index.ts';
import type { IsoGrade } from '../methods/power/index.ts';

/** Where oil goes: a plain-oil, total-loss machine. */
export interface OilPoint {
  readonly id: string;
  readonly words: string;
  /** part id of the vocabulary */
  readonly part: string;
  readonly families: readonly LinkageFamily[];
  /** only where this look has one of these answers */
  readonly onlyWhere?: { readonly look: string; readonly answers: readonly string[] };
  /** holes or surfaces, so many times the drops */
  readonly count: number;
  /** drops each time, least and most */
  readonly drops: readonly [least: number, most: number];
  /** s of running between two oilings, least and most; absent: once before each session */
  readonly every?: readonly [least: number, most: number];
  readonly grades: readonly IsoGrade[];
  readonly what: string;
  /** the look that says whether the way is open */
  readonly look?: string;
  readonly note?: string;
  readonly source: string;
}

const EVERY = LINKAGE_FAMILIES;
const GUIDED: readonly LinkageFamily[] = ['coil-and-toggle', 'bow-spring'];
const MINUTE = 60;
const QUARTER_TO_HALF_HOUR = [15 * MINUTE, 30 * MINUTE] as const;
const QUARTER_HOUR = [15 * MINUTE, 15 * MINUTE] as const;
const BEARING = [32, 46, 68] as const;
const PLAIN = 'plain machine or way oil, no detergent needed, no grease: it blocks the holes';
const TACKY = 'way oil or tacky bar oil';

/** The round, front to back. Grades, drops and intervals are for the owner to change; more for a hot or a new bearing. */
export const OIL_POINTS: readonly OilPoint[] = [
  { id: 'main-front', words: 'main bearing, crank end', part: 'main-bearings', families: EVERY, count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, look: 'oil-ways.open@main-front', source: 'common-practice' },
  { id: 'main-rear', words: 'main bearing, rear', part: 'main-bearings', families: EVERY, count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, look: 'oil-ways.open@main-rear', source: 'common-practice' },
  { id: 'crank-pin', words: 'crank pin', part: 'crank', families: EVERY, count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, look: 'oil-ways.open@crank-pin', source: 'common-practice' },
  { id: 'crosshead', words: 'crosshead pin', part: 'crosshead', families: ['coil-and-toggle'], count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, look: 'oil-ways.open@crosshead', source: 'common-practice' },
  { id: 'toggle-pins', words: 'toggle pins, all four, and both link pins at the ram', part: 'toggle-pins', families: ['coil-and-toggle'], count: 6, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: TACKY, look: 'oil-ways.open@linkage-pins', note: 'a dry pin seizes and breaks its arm', source: 'common-practice' },
  { id: 'bow-pivots', words: 'bow clip pivot and both eyes', part: 'bow-spring', families: ['bow-spring'], count: 3, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: TACKY, look: 'oil-ways.open@linkage-pins', note: 'keep oil off leather straps', source: 'common-practice' },
  { id: 'helve-pivots', words: 'helve pivots, left and right', part: 'helve', families: ['helve'], count: 2, drops: [3, 6], every: QUARTER_TO_HALF_HOUR, grades: [68, 100, 150], what: TACKY, look: 'oil-ways.open@linkage-pins', note: 'slow and heavily loaded: the thicker grades', source: 'common-practice' },
  { id: 'rod-pin', words: 'upper end of the rod', part: 'connecting-rod', families: ['helve'], count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, source: 'common-practice' },
  { id: 'rod-pin-at-bow', words: 'lower end of the rod, at the bow', part: 'connecting-rod', families: ['bow-spring'], count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, source: 'common-practice' },
  { id: 'ways', words: 'ram ways, both sides, top of stroke', part: 'ways', families: GUIDED, count: 2, drops: [4, 8], every: QUARTER_HOUR, grades: [46, 68, 100], what: TACKY, look: 'oil-ways.open@ways', note: 'sparingly near the dies: dovetails stay dry', source: 'common-practice' },
  { id: 'idler', words: 'idler pulley on its pin', part: 'belt-idler', onlyWhere: { look: 'belt-idler.fitted', answers: ['yes'] }, families: EVERY, count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, note: 'keep oil off the belt: the belt is the clutch', source: 'common-practice' },
  { id: 'clutch-pulley', words: 'clutch pulley bush', part: 'clutch-pulley', families: EVERY, count: 1, drops: [2, 4], every: QUARTER_TO_HALF_HOUR, grades: BEARING, what: PLAIN, look: 'oil-ways.open@clutch-pulley', source: 'common-practice' },
  { id: 'clutch-facing', words: 'clutch facing', part: 'clutch-facing', families: EVERY, count: 1, drops: [1, 3], grades: [10, 15, 22], what: 'thin oil, a few drops, so that it slips and does not grab; never tacky oil', note: 'owners differ over oil on leather; not on a dry lining', source: 'common-practice' },
  { id: 'shipper', words: 'shipper saddle and yoke pins', part: 'shipper', families: EVERY, count: 3, drops: [1, 2], grades: [32, 46, 68], what: PLAIN, source: 'common-practice' },
  { id: 'treadle', words: 'treadle pivots', part: 'treadle', families: EVERY, count: 2, drops: [1, 2], grades: [32, 46, 68], what: PLAIN, look: 'oil-ways.open@treadle', source: 'common-practice' },
];

/** Plain mineral oils of viscosity index 95 or so: mm²/s at 100 °C by grade. A data sheet of the oil used is better. */
export const OIL_AT_HUNDRED: { readonly source: string; readonly viscosity: Readonly<Partial<Record<IsoGrade, number>>> } = {
  source: 'from-memory',
  viscosity: { 10: 2.6, 15: 3.4, 22: 4.3, 32: 5.4, 46: 6.8, 68: 8.7, 100: 11.2, 150: 14.7, 220: 19, 320: 24.5, 460: 31 },
};

/** m²/s below which a drop runs straight out of a slow plain bearing, and above which it does not run in at all. */
export const OIL_RUNS = { thin: 15e-6, thick: 500e-6, source: 'common-practice' } as const;

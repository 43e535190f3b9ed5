import type { LinkageFamily } from '../hammer/index.ts';

/** How an oil way is called behind `the oil way of the`, by the place of its look; one that every family has alike, or by family. */
const OIL_WAYS: Readonly<Record<string, string | Readonly<Record<LinkageFamily, string>>>> = {
  'main-front': 'crank-end main bearing', 'main-rear': 'rear main bearing', 'crank-pin': 'crank pin', crosshead: 'crosshead pin',
  'linkage-pins': { 'coil-and-toggle': 'toggle and link pins', 'bow-spring': 'bow clip pivot and eyes', helve: 'helve pivots' },
  ways: 'ram ways', 'clutch-pulley': 'clutch pulley bush', treadle: 'treadle pivots',
};

const LOOK = 'oil-ways.open@';

/**
 * What an oil way is called on a hammer of this family, so that every paper calls it alike: `helve pivots`.
 * @param key of the look with its place @returns undefined for any other key
 */
export function oilWayName(key: string, family: LinkageFamily): string | undefined {
  const name = key.startsWith(LOOK) ? OIL_WAYS[key.slice(LOOK.length)] : undefined;
  return typeof name === 'object' ? name[family] : name;
}

import { valueKey, type Value } from '../value.ts';
import { CORNERS } from '../../hammer/index.ts';

/** Places whose greatest corner is the reading: one open corner under the base lets it rock, however tight the other three are. */
const GREATEST_COUNTS: readonly string[] = ['base.rock'];

/**
 * Where a place was read at corners only, the reading of the place is their mean, or the greatest of them where one corner decides. Its doubt holds both the tool's doubt
 * and the scatter of the corners (GUM, JCGM 100:2008, 4.2.3 and 5.1.2).
 * @param values readings by key
 * @returns one value for each place that has at least two corners and no reading of its own
 */
export function cornerMeans(values: ReadonlyMap<string, Value>): readonly Value[] {
  const byPlace = new Map<string, Value[]>();
  for (const value of values.values()) {
    const [place, at] = value.key.split('@');
    if (place === undefined || at === undefined || !CORNERS.includes(at)) continue;
    byPlace.set(place, [...(byPlace.get(place) ?? []), value]);
  }
  const means: Value[] = [];
  for (const [place, corners] of byPlace) {
    if (corners.length < 2 || values.has(valueKey(place))) continue;
    const known = corners.flatMap((corner) => (corner.outcome.state === 'known' ? [corner.outcome.quantity] : []));
    const [first] = known;
    if (first === undefined) continue;
    const count = known.length;
    const mean = known.reduce((sum, one) => sum + one.value, 0) / count;
    const scatter = known.reduce((sum, one) => sum + (one.value - mean) ** 2, 0) / (count - 1) / count;
    const tool = known.reduce((sum, one) => sum + one.uncertainty, 0) / count;
    const when = corners.map((corner) => corner.when ?? '').sort().at(-1) ?? '';
    const worst = known.reduce((one, other) => (other.value > one.value ? other : one));
    const greatest = GREATEST_COUNTS.includes(place);
    means.push({
      key: place, title: corners[0]?.title ?? place, standing: 'measured', rests: corners.some((corner) => corner.rests === 'told') ? 'told' : 'measured',
      outcome: { state: 'known', quantity: greatest ? worst : { dimension: first.dimension, value: mean, uncertainty: Math.sqrt(scatter + tool ** 2) } },
      from: corners.map((corner) => corner.key), formula: `${greatest ? 'greatest' : 'mean'} of ${count} corners`, sources: [], evidence: corners.flatMap((corner) => corner.evidence), when,
      ...(corners[0]?.way === undefined ? {} : { way: corners[0].way }),
    });
  }
  return means;
}

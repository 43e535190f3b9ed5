import { instantMs, type Entry } from '../../entries/index.ts';
import type { Criterion, Knowledge } from '../../knowledge/index.ts';
import { readQuantity } from '../../methods/quantity/index.ts';
import { placeOf } from '../../hammer/index.ts';
import type { Known } from '../survey/index.ts';
import { dateOf } from './calendar-day.ts';
import { hoursRun } from './hours-run.ts';
import { wearForecast, type WearForecast } from './wear-forecast.ts';

/** Wear of one measuring place, and when it comes to the steps of the criterion that judges it. */
export interface Wear {
  readonly key: string;
  readonly title: string;
  /** What the wear is reckoned over: running time, s, where the log has hours over the readings, else days. */
  readonly over: 'running time' | 'days';
  readonly readings: number;
  /** When each reading was taken, oldest first. */
  readonly dates: readonly string[];
  readonly forecast: WearForecast;
  readonly steps: readonly WearStep[];
}

/** When wear comes to one step of its criterion: hours run or dates, and how far off that is from now. */
export interface WearStep {
  readonly grade: string;
  readonly from: string;
  readonly already: boolean;
  readonly likely?: string;
  readonly earliest?: string;
  readonly latest?: string;
  /** From now: running time, s, or days; below nought where it should be there by now. */
  readonly ahead: { readonly likely?: number; readonly earliest?: number; readonly latest?: number };
}

const DAY = 86_400;
/** What a running trial reads is how the hammer runs, and wears nowhere. */
const TRIAL = 'running.';

/**
 * Wear of every place that has been read at least twice since the last job that could have changed it.
 * @param asOf instant up to which entries count
 */
export function wearOf(known: Known, entries: readonly Entry[], knowledge: Knowledge, asOf: string): readonly Wear[] {
  const use = hoursRun(entries, asOf);
  return Object.entries(known.history).flatMap(([key, past]): readonly Wear[] => {
    const [id = key] = key.split('@');
    if (id.startsWith(TRIAL)) return [];
    const judged = knowledge.criteria.filter((criterion) => criterion.rule.kind === 'measured' && criterion.rule.value === id && criterion.families.includes(known.identity.family));
    const since = lastRepair(known, judged);
    const counted = past.filter((one) => since === undefined || one.when > since);
    if (counted.length < 2) return [];
    const run = counted.map((one) => use.until(one.when));
    const byTime = new Set(run).size >= Math.min(3, counted.length);
    const places = byTime ? run : counted.map((one) => (instantMs(one.when) ?? 0) / 1000 / DAY);
    const forecast = wearForecast(counted.map((one, index) => ({ at: places[index] ?? 0, value: one.value, uncertainty: one.uncertainty })));
    return [{
      key, title: placeOf(id)?.place.name ?? id, over: byTime ? 'running time' : 'days', readings: counted.length, dates: counted.map((one) => one.when), forecast,
      steps: judged.flatMap((criterion) => stepsOf(criterion, forecast, byTime ? use.until(asOf) : (instantMs(asOf) ?? 0) / 1000 / DAY, (place) => (byTime ? `${Math.round(place / 3_600)} h run` : dateOf(Math.floor(place))))),
    }];
  });
}

/** Readings from before a repair say nothing of the wear after it. */
function lastRepair(known: Known, judged: readonly Criterion[]): string | undefined {
  return judged.flatMap((criterion) => criterion.cures).flatMap((job) => { const one = known.progress[job]; return one?.state === 'done' ? [one.when] : []; }).sort().at(-1);
}

function stepsOf(criterion: Criterion, forecast: WearForecast, now: number, shown: (place: number) => string): Wear['steps'] {
  const { rule } = criterion;
  if (rule.kind !== 'measured' || forecast.state !== 'fitted') return [];
  return rule.steps.flatMap((step) => {
    const dimension = placeOf(rule.value)?.place.dimension;
    const reading = dimension === undefined ? undefined : readQuantity(step.from, { dimension, field: rule.value });
    if (reading === undefined || !reading.ok) return [];
    const { already, ...places } = forecast.reaches(reading.quantity.value, rule.worse);
    const each = (as: (place: number) => unknown) => Object.fromEntries(Object.entries(places).map(([end, place]) => [end, as(place)]));
    return [{ grade: step.grade, from: step.from, already, ...(each(shown) as Pick<WearStep, 'likely'>), ahead: each((place) => place - now) as WearStep['ahead'] }];
  });
}

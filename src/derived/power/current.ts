import { fullLoadCurrent, greatestBreakerRating, leastConductorCurrent } from '../../methods/power/index.ts';
import type { PowerInput } from './power-input.ts';

/** Rated voltages of the table, and how far a plate may differ from one and still mean it: 220 and 240 V motors stand in its 230 V column. */
const RATED = { single: [230], three: [200, 208, 230, 460, 575] } as const;
const NEAR = 0.05;

/** What wire and breaker are chosen from. */
export type TableCurrent =
  | {
      readonly state: 'known';
      /** A */
      readonly current: number;
      /** V of the column taken */
      readonly column: number;
      readonly source: string;
      /** least that the conductors carry and greatest breaker, A: for the electrician, under the local code */
      readonly conductors: number;
      readonly breaker: number;
      readonly note: string;
    }
  | { readonly state: 'outside-validity'; readonly because: string }
  | { readonly state: 'not-known'; readonly missing: readonly string[] }
  | { readonly state: 'does-not-apply'; readonly because: string };

/** Full-load current by the US code's table, for choosing wire and breaker. The plate's own current is for the overload. */
export function tableCurrent(input: PowerInput): TableCurrent {
  if (input.phase === 'direct-current') return { state: 'does-not-apply', because: 'a direct-current motor is in other tables; the electrician works from its plate' };
  const missing = [...(input.power === undefined ? ['motor.power'] : []), ...(input.voltage === undefined ? ['motor.voltage'] : []), ...(input.phase === 'not-known' ? ['motor.phase'] : [])];
  if (missing.length > 0 || input.power === undefined || input.voltage === undefined) return { state: 'not-known', missing };
  const phases = input.phase === 'single' ? 1 : 3;
  const { voltage } = input;
  const columns: readonly number[] = phases === 1 ? RATED.single : RATED.three;
  const nearest = columns.reduce((best, one) => (Math.abs(one - voltage) < Math.abs(best - voltage) ? one : best));
  const column = Math.abs(nearest / voltage - 1) <= NEAR ? nearest : voltage;
  const found = fullLoadCurrent({ phases, voltage: column, power: input.power });
  if (found.state !== 'known') return found;
  return {
    state: 'known', current: found.current, column, source: found.source, conductors: leastConductorCurrent(found.current), breaker: greatestBreakerRating(found.current),
    note: `${column === voltage ? '' : `The plate says ${voltage.toFixed(0)} V; the ${column} V column is taken. `}${found.note}`,
  };
}

export interface CurrentRange {
  /** A */
  readonly least: number;
  readonly most: number;
  readonly standing: string;
}

/** Efficiency times power factor of small induction motors at full load: from a worn old one to a good new one (from memory). */
const USEFUL = { single: [0.42, 0.68], three: [0.58, 0.77] } as const;

/** Full-load current reckoned from power and voltage, for a motor that the table does not hold; undefined where either is not known. */
export function reckonedCurrent(input: PowerInput): CurrentRange | undefined {
  if (input.power === undefined || input.voltage === undefined || input.phase === 'direct-current' || input.phase === 'not-known') return undefined;
  const [low, high] = input.phase === 'single' ? USEFUL.single : USEFUL.three;
  const full = input.power / (input.voltage * (input.phase === 'single' ? 1 : Math.sqrt(3)));
  return { least: full / high, most: full / low, standing: 'power / (volts x efficiency x power factor), the last two from memory' };
}

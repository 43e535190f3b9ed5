import type { PowerInput } from './power-input.ts';

/** A sentence for whoever stands beside the electrics. */
export interface WiringCaution {
  readonly sentence: string;
  /** id of a source in knowledge */
  readonly source: string;
  /** true where it is so on this hammer, as found; false where it holds for all */
  readonly found: boolean;
}

const ALWAYS: readonly WiringCaution[] = [
  { sentence: 'All of this is for a licensed electrician, and the local code governs: the figures prepare the talk and replace neither.', source: 'page-safety', found: false },
  { sentence: 'A lockable isolator within reach of the operator, and a starter that stays off when the supply comes back.', source: 'osha-1910-218', found: false },
  { sentence: 'Wire and breaker go by the code’s table, the overload by the motor’s plate.', source: 'nec-430', found: false },
];

/** Most that an overload may be set to, over the plate's current. */
const OVERLOAD_MOST = 1.25;

/** True where an overload that is said to be set to the plate lets through more than it can: setting and reading cannot both be right. */
export const overloadAtOdds = ({ overload, plateCurrent, runningCurrents }: PowerInput): boolean =>
  overload === 'set' && plateCurrent !== undefined && Math.max(0, ...runningCurrents) >= OVERLOAD_MOST * plateCurrent;

/** What to beware of on this supply: what holds for all, and what was found here. */
export function wiringCautions(input: PowerInput): readonly WiringCaution[] {
  const found = (sentence: string, source = 'page-safety'): WiringCaution => ({ sentence, source, found: true });
  return [
    ...(input.liveParts === 'exposed' ? [found('Live parts are open to the hand: the supply is cut off until they are covered.')] : []),
    ...(input.isolation === 'none' ? [found('There is nothing to isolate it with: it is not run.', 'osha-1910-218')] : []),
    ...(input.isolation === 'plug' ? [found('The plug is its isolator: it needs a lock or to stay in the pocket of whoever has hands inside.', 'osha-1910-147')] : []),
    ...(input.noVolt === 'restarts' ? [found('It starts again by itself when the supply comes back: a no-volt release is fitted first.')] : []),
    ...(input.overload === 'none' || input.overload === 'wrong' ? [found('The overload is missing or set wrong: a stalled motor burns.', 'nec-430')] : []),
    ...(overloadAtOdds(input) ? [found('The overload is said to be set to the plate, and the motor was read above 125 % of it: one of the two is wrong. Dial and clamp meter are looked at before it runs long.', 'nec-430')] : []),
    ...(input.phase === 'three-from-converter' ? [found('The made leg of the converter is live whenever it turns, and its voltage wanders with the load: nothing that controls or stops the hammer hangs on it.')] : []),
    ...(input.converter === 'electronic' ? [found('An electronic drive holds its charge for minutes after it is cut off.')] : []),
    ...(input.phase === 'direct-current' ? [found('Direct current does not let go at a switch made for alternating current: rated parts only.')] : []),
    ...ALWAYS,
  ];
}

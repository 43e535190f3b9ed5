import { knownNumber, put, type Ledger } from '../ledger.ts';
import type { Known } from '../survey/index.ts';
import { oilingRound } from './oiling-round.ts';

const TEMPERATURES = ['running.bearing-temperature@front', 'running.bearing-temperature@rear', 'running.bearing-temperature@clutch-pulley'];

/** Temperature of the warmest bearing that was measured, K, or undefined. */
export function bearingTemperature(ledger: Ledger): number | undefined {
  const read = TEMPERATURES.flatMap((key) => knownNumber(ledger, key) ?? []);
  return read.length === 0 ? undefined : Math.max(...read);
}

/** How much oil an hour of running takes. @param limit s between two oilings that the limits allow at the most */
export function workOutOiling(ledger: Ledger, known: Known, limit?: number): void {
  const { perHour, standing } = oilingRound(known, bearingTemperature(ledger), limit);
  put(ledger, {
    key: 'oiling.per-hour', title: 'oil for an hour of running', standing: 'worked-out', rests: 'assumed', from: [], formula: 'sum over the points of drops / interval / drops in a millilitre', sources: ['common-practice', 'from-memory'], evidence: [], words: standing,
    outcome: { state: 'known', quantity: { dimension: 'volume', value: (perHour.least + perHour.most) / 2, uncertainty: (perHour.most - perHour.least) / 4, interval: [perHour.least, perHour.most] } },
  });
}

import { CORNERS } from '../../hammer/index.ts';
import { STRIKE_TEST } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Known, PastReading } from '../survey/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { AcceptancePoint } from './acceptance-point.ts';
import { shopQuantity } from './shop-quantity.ts';

const PLACE = 'running.test-bar-thickness';
/** What a bar is worth printing to, m: a thousandth of an inch, a hundredth of a millimetre. */
const THOU = 0.0000254;
const HUNDREDTH = 0.00001;

/**
 * The strike test by itself: the bar after the blows is alike at its corners, and no thicker than in the last test before
 * the repair. A bar that is thicker by more than the doubt of both readings (95 %) was hit more weakly than before.
 * Whether the blow is as strong as it should be is asked of its energy.
 * @param since instant from which readings count
 */
export function strikeTest(known: Known, since: string | undefined, system: PrintSystem): AcceptancePoint {
  const common = { id: 'strike-test', title: 'Hot test bar after five blows', source: STRIKE_TEST.source };
  const figure = (value: number): string => formatQuantity({ dimension: 'length', value, uncertainty: 0 }, { unit: system === 'inch' ? 'in' : 'mm', resolution: system === 'inch' ? THOU : HUNDREDTH, doubt: false });
  const keys = CORNERS.map((corner) => `${PLACE}@${corner}`);
  const of = (when: (one: PastReading) => boolean): readonly (PastReading | undefined)[] => keys.map((key) => known.history[key]?.filter(when).at(-1));
  const after = of((one) => since === undefined || one.when >= since);
  const read = after.flatMap((one) => one ?? []);
  if (read.length < keys.length) return { ...common, state: 'not-done', reason: 'The bar is measured at all four corners.', shown: read.map((one) => one.asWritten).join(', '), missing: keys.filter((_, index) => after[index] === undefined) };
  const mean = meanOf(read);
  const spread = Math.max(...read.map((one) => one.value)) - Math.min(...read.map((one) => one.value));
  const shown = `mean ${figure(mean.value)}, corners within ${figure(spread)}`;
  const hair = 1 + 1e-9;
  if (spread > shopQuantity(STRIKE_TEST.greatestSpread, 'length', 'strike test').value * hair) return { ...common, state: 'red', reason: `The corners differ by more than ${STRIKE_TEST.greatestSpread}: the dies do not meet alike.`, shown, missing: [] };
  const before = since === undefined ? [] : of((one) => one.when < since).flatMap((one) => one ?? []);
  if (before.length === keys.length) {
    const old = meanOf(before);
    if (mean.value - old.value > 2 * Math.sqrt(mean.uncertainty ** 2 + old.uncertainty ** 2)) return { ...common, state: 'red', reason: `The bar is thicker than before the repair, ${figure(old.value)}: it hits more weakly.`, shown, missing: [] };
    return { ...common, state: 'green', reason: `Before the repair ${figure(old.value)}.`, shown, missing: [] };
  }
  return { ...common, state: 'green', reason: `Alike at its corners. ${STRIKE_TEST.sledgeWords}`, shown, missing: [] };
}

/** Mean of the corners. One tool and one hand took them all, so its doubt does not shrink with their number. */
function meanOf(read: readonly PastReading[]): { readonly value: number; readonly uncertainty: number } {
  return { value: read.reduce((sum, one) => sum + one.value, 0) / read.length, uncertainty: Math.max(...read.map((one) => one.uncertainty)) };
}

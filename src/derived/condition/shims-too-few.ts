import { formatQuantity, type Quantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Value } from '../value.ts';
import type { Finding } from './finding.ts';

const CRITERION = 'journals.shims-left';
const VALUE = 'journals.shims-left-after@';
const TAKE_OUT = 'bearings.take-out-shims';
const POUR = 'bearings.pour';

/**
 * What is in the caps against what has to come out, where that is more: both figures, how many are too few, and what taking
 * all of them would leave. What is reckoned is not said to be found.
 * @returns undefined where the value is another, or where there are enough
 */
export function shimsTooFew(value: Value, values: ReadonlyMap<string, Value>, system: PrintSystem): string | undefined {
  if (!value.key.startsWith(VALUE) || value.outcome.state !== 'known' || value.outcome.quantity.value >= 0) return undefined;
  const end = value.key.slice(VALUE.length);
  const known = (key: string): Quantity | undefined => { const outcome = values.get(key)?.outcome; return outcome?.state === 'known' ? outcome.quantity : undefined; };
  const [there, out, clearance] = [known(`bearing-caps.shims@${end}`), known(`journals.shims-to-remove@${end}`), known(`main-bearings.clearance@${end}`)];
  if (there === undefined || out === undefined) return undefined;
  // All three to the digits that what is wanting is known to.
  const { uncertainty } = value.outcome.quantity;
  const print = (quantity: Quantity, doubt = false): string => formatQuantity({ ...quantity, uncertainty }, { system, doubt });
  const left = clearance === undefined ? '' : `; all of them out would leave about ${print({ ...clearance, value: Math.max(0, clearance.value - there.value) })} of clearance`;
  return `${print(there)} there, ${print(out)} to take out: ${print({ ...value.outcome.quantity, value: -value.outcome.quantity.value }, true)} too few, reckoned${left}`;
}

/** Where there are too few shims, taking them out sets no bearing: it is poured. */
export function pourWhereTooFew(findings: readonly Finding[]): readonly Finding[] {
  const short = findings.filter((finding) => finding.criterion === CRITERION && finding.grade === 'limited').map((finding) => finding.at);
  if (short.length === 0) return findings;
  return findings.map((finding) => (short.includes(finding.at) && finding.cures.includes(TAKE_OUT) ? { ...finding, cures: [...new Set(finding.cures.map((job) => (job === TAKE_OUT ? POUR : job)))] } : finding));
}

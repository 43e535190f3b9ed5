import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Value, ValueStanding } from '../value.ts';
import type { PrintSystem } from '../print-system.ts';
import type { Graded } from './grade-measured.ts';

/** A value as a person reads it: as written for a reading, with the doubt behind; worked out otherwise. */
export function shownReading(value: Value, system: PrintSystem): string {
  if (value.outcome.state !== 'known') return '';
  const printed = formatQuantity(value.outcome.quantity, { system, doubt: true });
  return value.asWritten === undefined || value.asWritten === printed ? printed : `${value.asWritten} (${printed})`;
}

/** How sure, in words. */
export function sureWordsFor(graded: Graded, rests: ValueStanding): string {
  const basis = rests === 'told' ? ', told, not measured' : rests === 'assumed' ? ', an estimate' : '';
  if (graded.sure >= 0.975) return `sure${basis}`;
  if (graded.sure >= 0.5) return `probably, ${Math.round(graded.sure * 100)} %${basis}`;
  return `doubtful, ${Math.round(graded.sure * 100)} %${basis}`;
}

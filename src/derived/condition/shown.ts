import { placeOf } from '../../hammer/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Value, ValueStanding } from '../value.ts';
import { inOtherUnits, type PrintSystem } from '../print-system.ts';
import type { Graded } from './grade-measured.ts';

/** A value as a person reads it: as written for a reading, with its doubt; in the reader’s units first where it was written in others; worked out otherwise. */
export function shownReading(value: Value, system: PrintSystem): string {
  if (value.outcome.state !== 'known') return '';
  const { quantity } = value.outcome;
  // What is left and below nothing is short: nobody reads less than nothing.
  if (quantity.value < 0 && / left\b/u.test(value.title)) return `none, and ${formatQuantity({ ...quantity, value: -quantity.value }, { system, doubt: true })} short`;
  const printed = formatQuantity(quantity, { system, doubt: true, neverBelow: neverBelow(value.key) });
  if (value.asWritten === undefined || value.asWritten === printed) return printed;
  if (inOtherUnits(value.asWritten, system)) return `${printed} (written ${value.asWritten})`;
  const bounds = / \(([^)]* to [^)]*)\)$/u.exec(printed)?.[1];
  if (bounds !== undefined) return unitOf(value.asWritten) === unitOf(printed) ? `${value.asWritten} (${bounds})` : printed;
  return withItsDoubt(value.asWritten, printed) ?? `${value.asWritten} (${printed})`;
}

/** What a reading is taken as: the figure that was written, never rounded coarser than it was read, with its doubt. */
export function takenAs(value: Value, system: PrintSystem): string {
  if (value.outcome.state !== 'known') return '';
  const printed = formatQuantity(value.outcome.quantity, { system, doubt: true, neverBelow: neverBelow(value.key) });
  if (value.asWritten === undefined || inOtherUnits(value.asWritten, system)) return printed;
  const shown = shownReading(value, system);
  return shown.endsWith(` (${printed})`) ? printed : shown;
}

/** Worked-out figures that are nothing at the least: what is lost, what is taken out, a plate, how far two things differ. */
const NOTHING_AT_LEAST: readonly string[] = ['spring.set-share', 'drive.slip', 'stack.filler-plate', 'journals.shims-to-remove', 'linkage.arm-mismatch'];

/** Whether what stands under a key cannot lie below nothing: a reading that no hammer gives below it, or a figure that is nothing at the least. */
export function neverBelow(key: string): boolean {
  const id = key.split(/[@#]/u)[0] ?? key;
  return NOTHING_AT_LEAST.includes(id) || (placeOf(id)?.place.plausible[0] ?? -1) >= 0;
}

/** A figure as it was written and its doubt behind it, in the unit that both are in: `85 ± 10 %`, not `85 % (90 ± 10 %)`. */
function withItsDoubt(asWritten: string, printed: string): string | undefined {
  const written = /^([−-]?\d[\d ,./]*?) ?([\p{L}°]+|%)$/u.exec(asWritten);
  const doubt = / ± (\S+(?: \d+\/\d+)?) (\S+)$/u.exec(printed);
  if (written?.[2] === 'in' && doubt?.[2] === 'in' && !asWritten.includes('/') && doubt[1]?.includes('/') === true) return `${written[1]} ± ${decimalOf(doubt[1])} in`;
  if (written?.[2] === 'in' && doubt?.[2] === 'thou' && asWritten.includes('/')) return `${asWritten} ± ${doubt[1]} thou`;
  return written === null || doubt === null || written[2] !== doubt[2] ? undefined : `${written[1]} ± ${asCoarse(doubt[1] ?? '', written[1] ?? '')} ${doubt[2]}`;
}

/** A fraction of an inch as a decimal of two places, rounded up: a doubt is never made smaller. */
function decimalOf(fraction: string): string {
  const sum = fraction.split(' ').reduce((total, part) => { const [over = '0', under = '1'] = part.split('/'); return total + Number(over) / Number(under); }, 0);
  return (Math.ceil(sum * 100 - 1e-9) / 100).toFixed(2);
}

const unitOf = (words: string): string => /(\p{L}+|%|°)(?: \(.*)?$/u.exec(words)?.[1] ?? '';

/** A doubt to as many places as the figure before it, or one more where that would widen it more than twice; rounded up. */
function asCoarse(doubt: string, figure: string): string {
  if (!/^\d+(?:\.\d+)?$/u.test(doubt) || !/^[−-]?\d+(?:\.\d+)?$/u.test(figure)) return doubt;
  const places = figure.split('.')[1]?.length ?? 0;
  const up = (to: number): number => Math.ceil(Number(doubt) * 10 ** to - 1e-9) / 10 ** to;
  const to = up(places) > 2 * Number(doubt) ? places + 1 : places;
  return (doubt.split('.')[1]?.length ?? 0) <= to ? doubt : up(to).toFixed(to);
}

/** How sure, in words. */
export function sureWordsFor(graded: Graded, rests: ValueStanding): string {
  const basis = rests === 'told' ? ', told, not measured' : rests === 'assumed' ? ', an estimate' : '';
  if (graded.sure >= 0.975) return `sure${basis}`;
  if (graded.sure >= 0.5) return `probably, ${Math.round(graded.sure * 100)} %${basis}`;
  return `doubtful, ${Math.round(graded.sure * 100)} %${basis}`;
}

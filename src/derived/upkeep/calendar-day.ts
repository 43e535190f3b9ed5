import { instantMs } from '../../entries/index.ts';

const DAY_MS = 86_400_000;

/** Days from 1970-01-01 to the day on which an instant or a date falls, as written: the zone of the writer, not of the reader. */
export function dayNumber(when: string): number {
  const ms = instantMs(`${when.slice(0, 10)}T00:00:00Z`);
  if (ms === undefined) throw new Error(`A date must be written as year, month and day, 2026-05-12: ${when}`);
  return ms / DAY_MS;
}

/**
 * The date that many days after 1970-01-01.
 * E. M. Reingold and N. Dershowitz, Calendrical Calculations, the Gregorian calendar, with March as the first month.
 * @param days whole, within the years 1 to 9999
 */
export function dateOf(days: number): string {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const day = shifted - era * 146_097;
  const year = Math.floor((day - Math.floor(day / 1_460) + Math.floor(day / 36_524) - Math.floor(day / 146_096)) / 365);
  const left = day - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const month = Math.floor((5 * left + 2) / 153);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${String(year + era * 400 + (month >= 10 ? 1 : 0)).padStart(4, '0')}-${two(month < 10 ? month + 3 : month - 9)}-${two(left - Math.floor((153 * month + 2) / 5) + 1)}`;
}

/** The date that many days later. */
export const daysLater = (date: string, days: number): string => dateOf(dayNumber(date) + days);

/** The same day of a later month, or the last day of that month where it has no such day. */
export function monthsLater(date: string, months: number): string {
  const [year = 0, month = 1, day = 1] = date.slice(0, 10).split('-').map(Number);
  const count = year * 12 + (month - 1) + months;
  const first = `${String(Math.floor(count / 12)).padStart(4, '0')}-${String((count % 12) + 1).padStart(2, '0')}-01`;
  const next = count + 1;
  const last = dayNumber(`${String(Math.floor(next / 12)).padStart(4, '0')}-${String((next % 12) + 1).padStart(2, '0')}-01`) - 1;
  return dateOf(Math.min(dayNumber(first) + day - 1, last));
}

import { instantMs, isCalendarDay } from '../instant.ts';
import type { RecordReader } from './record-reader.ts';

/** Day, hour and zone of a visit, still apart, so that one record may give its own hour. */
export interface VisitTime {
  readonly date: string;
  /** With seconds: `09:30:00` or `09:30:15.250`. */
  readonly time: string;
  /** `Z` or `-05:00`. */
  readonly zone: string;
}

/** Where a visit gives no hour it counts as noon. */
export const NOON = '12:00:00';
export const UTC = 'Z';

export const instantOf = ({ date, time, zone }: VisitTime): string => `${date}T${time}${zone}`;

const DATE_RIGHT = 'a day that exists, written 2026-04-11';

/**
 * Reads the date, and the time and zone where they are given.
 * @param asOf today as the caller knows it, ISO; a later date is a warning
 * @returns the parts, or undefined where the date cannot be used
 */
export function readVisitTime(reader: RecordReader, asOf: string | undefined): VisitTime | undefined {
  const date = reader.need('date', DATE_RIGHT);
  const time = readTime(reader);
  const zone = readZone(reader);
  if (date === undefined) return undefined;
  const found = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(date);
  const [year, month, day] = (found?.slice(1, 4) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined || year < 1700 || !isCalendarDay(year, month, day)) {
    reader.refuse('date', date, DATE_RIGHT);
    return undefined;
  }
  const parts = { date: `${year}-${two(month)}-${two(day)}`, time: time ?? NOON, zone: zone ?? UTC };
  const today = asOf === undefined ? undefined : instantMs(asOf.length === 10 ? `${asOf}T23:59:59Z` : asOf);
  const seen = instantMs(`${parts.date}T00:00${parts.zone}`);
  if (today !== undefined && seen !== undefined && seen > today) reader.problems.add(reader.pathOf('date'), reader.spanOf('date'), date, 'the date lies in the future', `a day up to ${asOf?.slice(0, 10) ?? ''}`, 'warning');
  return parts;
}

const two = (number: number): string => String(number).padStart(2, '0');

const TIME_RIGHT = 'an hour such as 09:30';

/** Reads an optional time of day; seconds are put in where they are left out, so that equal instants are written alike. */
export function readTime(reader: RecordReader): string | undefined {
  const text = reader.text('time', TIME_RIGHT);
  if (text === undefined) return undefined;
  const padded = /^\d:/.test(text) ? `0${text}` : text;
  if (/^\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?$/.test(padded) && instantMs(`2000-01-01T${padded}Z`) !== undefined) return padded.length === 5 ? `${padded}:00` : padded;
  reader.refuse('time', text, TIME_RIGHT);
  return undefined;
}

function readZone(reader: RecordReader): string | undefined {
  const text = reader.text('zone', 'Z, or hours from UTC such as -05:00');
  if (text === undefined || instantMs(`2000-01-01T00:00${text}`) !== undefined) return text;
  reader.refuse('zone', text, 'Z, or hours from UTC such as -05:00');
  return undefined;
}

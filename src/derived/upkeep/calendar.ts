import { instantMs, utf8Bytes } from '../../entries/index.ts';
import { daysLater } from './calendar-day.ts';
import type { UpkeepPlan } from './due.ts';

/** A day in the calendar. */
export interface CalendarEvent {
  /** The same for the same thing in every edition of the file, so that a calendar replaces and does not double. */
  readonly uid: string;
  /** Year, month, day. */
  readonly date: string;
  readonly summary: string;
  readonly description: string;
  /** Days before at which it reminds; no reminder where left out. */
  readonly remindDaysBefore?: number;
}

/**
 * Calendar file text: iCalendar (RFC 5545), whole-day events, lines folded at 75 octets (3.1), text escaped (3.3.11).
 * @param stamp instant of making, ISO 8601; passed in, since nothing here asks a clock
 * @throws where the stamp or a date cannot be read
 */
export function calendarText(events: readonly CalendarEvent[], stamp: string): string {
  const lines = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Tupwise//Upkeep//EN', 'CALSCALE:GREGORIAN', 'METHOD:PUBLISH'];
  for (const event of events) {
    lines.push(
      'BEGIN:VEVENT', `UID:${escaped(event.uid)}`, `DTSTAMP:${utcStamp(stamp)}`, `DTSTART;VALUE=DATE:${plainDate(event.date)}`, `DTEND;VALUE=DATE:${plainDate(daysLater(event.date, 1))}`,
      `SUMMARY:${escaped(event.summary)}`, `DESCRIPTION:${escaped(event.description)}`, 'TRANSP:TRANSPARENT',
    );
    if (event.remindDaysBefore !== undefined) lines.push('BEGIN:VALARM', 'ACTION:DISPLAY', `DESCRIPTION:${escaped(event.summary)}`, `TRIGGER:-P${Math.max(0, Math.round(event.remindDaysBefore))}D`, 'END:VALARM');
    lines.push('END:VEVENT');
  }
  lines.push('END:VCALENDAR');
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** The dated part of an upkeep plan as events; what is overdue stands on the day of asking, so that it reminds, and names the day it was due. */
export function upkeepEvents(plan: UpkeepPlan, hammer: { readonly id: string; readonly tag: string }, asOf: string): readonly CalendarEvent[] {
  const today = asOf.slice(0, 10);
  return plan.items.flatMap((item) => {
    if (item.state === 'each-session' || (item.dueOn === undefined && item.state !== 'overdue')) return [];
    const date = item.dueOn === undefined || item.dueOn < today ? today : item.dueOn;
    const since = item.state !== 'overdue' ? '' : item.dueOn !== undefined && item.dueOn < today ? `overdue since ${item.dueOn}` : 'overdue by its hours of running';
    return [{
      uid: `${hammer.id}-${item.task}@tupwise.invalid`, date, summary: `${hammer.tag}: ${item.title}${since === '' ? '' : `, ${since}`}`,
      description: `${since === '' ? '' : `${since.charAt(0).toUpperCase()}${since.slice(1)}.\n`}${item.words}\n${item.because}`, remindDaysBefore: 7,
    }];
  });
}

const plainDate = (date: string): string => daysLater(date, 0).replaceAll('-', '');

function utcStamp(instant: string): string {
  const ms = instantMs(instant);
  if (ms === undefined) throw new Error(`A stamp must be an instant with its zone: ${instant}`);
  const seconds = Math.floor(ms / 1000);
  const days = Math.floor(seconds / 86_400);
  const left = seconds - days * 86_400;
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  return `${plainDate(daysLater('1970-01-01', days))}T${two(left / 3_600)}${two((left % 3_600) / 60)}${two(left % 60)}Z`;
}

/** Backslash, semicolon, comma and line break escaped; other control characters may not stand in a text and are left out. */
const escaped = (text: string): string =>
  [...text.replaceAll('\r\n', '\n').replaceAll('\r', '\n')].map((character) => ESCAPES[character] ?? (isControl(character) ? '' : character)).join('');

const ESCAPES: Readonly<Record<string, string>> = { '\\': '\\\\', ';': '\\;', ',': '\\,', '\n': '\\n' };

const isControl = (character: string): boolean => character !== '\t' && (character < ' ' || character === '\u007f');

/** Folds between characters, never within one: 75 octets, then a line break and a blank, which counts too. */
function folded(line: string): string {
  let out = '';
  let octets = 0;
  for (const character of line) {
    const size = utf8Bytes(character).length;
    if (octets + size > 75) {
      out += '\r\n ';
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return out;
}

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calendarText, type CalendarEvent } from '../../src/derived/upkeep/index.ts';
import { dateOf, dayNumber, daysLater, monthsLater } from '../../src/derived/upkeep/calendar-day.ts';

test('days and dates are those of the Gregorian calendar', () => {
  fc.assert(fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (days) => {
    const date = dateOf(days);
    expect(date).toBe(new Date(days * 86_400_000).toISOString().slice(0, 10));
    expect(dayNumber(date)).toBe(days);
  }));
  expect(daysLater('2024-02-28', 1)).toBe('2024-02-29');
  expect(monthsLater('2026-08-31', 6)).toBe('2027-02-28');
  expect(monthsLater('2026-12-15', 1)).toBe('2027-01-15');
  expect(() => dayNumber('2026-02-30')).toThrow('A date must be written');
});

/** Reads a calendar file as RFC 5545 says, apart from the writer: unfold (3.1), split at the colon, undo the escapes (3.3.11). */
function eventsIn(text: string): readonly Readonly<Record<string, string>>[] {
  const lines = text.replaceAll('\r\n ', '').split('\r\n');
  const events: Record<string, string>[] = [];
  let inside: string[] = [];
  for (const line of lines) {
    const [name = '', ...rest] = line.split(':');
    const value = rest.join(':');
    if (name === 'BEGIN') {
      inside = [...inside, value];
      if (value === 'VEVENT') events.push({});
    } else if (name === 'END') {
      expect(inside.at(-1)).toBe(value);
      inside = inside.slice(0, -1);
    } else if (inside.at(-1) === 'VEVENT') events.at(-1)![name] = value.replaceAll(/\\(.)/g, (_, escape: string) => (escape === 'n' ? '\n' : escape));
  }
  expect(inside).toEqual([]);
  return events;
}

const words = fc.string({ unit: 'binary' }).map((text) => text.replaceAll('\r', '').replaceAll(/\p{Cc}/gu, (one) => (one === '\n' || one === '\t' || one >= '\u0080' ? one : '')));

test('whatever is written comes back whole: commas, line breaks, letters of any script; no line is longer than 75 octets', () => {
  fc.assert(fc.property(fc.array(fc.record({ uid: fc.uuid(), summary: words, description: words }), { maxLength: 4 }), (rows) => {
    const events: CalendarEvent[] = rows.map((row) => ({ ...row, date: '2027-02-28', remindDaysBefore: 3 }));
    const text = calendarText(events, '2026-05-12T23:59:59+01:00');
    for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(eventsIn(text)).toEqual(rows.map((row) => ({
      UID: row.uid, DTSTAMP: '20260512T225959Z', 'DTSTART;VALUE=DATE': '20270228', 'DTEND;VALUE=DATE': '20270301', SUMMARY: row.summary, DESCRIPTION: row.description, TRANSP: 'TRANSPARENT',
    })));
  }), { numRuns: 200 });
});

test('a stamp that is no instant is a mistake of the caller', () => {
  expect(() => calendarText([{ uid: 'a', date: '2026-05-12', summary: '', description: '' }], 'yesterday')).toThrow('A stamp must be an instant with its zone: yesterday');
});

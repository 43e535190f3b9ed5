import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { calendarText, upkeepEvents, upkeepPlan, type CalendarEvent } from '../../src/derived/upkeep/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
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

const PYTHON = '/usr/bin/python3';
const READERS = ['icalendar', 'vobject'].filter((name) => spawnSync(PYTHON, ['-c', `import ${name}`]).status === 0);
if (READERS.length < 2) console.log(`the calendar file is read by ${READERS.length} independent readers of two (Debian: python3-icalendar, python3-vobject)`);

/** Uid, start, end and summary as an independent reader finds them, and how far ahead it reminds. */
const SCRIPTS: Readonly<Record<string, string>> = {
  icalendar: 'import sys, json, icalendar\nc = icalendar.Calendar.from_ical(sys.stdin.buffer.read())\nassert not c.errors and c["VERSION"] == "2.0" and c["PRODID"]\nprint(json.dumps([[str(e["UID"]), e["DTSTART"].dt.isoformat(), e["DTEND"].dt.isoformat(), str(e["SUMMARY"]), str(e["DESCRIPTION"]), [a["TRIGGER"].dt.days for a in e.walk("VALARM")], e.errors] for e in c.walk("VEVENT")]))',
  vobject: 'import sys, json, vobject\nc = vobject.readOne(sys.stdin.buffer.read().decode("utf-8"))\nc.validate(raiseException=True)\nprint(json.dumps([[e.uid.value, e.dtstart.value.isoformat(), e.dtend.value.isoformat(), e.summary.value, e.description.value, [a.trigger.value.days for a in e.contents.get("valarm", [])], []] for e in c.contents["vevent"]]))',
};

test.each(READERS)('the calendar of an invented hammer is read whole and without a fault by %s', (reader) => {
  const entries = readSurveyFile(readFileSync(new URL('../../examples/kettlebrae-50-simply-good.yaml', import.meta.url), 'utf8')).entries;
  const found = picture(entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error('the example enrols no hammer');
  const hammer = { id: found.known.hammer, tag: found.known.identity.tag };
  const events = [
    ...upkeepEvents(upkeepPlan(found.known, entries, '2026-06-01T00:00:00Z'), hammer, '2026-06-01T00:00:00Z'),
    { uid: 'odd@tupwise.invalid', date: '2027-12-31', summary: `Commas, semicolons; and a back\\slash, ${'å'.repeat(60)}`, description: 'First line\nsecond line: with a colon', remindDaysBefore: 2 },
  ];
  expect(events.length).toBeGreaterThan(2);
  const run = spawnSync(PYTHON, ['-c', SCRIPTS[reader] ?? ''], { input: calendarText(events, '2026-06-01T08:00:00Z'), encoding: 'utf8' });
  expect(run.stderr).toBe('');
  expect(JSON.parse(run.stdout)).toEqual(events.map((event) => [event.uid, event.date, daysLater(event.date, 1), event.summary, event.description, [-(event.remindDaysBefore ?? 0)], []]));
});

test('a stamp that is no instant is a mistake of the caller', () => {
  expect(() => calendarText([{ uid: 'a', date: '2026-05-12', summary: '', description: '' }], 'yesterday')).toThrow('A stamp must be an instant with its zone: yesterday');
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, orderEntries, readSurveyFile, writeSurveyFile, type Entry } from '../../src/entries/index.ts';
import { deepFreeze, history } from '../entries/histories.ts';

const text = (entries: readonly Entry[]): string => canonicalJson(orderEntries(entries));

describe('writing a survey file', () => {
  it('reads back as the very same log, whatever was in it', () => {
    fc.assert(fc.property(history, (entries) => {
      deepFreeze(entries);
      const back = readSurveyFile(writeSurveyFile(entries));
      expect(back.problems).toEqual([]);
      expect(text(back.entries)).toBe(text(entries));
    }), { numRuns: 60 });
  });

  it('writes the same text whatever the order of the entries, and the same again after reading', () => {
    fc.assert(fc.property(history, (entries) => {
      const first = writeSurveyFile(entries);
      expect(writeSurveyFile([...entries].reverse())).toBe(first);
      expect(writeSurveyFile(readSurveyFile(first).entries)).toBe(first);
    }), { numRuns: 30 });
  });

  it('needs no ids and keeps nothing word for word where the survey was typed', () => {
    const typed = `tupwise: 1
hammer: {tag: T-1, family: bow-spring, class: 90 lb, serial: "0012", year: "1904"}
as made:
  bow-spring.leaves: "7"
visits:
  - date: 2026-04-11
    time: 09:30
    by: Ada Quill
    readings:
      bow-spring.leaf-thickness: 5/16 in
      main-bearings.clearance@front: {value: 9 thou, tool: dial-indicator}
    looks:
      bow-spring.crack: {answer: present, words: "second leaf, at the clip: open"}
    told:
      - {words: it always ran, by: the seller}
    hours: 6 h
`;
    const read = readSurveyFile(typed);
    expect(read.problems).toEqual([]);
    expect(writeSurveyFile(read.entries)).toBe(typed);
  });

  it('throws where the log is not one hammer', () => {
    expect(() => writeSurveyFile([])).toThrow(/enrol entry/);
    const one = readSurveyFile('tupwise: 1\nhammer: {tag: a, family: helve, class: 50 lb}\nvisits:\n  - {date: 2026-01-01, by: x}\n').entries;
    const two = readSurveyFile('tupwise: 1\nhammer: {tag: b, family: helve, class: 50 lb}\nvisits:\n  - {date: 2026-01-01, by: x}\n').entries;
    expect(() => writeSurveyFile([...one, ...two])).toThrow(/one hammer/);
  });
});

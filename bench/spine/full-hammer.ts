import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeEntryId, readSurveyFile, type Entry } from '../../src/entries/index.ts';

/** The invented hammer with the most entries, its readings taken again on later days until there are as many as asked for. */
export function fullHammer(count: number): readonly Entry[] {
  const file = join(import.meta.dirname, '../../examples/wrenhollow-65-knocks-before-the-blow.yaml');
  const entries = [...readSurveyFile(readFileSync(file, 'utf8')).entries];
  const readings = entries.filter((entry) => entry.kind === 'reading');
  const from = Date.parse('2025-09-01T09:00:00Z');
  for (let index = 0; entries.length < count; index += 1) {
    const again = readings[index % readings.length];
    if (again === undefined) throw new Error('the invented hammer has no readings');
    const at = from + index * 60_000;
    entries.push({ ...again, id: makeEntryId(at, new Uint8Array(10).fill(index % 256)), at: new Date(at).toISOString() });
  }
  return entries;
}

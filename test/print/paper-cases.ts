import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { outlook, picture, type Picture, type PrintSystem } from '../../src/derived/index.ts';
import { readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { kept } from '../kept.ts';

const surveys = new Map<string, readonly Entry[]>();

/** Invented hammers with three verdicts: the papers must hold each of them. */
export const CASES: readonly { readonly name: string; readonly entries: readonly Entry[] }[] = [
  { name: 'a sunken seat and loose dies', entries: surveyed('sallowfield-40-sunken-seat') },
  { name: 'a worn pivot', entries: surveyed('tannerwick-150-worn-pivot') },
  { name: 'hardly looked at', entries: new LogOf('50 lb', 'coil-and-toggle').read('upper-die.height', '2 15/16 in').look('frame.crack', 'none').entries },
];

const pictures = {
  inch: kept((entries: readonly Entry[]) => pictured(entries, 'inch')),
  metric: kept((entries: readonly Entry[]) => pictured(entries, 'metric')),
} as const;

/** The picture of a log, one and the same for all tests. */
export const pictureOf = (entries: readonly Entry[], system: PrintSystem): Picture => pictures[system](entries);

/** Its outlook, one and the same for all tests. */
export const outlookOf = kept((found: Picture) => outlook(found, found.provenance.seed));

function pictured(entries: readonly Entry[], system: PrintSystem): Picture {
  const found = picture(entries, knowledge, '2026-11-26T00:00:00Z', 1, system);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
}

/** Entries of an invented hammer by the name of its survey file, one and the same for all tests. */
export function surveyed(name: string): readonly Entry[] {
  const held = surveys.get(name);
  if (held !== undefined) return held;
  const survey = readSurveyFile(readFileSync(fileURLToPath(new URL(`../../examples/${name}.yaml`, import.meta.url)), 'utf8'));
  if (survey.problems.length > 0) throw new Error(survey.problems[0]?.message);
  surveys.set(name, survey.entries);
  return survey.entries;
}

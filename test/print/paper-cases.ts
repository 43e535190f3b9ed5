import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { picture, type Picture, type PrintSystem } from '../../src/derived/index.ts';
import { readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';

/** Invented hammers with three verdicts: the papers must hold each of them. */
export const CASES: readonly { readonly name: string; readonly entries: readonly Entry[] }[] = [
  { name: 'a sunken seat and loose dies', entries: surveyed('sallowfield-40-sunken-seat') },
  { name: 'a worn pivot', entries: surveyed('tannerwick-150-worn-pivot') },
  { name: 'hardly looked at', entries: new LogOf('50 lb', 'coil-and-toggle').read('upper-die.height', '2 15/16 in').look('frame.crack', 'none').entries },
];

export function pictureOf(entries: readonly Entry[], system: PrintSystem): Picture {
  const found = picture(entries, knowledge, '2026-11-26T00:00:00Z', 1, system);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
}

export function surveyed(name: string): readonly Entry[] {
  const survey = readSurveyFile(readFileSync(fileURLToPath(new URL(`../../examples/${name}.yaml`, import.meta.url)), 'utf8'));
  if (survey.problems.length > 0) throw new Error(survey.problems[0]?.message);
  return survey.entries;
}

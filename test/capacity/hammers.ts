import { readdirSync, readFileSync } from 'node:fs';
import { picture, type Known } from '../../src/derived/index.ts';
import type { Ledger } from '../../src/derived/ledger.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import type { LogOf } from '../cases/log-of.ts';

const FOLDER = new URL('../../examples/', import.meta.url).pathname;

/** A hammer with its values as in a picture, open for more to be worked out. */
export interface Worked {
  readonly name: string;
  readonly known: Known;
  readonly ledger: Ledger;
}

const worked = (name: string, entries: Parameters<typeof picture>[0]): Worked => {
  const one = picture(entries, knowledge, '2027-01-01T00:00:00Z', 1);
  if (one === undefined) throw new Error(`no hammer in ${name}`);
  return { name, known: one.known, ledger: { family: one.known.identity.family, values: new Map(Object.entries(one.values)) } };
};

/** The five invented hammers. */
export const fiveHammers = (): readonly Worked[] =>
  readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')).map((name) => worked(name.replace('.yaml', ''), readSurveyFile(readFileSync(FOLDER + name, 'utf8')).entries));

export const workedLog = (log: LogOf): Worked => worked('case', log.entries);

/** SI value of a key. @throws where it is not known */
export function numberAt(ledger: Ledger, key: string): number {
  const outcome = ledger.values.get(key)?.outcome;
  if (outcome?.state !== 'known') throw new Error(`${key} is not known: ${JSON.stringify(outcome)}`);
  return outcome.quantity.value;
}

/** Places where a number in an answer is not finite. */
export function notFinite(answer: unknown, path = ''): string[] {
  if (typeof answer === 'number') return Number.isFinite(answer) ? [] : [`${path}: ${answer}`];
  if (typeof answer !== 'object' || answer === null) return [];
  return Object.entries(answer).flatMap(([key, value]) => notFinite(value, `${path}.${key}`));
}

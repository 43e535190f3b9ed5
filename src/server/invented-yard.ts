import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readSurveyFile } from '../entries/index.ts';
import { START, type Store } from '../stores/index.ts';

/**
 * Puts the invented yard into an empty store, so that there is something to look at on the first day.
 * @returns how many hammers were put in; 0 where the store already holds entries
 */
export async function putInventedYard(store: Store, examplesFolder: string): Promise<number> {
  if ((await store.readSince(START)).entries.length > 0) return 0;
  const files = (await readdir(examplesFolder)).filter((name) => name.endsWith('.yaml')).sort();
  for (const name of files) {
    const survey = readSurveyFile(await readFile(join(examplesFolder, name), 'utf8'));
    if (survey.problems.length > 0) throw new Error(`the invented yard has a mistake in ${name}: ${survey.problems[0]?.message ?? ''}`);
    await store.append(survey.entries);
  }
  return files.length;
}

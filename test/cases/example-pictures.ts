import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { picture, type Picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';

const folder = fileURLToPath(new URL('../../examples/', import.meta.url));

export interface ExamplePicture {
  readonly tag: string;
  readonly found: Picture;
  readonly entries: ReturnType<typeof readSurveyFile>['entries'];
}

/** The five invented hammers as known on one day. */
export const EXAMPLE_PICTURES: readonly ExamplePicture[] = readdirSync(folder).filter((name) => name.endsWith('.yaml')).sort().map((name) => {
  const { entries } = readSurveyFile(readFileSync(`${folder}${name}`, 'utf8'));
  const found = picture(entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  return { tag: found.known.identity.tag, found, entries };
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { picture, type Picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');

/** The instant at which the invented hammers are looked at. */
export const AS_OF = '2026-01-01T00:00:00Z';

/** The five invented hammers by the name of their survey file. */
export const INVENTED: ReadonlyMap<string, Picture> = new Map(
  readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml')).sort().map((name) => {
    const found = picture(readSurveyFile(readFileSync(join(EXAMPLES, name), 'utf8')).entries, knowledge, AS_OF, 1);
    if (found === undefined) throw new Error(`${name} enrols no hammer`);
    return [name.replace('.yaml', ''), found] as const;
  }),
);

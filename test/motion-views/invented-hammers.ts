import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { picture, type Picture } from '../../src/derived/index.ts';
import { runHammer, specOfSurvey, type MotionRan, type SurveySpec } from '../../src/derived/motion/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';

const FOLDER = join(import.meta.dirname, '../../examples');
const AS_OF = '2026-04-11T23:59:59Z';

export interface Invented {
  readonly tag: string;
  readonly path: string;
  readonly picture: Picture;
  readonly survey: SurveySpec;
  readonly run: MotionRan;
}

/** The invented hammers of the examples with their motion as found. */
export const INVENTED: readonly Invented[] = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')).sort().map((name) => {
  const path = join(FOLDER, name);
  const made = picture(readSurveyFile(readFileSync(path, 'utf8'), { asOf: AS_OF }).entries, knowledge, AS_OF, 1);
  if (made === undefined) throw new Error(`no hammer in ${name}`);
  const survey = specOfSurvey(made.values, made.known.identity.family, made.known.identity.ramClass.quantity.value);
  const run = runHammer(survey.spec, { assumed: survey.assumed, traceSeconds: 1.2 });
  if (run.outcome !== 'ran') throw new Error(`${name} does not run: ${JSON.stringify(run)}`);
  return { tag: made.known.identity.tag, path, picture: made, survey, run };
});

export function invented(tag: string): Invented {
  const found = INVENTED.find((one) => one.tag === tag);
  if (found === undefined) throw new Error(`no invented hammer has this tag: ${tag}`);
  return found;
}

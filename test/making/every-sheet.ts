import { readdirSync, readFileSync } from 'node:fs';
import type { Picture } from '../../src/derived/index.ts';
import { picture } from '../../src/derived/index.ts';
import { MAKERS, partsToMake, type PartToMake } from '../../src/derived/making/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer, metricHammer, slowHammer } from './hammers.ts';

export interface Sheet {
  readonly name: string;
  readonly part: PartToMake;
  readonly found: Picture;
}

const FOLDER = new URL('../../examples/', import.meta.url).pathname;
export const SYSTEMS = ['inch', 'metric'] as const;

/** The invented yard, as its survey files have it, in both systems. */
export const YARD = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')).flatMap((name) => {
  const { entries } = readSurveyFile(readFileSync(`${FOLDER}${name}`, 'utf8'));
  return SYSTEMS.map((system) => {
    const found = picture(entries, knowledge, '2026-06-01T00:00:00Z', 1, system);
    if (found === undefined) throw new Error(`${name} enrols no hammer`);
    return { name: `${found.known.identity.tag} ${system}`, found };
  });
});

/** Every sheet that the open jobs of the yard ask for, and everything that can be drawn of the hammers of these tests, each in both systems. */
export const SHEETS: readonly Sheet[] = [
  ...YARD.flatMap(({ name, found }) => partsToMake(found).flatMap((part) => (part.state === 'to-make' ? [{ name: `${name} ${part.id}`, part, found }] : []))),
  ...([['toggles', inchHammer()], ['bare', metricHammer()], ['bow', bowHammer()], ['helve', helveHammer()], ['slow', slowHammer()]] as const).flatMap(([name, log]) => SYSTEMS.flatMap((system) => {
    const found = pictureOf(log, system);
    return Object.values(MAKERS).flatMap((make) => {
      const part = make(found.values, found.known, { system, alsoMade: new Set(), floorCut: false });
      return part.state === 'to-make' ? [{ name: `${name} ${system} ${part.id}`, part, found }] : [];
    });
  })),
];

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { woffToSfnt } from './woff-to-sfnt.ts';

const MAIN = 'Atkinson Hyperlegible';
const EXTENDED = 'Atkinson Hyperlegible Extended';

/** Families in the order in which a letter is looked for; the last two come with the typesetter. */
export const PAPER_FAMILIES: readonly string[] = [MAIN, EXTENDED, 'Libertinus Serif', 'DejaVu Sans Mono'];

const FACES = [
  { file: 'latin-400-normal', family: MAIN }, { file: 'latin-700-normal', family: MAIN },
  { file: 'latin-ext-400-normal', family: EXTENDED }, { file: 'latin-ext-700-normal', family: EXTENDED },
] as const;

let held: Promise<readonly Buffer[]> | undefined;

/** The typeface of all papers as TrueType, unpacked once. */
export function paperFonts(): Promise<readonly Buffer[]> {
  held ??= readFaces();
  return held;
}

function readFaces(): Promise<readonly Buffer[]> {
  const require = createRequire(import.meta.url);
  return Promise.all(FACES.map(async ({ file, family }) => woffToSfnt(await readFile(require.resolve(`@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-${file}.woff`)), family === MAIN ? undefined : family)));
}

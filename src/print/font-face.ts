import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const FACES = [
  { weight: 400, file: 'atkinson-hyperlegible-latin-400-normal.woff2' },
  { weight: 700, file: 'atkinson-hyperlegible-latin-700-normal.woff2' },
] as const;

let held: Promise<string> | undefined;

/** The typeface as CSS with the font inside, so that a paper is one file and looks alike everywhere. */
export function fontFace(): Promise<string> {
  held ??= readFaces();
  return held;
}

async function readFaces(): Promise<string> {
  const require = createRequire(import.meta.url);
  const rules = await Promise.all(FACES.map(async ({ weight, file }) => {
    const bytes = await readFile(require.resolve(`@fontsource/atkinson-hyperlegible/files/${file}`));
    return `@font-face{font-family:"Atkinson Hyperlegible";font-weight:${weight};src:url(data:font/woff2;base64,${bytes.toString('base64')}) format("woff2")}`;
  }));
  return rules.join('');
}

/** A drawing with the typeface inside, so that it looks alike where the typeface is not installed. */
export const withFont = (svg: string, face: string): string =>
  svg.includes('<style>') ? svg.replace('<style>', () => `<style>${face}`) : svg.replace(/<svg[^>]*>/, (tag) => `${tag}<style>${face}svg text{font-family:"Atkinson Hyperlegible",system-ui,sans-serif}</style>`);

import { basename } from 'node:path';
import type { SourceFile } from './source-file.ts';

const MOST_LINES = 400;
/** Rows of a source and the trade's own tables are as long as they are. */
const DATA = [/^src\/knowledge\//, /^src\/hammer\/parts\//, /^test\/.*(rows|figures-of|table)[^/]*\.ts$/, /\.(json|yaml)$/];
const EMPTY_WORDS = /(^|-)(utils?|helpers?|managers?|services?)(-|$)/;
/** Kept as the web platform calls it. */
const PLATFORM_NAMES = new Set(['service-worker']);

/** Files longer than anybody reads in one go. */
export function lengthProblems(files: readonly SourceFile[]): string[] {
  return files
    .filter(({ path }) => !DATA.some((pattern) => pattern.test(path)))
    .map(({ path, text }) => ({ path, lines: text.replace(/\n$/, '').split('\n').length }))
    .filter(({ lines }) => lines > MOST_LINES)
    .map(({ path, lines }) => `${path}: too long; allowed are ${MOST_LINES} lines: ${lines}`);
}

/** Names of files and folders that say nothing, or are not whole words joined by hyphens. */
export function nameProblems(paths: readonly string[]): string[] {
  return paths.flatMap((path) =>
    path.split('/').flatMap((part, index, parts) => {
      const name = index === parts.length - 1 ? basename(part).replace(/(\.(test|d|svelte))?\.[a-z0-9]+$/, '') : part;
      if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name)) return [`${path}: the name ${name} is not of small letters with hyphens between words`];
      if (EMPTY_WORDS.test(name) && !PLATFORM_NAMES.has(name)) return [`${path}: the name ${name} does not say what it holds`];
      return [];
    }),
  );
}

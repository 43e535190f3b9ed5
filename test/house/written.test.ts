import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { HOME, sourceFiles } from './source-file.ts';
import { invariantProblems, packageProblems, phraseProblems } from './written-problems.ts';

describe('the invariants of ARCHITECTURE.md', () => {
  test('are numbered in turn, and each names tests that are there', () =>
    expect(invariantProblems(readFileSync(join(HOME, 'ARCHITECTURE.md'), 'utf8'))).toEqual([]));

  test('a bad one is seen', () => {
    const text = '**I1. All is well.**\nHeld by: `test/a.test.ts`\n\n**I3. Nothing is stored.**\n\nIt is computed.\n';
    expect(invariantProblems(text, () => true)).toEqual(['I3: names no test that holds it', 'I3: stands in the place of I2']);
    expect(invariantProblems(text.replace('I3', 'I2') + 'Held by: `test/b.test.ts`, `docs/c.md`\n', (path) => path === 'test/a.test.ts')).toHaveLength(2);
    expect(invariantProblems('nothing numbered')).toHaveLength(1);
  });
});

describe('the project stands alone', () => {
  test('no file points at papers that are not in it', () => {
    const paths = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: HOME, encoding: 'utf8' })
      .split('\n')
      .filter((path) => /\.(ts|mts|mjs|js|svelte|css|html|md|yaml|json)$|^\.ci\//.test(path) && path !== 'package-lock.json');
    expect(paths.length).toBeGreaterThan(50);
    const files = paths.flatMap((path) => {
      try {
        return [{ path, text: readFileSync(join(HOME, path), 'utf8') }];
      } catch {
        return []; // Listed, but removed from the folder since.
      }
    });
    expect(phraseProblems(files)).toEqual([]);
  });

  test('such a phrase is seen', () => {
    const seen = (text: string) => phraseProblems([{ path: 'a.ts', text }]).length;
    for (const text of ['as the tran' + 'script says', '// see ../sha' + 'red/words.md', 'after trade.m' + 'd, section 2', 'fixes iss' + 'ue 12', 'DESI' + 'GN.md 3']) expect(seen(text)).toBe(1);
    expect(seen('transcribed from the table; the trade; a stack; issued by')).toBe(0);
  });
});

describe('packages', () => {
  const decisions = sourceFiles(['docs/decisions'], ['.md'])
    .map(({ text }) => text)
    .join('\n');

  test('are pinned to one version, and each has its reason in docs/decisions', () =>
    expect(packageProblems(JSON.parse(readFileSync(join(HOME, 'package.json'), 'utf8')), decisions)).toEqual([]));

  test('a loose or unexplained one is seen', () => {
    expect(packageProblems({ dependencies: { a: '^1.0.0', b: '1.x' }, devDependencies: { c: 'latest' } }, '`a` `b` `c`')).toHaveLength(3);
    expect(packageProblems({ dependencies: { a: '1.0.0-beta.2', b: '1.0.0' } }, 'we use `a`')).toEqual(['b: no decision in docs/decisions gives its reason']);
  });
});

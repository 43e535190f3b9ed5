import { describe, expect, test } from 'vitest';
import { forbiddenNameProblems } from './forbidden-name-problems.ts';
import { CORE } from './rooms.ts';
import { sourceFiles } from './source-file.ts';

const problemsIn = (text: string) => forbiddenNameProblems([{ path: 'src/derived/sample.ts', text }]);

describe('the core asks no clock, no dice, no device', () => {
  test('in the sources', () => {
    const core = sourceFiles(CORE.map((room) => `src/${room}`), ['.ts']);
    expect(core.length).toBeGreaterThan(20);
    expect(forbiddenNameProblems(core)).toEqual([]);
  });

  test.each([
    'const t = Date.now();', 'const t = new Date();', 'const t = new Date(0).getTime();', 'const d = Date;', 'const x = Math.random();', 'const s = (1).toLocaleString();',
    `const order = ['ä', 'a'].sort((a, b) => a.localeCompare(b));`, `console.log('x');`, 'const env = process.env;', 'const w = window.innerWidth;', `document.title = 'x';`,
    `void fetch('/x');`, 'setTimeout(() => 1, 2);', 'const t = performance.now();', 'const id = crypto.randomUUID();', 'const g = globalThis;', `const n = new Intl.NumberFormat('de');`,
    `const o = { console };`, 'const here = import.meta.url;', `const f = new Function('return 1');`,
  ])('a breach is seen: %s', (text) => expect(problemsIn(text)).toHaveLength(1));

  test('names of its own, keys, comments and texts are not complained of', () => {
    expect(
      problemsIn(`
        // Date.now() and Math.random() are forbidden
        export function spectrum(window: Float64Array, words = 'new Date()') { return window.length + words.length; }
        interface Machine { readonly process: string; readonly location: string }
        export const at = Date.parse('2026-03-01T10:00:00Z') + Date.UTC(2026, 2, 1);
        export const machine: Machine = { process: 'forging', location: 'shed' };
        export const where = machine.location;
      `),
    ).toEqual([]);
  });
});

import { expect, test } from 'vitest';
import { printSvg } from '../../src/print/pdf/print-svg.ts';
import { clearedLetters } from '../../src/print/pdf/cleared-letters.ts';
import { elevation } from '../../src/views/index.ts';
import { textWidth } from '../../src/views/drawing/figure-text.ts';
import { FIVE } from './every-paper.ts';
import { CASES, pictureOf } from './paper-cases.ts';

/** The least that is read in print without effort by most, pt; one point is 0.3528 mm (1/72 in). */
const LEAST = 7;
const POINT = 25.4 / 72;
/** Pages between their margins, mm: letter 216 by 279 and A4 210 by 297 (ISO 216), less 32 mm at the sides and what head and foot take. */
const PAGES = [{ width: 184, height: 207 }, { width: 178, height: 225 }];

interface Letters { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly foot: number }

function lettersOf(svg: string): readonly Letters[] {
  return [...svg.matchAll(/<text([^>]*)>([\s\S]*?)<\/text>/gu)].map(([, attributes = '', inner = '']) => {
    const number = (name: string): number => Number(new RegExp(` ${name}="([^"]*)"`, 'u').exec(attributes)?.[1]);
    const [x, y, size] = [number('x'), number('y'), number('font-size')];
    const text = inner.replace(/<[^>]*>/gu, '');
    // A little narrower than the drawing reckons, which takes rather more than less.
    const width = textWidth(text, size) * 0.9;
    const anchor = / text-anchor="(\w+)"/u.exec(attributes)?.[1];
    const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
    return { text, left, right: left + width, top: y - size * 0.7, foot: y };
  });
}

test.each([...CASES, ...FIVE])('the elevation of $name is read on paper: no letter under 7 pt, none over another', ({ entries }) => {
  for (const system of ['inch', 'metric'] as const) {
    const svg = elevation(pictureOf(entries, system), { lettering: 'paper' });
    const [, , width = 0, height = 0] = /viewBox="([^"]*)"/u.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
    const smallest = Math.min(...[...svg.matchAll(/font-size="([^"]*)"/gu)].map(([, size]) => Number(size)));
    for (const page of PAGES) expect((smallest * Math.min(page.width / width, page.height / height)) / POINT).toBeGreaterThanOrEqual(LEAST);
    const letters = lettersOf(svg);
    const over = letters.flatMap((one, index) => letters.slice(index + 1).filter((other) => one.left < other.right && other.left < one.right && one.top < other.foot && other.top < one.foot).map((other) => `${one.text} over ${other.text}`));
    expect(over).toEqual([]);
  }
});

test('the rim of paper round letters is not printed over them, but as paper behind them', () => {
  const { svg } = printSvg(elevation(pictureOf(CASES[0]?.entries ?? [], 'inch')), 180);
  expect(svg).not.toContain('paint-order');
  const figures = svg.match(/<text class="(?:figure|limit-note)"/gu)?.length ?? 0;
  expect(figures).toBeGreaterThan(10);
  expect(svg.match(/<rect [^>]*fill="#ffffff"[^>]*\/><text class="(?:figure|limit-note)"/gu)?.length).toBe(figures);
  expect(clearedLetters('<svg><style>.a{fill:red}</style><text class="a" x="0" y="0" font-size="5">1</text></svg>', '#fff')).not.toContain('<rect');
});

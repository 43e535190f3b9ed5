import { expect, test } from 'vitest';
import { knowledge } from '../../src/knowledge/index.ts';
import { outlookSheet } from '../../src/views/index.ts';
import { FIVE } from '../print/every-paper.ts';
import { outlookOf, pictureOf } from '../print/paper-cases.ts';

const mapOf = (entries: (typeof FIVE)[number]['entries']): string => {
  const picture = pictureOf(entries, 'inch');
  const figure = outlookSheet('oiling', { picture, outlook: outlookOf(picture), knowledge }).blocks.find((block) => block.kind === 'figure');
  if (figure?.kind !== 'figure') throw new Error('the map is gone');
  return figure.svg;
};
/** Middles of the circles that are drawn for a part, and the end of its leader. */
function ofPart(svg: string, part: string): { readonly rings: readonly (readonly [number, number])[]; readonly dot: readonly [number, number] } {
  const shapes = [...svg.matchAll(new RegExp(`<g class="part [^"]*" data-part="${part}".*?</g>`, 'gsu'))].map(([one]) => one).join('');
  const rings = [...shapes.matchAll(/<circle[^>]*cx="([-\d.]+)" cy="([-\d.]+)"/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);
  const balloon = new RegExp(`<g class="balloon [^"]*" data-part="${part}".*?</g>`, 'su').exec(svg)?.[0] ?? '';
  const dot = /<circle class="dot" cx="([-\d.]+)" cy="([-\d.]+)"/u.exec(balloon);
  return { rings, dot: [Number(dot?.[1]), Number(dot?.[2])] };
}

test('the leaders of a helve end in its pivot, in the upper end of the rod and in the crank pin', () => {
  const svg = mapOf(FIVE.find((one) => one.name.startsWith('tannerwick'))?.entries ?? []);
  const helve = ofPart(svg, 'helve');
  expect(Math.min(...helve.rings.map(([x, y]) => Math.hypot(x - helve.dot[0], y - helve.dot[1])))).toBeLessThan(1);
  const rod = ofPart(svg, 'connecting-rod');
  const heights = rod.rings.map(([, y]) => y);
  expect(rod.dot[1]).toBeLessThanOrEqual(Math.min(...heights) + 1);
  const crank = ofPart(svg, 'crank');
  expect(Math.min(...rod.rings.map(([x, y]) => Math.hypot(x - crank.dot[0], y - crank.dot[1])))).toBeLessThan(1);
});

test('numbers in balloons are all of one size on every map, two in one as well', () => {
  for (const { name, entries } of FIVE) {
    const sizes = [...mapOf(entries).matchAll(/<g class="balloon [^"]*".*?<text[^>]*font-size="([\d.]+)"/gsu)].map(([, size]) => size);
    expect(sizes.length, name).toBeGreaterThan(3);
    expect({ name, sizes: new Set(sizes).size }).toEqual({ name, sizes: 1 });
  }
});

import { expect, test } from 'vitest';
import { MAKERS, type Making } from '../../src/derived/making/index.ts';
import { layViews, makingSheets, type Ink } from '../../src/views/making/index.ts';
import { textWidth } from '../../src/views/making/text-width.ts';
import { pictureOf } from './figures-of.ts';
import { bowHammer, helveHammer, inchHammer, metricHammer, slowHammer } from './hammers.ts';
import { laidInRoom } from './laid-in-room.ts';

interface Box {
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Frame of a text, by a mean width of six tenths of its height for each sign: enough to tell one figure on another. */
function boxOf(ink: Extract<Ink, { kind: 'text' }>): Box {
  const width = ink.words.length * ink.height * 0.5;
  const start = ink.anchor === 'start' ? 0 : ink.anchor === 'middle' ? -width / 2 : -width;
  const upright = Math.abs(Math.sin(ink.turn)) > 0.5;
  const [x, y] = ink.at;
  return upright
    ? { words: ink.words, left: x - ink.height * 0.7, right: x, bottom: y + start, top: y + start + width }
    : { words: ink.words, left: x + start, right: x + start + width, bottom: y, top: y + ink.height * 0.7 };
}

const overlap = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

const cases = [['inch', pictureOf(inchHammer())] as const, ['metric', pictureOf(metricHammer(), 'metric')] as const, ['metric', pictureOf(bowHammer(), 'metric')] as const, ['inch', pictureOf(helveHammer())] as const, ['inch', pictureOf(slowHammer())] as const].flatMap(([system, found]) =>
  Object.values(MAKERS).flatMap((make): { name: string; part: Extract<Making, { state: 'to-make' }>; found: typeof found }[] => {
    const part = make(found.values, found.known, { system, alsoMade: new Set(), floorCut: false });
    return part.state === 'to-make' ? [{ name: `${system} ${part.id}`, part, found }] : [];
  }));

test.each(cases)('no figure of $name lies on another or across an outline, in either angle and at any scale', ({ part, found }) => {
  for (const angle of ['first-angle', 'third-angle'] as const) {
    for (const scale of [500, 1000, 2000]) {
      const { inks } = layViews(part, { scale, height: 2.5, system: found.system, angle });
      const texts = inks.filter((ink) => ink.kind === 'text').map(boxOf);
      texts.forEach((one, index) => expect(texts.slice(index + 1).filter((other) => overlap(one, other)).map((other) => `${one.words} on ${other.words}`), `${angle} ${scale}`).toEqual([]));
      const edges = inks.filter((ink) => ink.kind === 'line' && ink.layer === 'visible');
      for (const edge of edges) {
        if (edge.kind !== 'line') continue;
        const box: Box = { words: 'edge', left: Math.min(edge.from[0], edge.to[0]), right: Math.max(edge.from[0], edge.to[0]) + 1e-6, bottom: Math.min(edge.from[1], edge.to[1]), top: Math.max(edge.from[1], edge.to[1]) + 1e-6 };
        const flat = box.right - box.left < 1e-3 || box.top - box.bottom < 1e-3;
        if (flat) expect(texts.filter((one) => overlap(one, box)).map((one) => `${one.words} across an edge`), `${angle} ${scale}`).toEqual([]);
      }
    }
  }
});

/** A line of dimensions that lies level or upright, as a frame of no width. */
function ruleOf(ink: Ink): Box | undefined {
  if (ink.kind !== 'line' || (ink.layer !== 'dimension' && ink.layer !== 'centre')) return undefined;
  const [left, right] = [Math.min(ink.from[0], ink.to[0]), Math.max(ink.from[0], ink.to[0])];
  const [bottom, top] = [Math.min(ink.from[1], ink.to[1]), Math.max(ink.from[1], ink.to[1])];
  return right - left < 1e-6 || top - bottom < 1e-6 ? { words: 'line', left, right: right + 1e-9, bottom, top: top + 1e-9 } : undefined;
}

/** The frame of a text as the typeface has it. */
function letteredBox(ink: Extract<Ink, { kind: 'text' }>): Box {
  const width = textWidth(ink.words, ink.height);
  const start = ink.anchor === 'start' ? 0 : ink.anchor === 'middle' ? -width / 2 : -width;
  const [x, y] = ink.at;
  return Math.abs(Math.sin(ink.turn)) > 0.5
    ? { words: ink.words, left: x - ink.height * 0.7, right: x, bottom: y + start, top: y + start + width }
    : { words: ink.words, left: x + start, right: x + start + width, bottom: y, top: y + ink.height * 0.7 };
}

test.each(cases)('no figure of $name touches an extension line or a centre line at the scale of its sheet', ({ part, found }) => {
  for (const angle of ['first-angle', 'third-angle'] as const) {
    const inRoom = laidInRoom(part, found.system, angle);
    // Room for the drawing on A4 and letter beside a long table and a short one.
    for (const tall of [90, 130]) {
      const laid = inRoom(tall);
      if (laid === undefined) continue;
      const rules = laid.inks.flatMap((ink) => ruleOf(ink) ?? []);
      for (const text of laid.inks.flatMap((ink) => (ink.kind === 'text' ? [letteredBox(ink)] : []))) {
        expect(rules.filter((rule) => overlap(text, rule)).map((rule) => `${text.words} on a line at ${rule.left.toFixed(1)}, ${rule.bottom.toFixed(1)}`), `${angle} ${tall}`).toEqual([]);
      }
    }
  }
});

test.each(cases)('every stroke of $name lies within the frame of its sheet, on A4 and on letter', ({ part, found }) => {
  for (const [paper, width, height] of [['A4', 210, 297], ['letter', 215.9, 279.4]] as const) {
    for (const sheet of makingSheets(found, part, { paper })) {
      const xs = [...sheet.matchAll(/ (?:x|x1|x2|cx)="(-?[\d.]+)"/g)].map((match) => Number(match[1]));
      const ys = [...sheet.matchAll(/ (?:y|y1|y2|cy)="(-?[\d.]+)"/g)].map((match) => Number(match[1]));
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(20);
      expect(Math.max(...xs)).toBeLessThanOrEqual(width - 10);
      expect(Math.min(...ys)).toBeGreaterThanOrEqual(10);
      expect(Math.max(...ys)).toBeLessThanOrEqual(height - 10);
    }
  }
});

test.each(cases)('the sheet of $name says check before cutting, whose hammer, the scale and the log', ({ part, found }) => {
  const [first = '', second = ''] = makingSheets(found, part);
  expect(first).toContain('CHECK BEFORE CUTTING');
  expect(first).toContain(found.provenance.logHash.slice(0, 32));
  expect(second).toContain(found.provenance.logHash);
  expect(first).toMatch(/(\d : \d+|not to scale)/);
  expect(first).toContain('CASE');
  for (const one of part.unknowns) expect(first).toContain(one.what.split(' ')[0]);
  if (part.dimensions.some((one) => one.estimate)) expect(first).toContain('estimate');
});

/** Signs that the project's typeface has, beside plain ASCII. Any other is set in another face, or not at all. */
const SIGNS = /^[\x20-\x7e’“”±×Ø°−–·µ]*$/;

test.each(cases)('every word on the sheets of $name can be set in the project’s typeface', ({ part, found }) => {
  for (const sheet of makingSheets(found, part)) {
    const words = [...sheet.matchAll(/<text[^>]*>([^<]*)</g)].map((match) => (match[1] ?? '').replace(/&#\d+;/g, ''));
    expect(words.filter((one) => !SIGNS.test(one))).toEqual([]);
  }
});

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { MAKERS, type PartKind } from '../../../src/derived/making/index.ts';
import { makingSheets } from '../../../src/views/making/index.ts';
import { pictureOf } from '../../making/figures-of.ts';
import { bowHammer, helveHammer, inchHammer, metricHammer } from '../../making/hammers.ts';

/** Set to draw the figures anew; look at them before they are kept. */
const REDRAW = process.env['TUPWISE_REDRAW'] === '1';
const folder = join(import.meta.dirname, 'sheets');

/** Coordinates to a twentieth of a millimetre: engines differ in the last bits of a sine, and nobody sees less on paper. What is written stays as it is. */
const rounded = (svg: string): string => svg.replace(/<[^>]*>/g, (tag) => tag.replace(/(?<=[\s"(,MLA])-?\d+\.\d+(?=[\s"),AMLZ])/g, (number) => String(Math.round(Number(number) * 20) / 20 + 0)));

/** The log's hash stands for the log; it changes with every word of the format, and is no part of the drawing. */
const withoutHash = (svg: string): string => svg.replace(/[0-9a-f]{32,64}/g, 'hash').replaceAll('><', '>\n<');

const both = new Set<PartKind>(['filler-plate']);
const inch = pictureOf(inchHammer());
const metric = pictureOf(metricHammer(), 'metric');
const bow = pictureOf(bowHammer(), 'metric');
const helve = pictureOf(helveHammer());
/** Parts that a toggle hammer driven by one belt does not have. */
const OF_OTHERS: readonly PartKind[] = ['bow-leaf', 'bow-eye-bushing', 'bow-clip-bushing', 'helve-bushing', 'countershaft-driven', 'countershaft-driver', 'bow-eye-pin', 'bow-clip-pin', 'bow-strap', 'helve-pin', 'helve-cushion'];
const figures = [
  ...(Object.keys(MAKERS) as PartKind[]).filter((kind) => !OF_OTHERS.includes(kind)).map((kind) => ({ name: `inch-${kind}`, found: inch, kind, system: 'inch' as const, paper: 'letter' as const, angle: 'third-angle' as const })),
  ...(['lower-die', 'upper-die', 'lower-key', 'filler-plate', 'toggle-pin'] as const).map((kind) => ({ name: `metric-${kind}`, found: metric, kind, system: 'metric' as const, paper: 'A4' as const, angle: 'first-angle' as const })),
  ...(['bow-leaf', 'bow-strap', 'bow-eye-pin', 'bow-clip-pin', 'bow-eye-bushing', 'bow-clip-bushing', 'countershaft-driven', 'countershaft-driver'] as const).map((kind) => ({ name: `bow-${kind}`, found: bow, kind, system: 'metric' as const, paper: 'A4' as const, angle: 'first-angle' as const })),
  ...(['helve-pin', 'helve-cushion', 'helve-bushing', 'crank-pin'] as const).map((kind) => ({ name: `helve-${kind}`, found: helve, kind, system: 'inch' as const, paper: 'letter' as const, angle: 'third-angle' as const })),
];

test.each(figures)('the sheets of $name are as they were looked at', ({ name, found, kind, system, paper, angle }) => {
  const part = MAKERS[kind](found.values, found.known, { system, alsoMade: both, floorCut: false });
  if (part.state !== 'to-make') throw new Error(`${name}: ${part.state}`);
  mkdirSync(folder, { recursive: true });
  makingSheets(found, part, { paper, angle }).forEach((svg, index) => {
    const file = join(folder, `${name}-${index + 1}.svg`);
    const drawn = `${withoutHash(rounded(svg))}\n`;
    if (REDRAW) writeFileSync(file, drawn);
    expect(existsSync(file), `${file} is not there; TUPWISE_REDRAW=1 draws it`).toBe(true);
    expect(drawn).toBe(readFileSync(file, 'utf8'));
  });
});

test('no figure is kept that nobody draws', () => {
  const names = new Set(figures.map((one) => one.name));
  expect(readdirSync(folder).filter((file) => !names.has(file.replace(/-\d\.svg$/, '')))).toEqual([]);
});

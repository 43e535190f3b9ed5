import { expect, test } from 'vitest';
import { figureBox, overlaps, runsThrough, segmentsOf } from '../../src/views/making/clear-figures.ts';
import type { Ink } from '../../src/views/making/index.ts';
import { SHEETS } from './every-sheet.ts';
import { laidInRoom } from './laid-in-room.ts';

type Lettered = Extract<Ink, { kind: 'text' }>;

/** ISO 129-1: no line crosses a figure. Every line counts: outlines, hatching, centre lines, extension lines, leaders, arrows, frames. */
test.each(SHEETS)('no line of any kind crosses a figure of $name, and no figure lies on another', ({ part, found }) => {
  for (const angle of ['first-angle', 'third-angle'] as const) {
    const inRoom = laidInRoom(part, found.system, angle);
    // Room for the drawing beside a long table and a short one.
    for (const tall of [90, 130]) {
      const laid = inRoom(tall);
      if (laid === undefined) continue;
      const texts = laid.inks.filter((ink): ink is Lettered => ink.kind === 'text');
      const strokes = laid.inks.flatMap((ink) => segmentsOf(ink).map((segment) => ({ segment, layer: ink.layer })));
      texts.forEach((text, index) => {
        const box = figureBox(text);
        expect(texts.slice(index + 1).filter((other) => overlaps(box, figureBox(other))).map((other) => `${text.words} on ${other.words}`), `${angle} ${tall}`).toEqual([]);
        expect(strokes.filter(({ segment }) => runsThrough(segment, box)).map(({ segment, layer }) => `${text.words} under a ${layer} line ${JSON.stringify(segment.map((point) => point.map((one) => Math.round(one * 10) / 10)))}`), `${angle} ${tall}`).toEqual([]);
      });
    }
  }
});

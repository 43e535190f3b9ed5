import { expect, test } from 'vitest';
import { figureBox, overlaps, runsThrough, segmentsOf } from '../../src/views/making/clear-figures.ts';
import { layViews, type Ink } from '../../src/views/making/index.ts';
import { SCALES } from '../../src/views/making/sheet-paper.ts';
import { SHEETS } from './every-sheet.ts';

type Lettered = Extract<Ink, { kind: 'text' }>;

/** ISO 129-1: no line crosses a figure. Every line counts: outlines, hatching, centre lines, extension lines, leaders, arrows, frames. */
test.each(SHEETS)('no line of any kind crosses a figure of $name, and no figure lies on another', ({ part, found }) => {
  for (const angle of ['first-angle', 'third-angle'] as const) {
    // Room for the drawing beside a long table and a short one.
    for (const tall of [90, 130]) {
      const laid = SCALES.map(([drawing, real]) => layViews(part, { scale: (1000 * drawing) / real, height: 2.5, system: found.system, angle })).find(({ extent: { least, most } }) => most[0] - least[0] <= 166 && most[1] - least[1] <= tall);
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

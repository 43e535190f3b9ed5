import { expect, test } from 'vitest';
import { runHammer, specOfSurvey } from '../../src/derived/motion/index.ts';
import { movingFigure, movingLengths } from '../../src/views/motion/index.ts';
import { FIVE } from '../print/every-paper.ts';
import { pictureOf } from '../print/paper-cases.ts';

/** Places along the paper and heights of the path of the die, downwards as in the picture. */
function dieOf(svg: string): readonly (readonly [number, number])[] {
  const path = /<path class="run-off" d="([^"]+)"/u.exec(svg)?.[1] ?? '';
  return [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);
}

test('on a still drawing time runs from left to right, and the arrow says so; on the page the paper runs off as on an indicator', () => {
  let drawn = 0;
  for (const { name, entries } of FIVE) {
    const picture = pictureOf(entries, 'inch');
    const { identity } = picture.known;
    const survey = specOfSurvey(picture.values, identity.family, identity.ramClass.quantity.value);
    const run = runHammer(survey.spec, { assumed: survey.assumed, traceSeconds: (5 * 2 * Math.PI) / survey.spec.driveSpeed });
    if (run.outcome !== 'ran') continue;
    const lengths = movingLengths(picture);
    for (const still of [true, false]) {
      const { svg, loop, paperSpeed } = movingFigure(survey.spec, lengths, run, { system: 'inch', aspect: 1.1, still });
      const path = dieOf(svg);
      if (path.length === 0) continue;
      drawn += 1;
      // A point of the trace a quarter of the loop after its start lies so far to the right of the start on paper that is read, and to the left on paper that runs.
      const i = Math.round(loop.first + (loop.end - loop.first) * 0.25);
      const after = run.trace.time[i]! - run.trace.time[loop.first]!;
      const start = path[0]!;
      const step = Math.max(1, Math.floor((loop.end - loop.first) / 220));
      const point = path[Math.round((i - loop.first) / step)]!;
      expect((point[0] - start[0]) / paperSpeed, `${name}, still ${String(still)}`).toBeCloseTo(still ? after : -after, 2);
      expect(svg, name).toContain(still ? '>time<' : '>longer ago<');
      // The dies meet fast and rise slowly or the other way: whichever it is, the drawing has it as the trace has it.
      expect(Math.abs(-point[1] / 1000 - run.trace.gap[loop.first + Math.round((i - loop.first) / step) * step]!), name).toBeLessThan(1e-3);
    }
  }
  expect(drawn).toBeGreaterThan(5);
});

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { outlook, picture } from '../../src/derived/index.ts';
import { movingInputOf, movingOf } from '../../src/derived/moving/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { gravityDrawing } from '../../src/views/outlook/gravity-drawing.ts';
import { helveSide, hookHeight } from '../../src/views/outlook/helve-lift.ts';

const found = picture(readSurveyFile(readFileSync(new URL('../../examples/tannerwick-150-worn-pivot.yaml', import.meta.url), 'utf8')).entries, knowledge, '2027-06-01T00:00:00Z', 1);
if (found === undefined) throw new Error('the example enrols no hammer');
const input = movingInputOf(outlook(found, 1).values, found.known);
const moving = movingOf(input, 1);
if (moving.state !== 'known' || 'state' in moving.whole) throw new Error('it has a standing');
const { svg } = gravityDrawing(found, input, moving.whole, 'sheet');

test('a helve is drawn from its end and from its side, with the lean over every edge', () => {
  expect(svg).toContain('from the end');
  expect(svg).toContain('from the side');
  const whole = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`;
  for (const way of ['sideways', 'forwards', 'backwards'] as const) {
    const lean = 'state' in moving.whole ? undefined : moving.whole[way];
    expect(svg).toContain(lean?.state === 'known' ? `>${whole(lean.value)}<` : 'no lean');
  }
});

test('its base is as long as read, its slings stand no flatter than 60°, and what comes off first is dashed', () => {
  const side = helveSide(found, input);
  expect((side.edges[1] - side.edges[0]) / 1000).toBeCloseTo(9 * 12 * 0.0254, 9);
  const [front, back] = side.bed;
  // The anvil stands by itself, so only the frame's own bed is slung.
  expect(front).toBeGreaterThan(0);
  const legs = [...svg.matchAll(/class="tip" d="M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)V0"/gu)].map((one) => one.slice(1).map(Number));
  expect(legs).toHaveLength(2);
  for (const [x0, y0, x1, y1] of legs) {
    expect(x0).toBeCloseTo((front + back) / 2, 1);
    expect(x1).toBeGreaterThan(front);
    expect(x1).toBeLessThan(back);
    expect((Math.atan2(y1! - y0!, Math.abs(x1! - x0!)) * 180) / Math.PI).toBeGreaterThanOrEqual(59.99);
  }
  expect(hookHeight(side)).toBeGreaterThan(side.bedTop);
  const helve = /<g [^>]*data-part="helve".*?<\/g>/su.exec(svg)?.[0] ?? '';
  expect(helve).toContain('class="hidden"');
  expect(helve).not.toContain('class="edge"');
  expect(svg).toContain('lift a finger’s breadth');
});

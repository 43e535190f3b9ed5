import { expect, test } from 'vitest';
import { mergeLimits } from '../../src/derived/duty/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';
import { limitsCard, partsOfSheet } from '../../src/views/index.ts';
import { motionOnPaper } from '../../src/views/work/motion-sheet.ts';
import { FIVE } from '../print/every-paper.ts';
import { outlookOf, pictureOf } from '../print/paper-cases.ts';

const pictures = FIVE.map(({ name, entries }) => ({ name, picture: pictureOf(entries, 'inch') }));

/** `170 ft·lbf (20 to 560), estimate` as its middle and ends. */
const threeOf = (text: string): readonly number[] => {
  const found = /^([\d.]+) ft·lbf \(([\d.]+) to ([\d.]+)\)/u.exec(text);
  return found === null ? [] : found.slice(1).map(Number);
};

test.each(pictures)('no more goes into the work than the blow holds, and the graph marks the bar of the answer: $name', ({ name, picture }) => {
  const sheet = partsOfSheet('capacity', { picture, outlook: outlookOf(picture), knowledge });
  const blocks = sheet.body();
  const facts = new Map(blocks.flatMap((block) => (block.kind === 'facts' ? block.rows.map(([title, text]) => [title, text] as const) : [])));
  const blow = threeOf(facts.get('Energy of a full blow') ?? '');
  const work = threeOf(facts.get('Energy into the work') ?? '');
  expect([blow.length, work.length], name).toEqual([3, 3]);
  for (const [index, most] of blow.entries()) expect(work[index], `${name}: ${work.join(', ')} of ${blow.join(', ')}`).toBeLessThanOrEqual(most);

  const said = / ([\d/ ]+in) square$/u.exec(sheet.answer.words)?.[1]?.trim() ?? '';
  const headline = readQuantity(said, { dimension: 'length' });
  if (!headline.ok) throw new Error(headline.problem.message);
  const marked = blocks.flatMap((block) => (block.kind === 'figure' ? [...block.svg.matchAll(/data-bar="([\d.]+)"/gu)].map((one) => Number(one[1])) : []));
  expect(marked.length, name).toBe(1);
  expect(marked[0]! / 1000, name).toBeCloseTo(headline.quantity.value, 4);

  // A reader follows the rule that the sheet states: down to an eighth, from two inches to a quarter.
  const unrounded = Number(/([\d.]+) in before rounding/u.exec(sheet.answer.rests)?.[1]);
  const cured = readQuantity(/that limits it: ([\d/ ]+in) square/u.exec(sheet.answer.sentence)?.[1] ?? said, { dimension: 'length' });
  if (!cured.ok) throw new Error(cured.problem.message);
  const step = unrounded >= 2 ? 0.25 : 0.125;
  expect(cured.quantity.value / 0.0254, name).toBeCloseTo(Math.floor(unrounded / step) * step, 4);
});

test.each(pictures)('one bound of the thickness of the work on the card, and a line for whoever it names: $name', ({ name, picture }) => {
  const { limits } = picture.duty;
  const bounds = limits.filter(({ kind, quantity }) => quantity !== undefined && ['light-work-only', 'greatest-bar', 'greatest-work-thickness'].includes(kind));
  expect(bounds.map((limit) => limit.sentence).length, name).toBeLessThanOrEqual(1);
  const card = limitsCard(picture);
  const named = limits.some((limit) => limit.kind === 'named-operator');
  expect(/^Operator.*: _{6}/mu.test(card.always.join('\n')), name).toBe(named);
});

test('of two bounds the tighter stands, with the findings behind both', () => {
  const metres = (value: number) => ({ dimension: 'length', value, uncertainty: 0 }) as const;
  const finding = (limit: object) => ({ limits: [limit] });
  const light = { kind: 'light-work-only', sentence: 'Light.', because: ['a'], quantity: metres(0.03) };
  const bar = { kind: 'greatest-bar', sentence: 'Bar.', because: ['b'], quantity: metres(0.06) };
  const thick = { kind: 'greatest-work-thickness', sentence: 'Thick.', because: ['c'], quantity: metres(0.05) };
  const merged = (...limits: readonly object[]) => mergeLimits(limits.map(finding) as unknown as Parameters<typeof mergeLimits>[0]).map(({ kind, because }) => [kind, because]);
  expect(merged(bar, light)).toEqual([['light-work-only', ['a', 'b']]]);
  expect(merged(bar, thick)).toEqual([['greatest-work-thickness', ['c', 'b']]]);
  expect(merged({ ...light, quantity: metres(0.07) }, bar).map(([kind]) => kind)).toEqual(['light-work-only', 'greatest-bar']);
});

test.each(pictures)('the motion sheet names a run-off only where one is drawn, and no peak of energy beside the blow: $name', ({ name, picture }) => {
  const figures = motionOnPaper(picture).blocks.flatMap((block) => (block.kind === 'figure' ? [block] : []));
  expect(figures.length, name).toBe(2);
  for (const { svg, caption } of figures) {
    expect(/run-off/u.test(caption ?? ''), name).toBe(svg.includes('class="run-off"'));
    expect(/<text[^>]*>[^<]*ft·lbf?</u.test(svg), name).toBe(false);
  }
});

test('what takes up the drive is called by no clutch’s part, since an idler on a belt has none', () => {
  const rule = knowledge.criteria.find((one) => one.id === 'running.chatter')?.rule;
  if (rule?.kind !== 'seen') throw new Error('running.chatter is seen');
  expect(Object.values(rule.answers).map((answer) => answer?.because ?? '').filter((words) => /\b(?:facing|cone)\b/iu.test(words))).toEqual([]);
});

import { describe, expect, test } from 'vitest';
import { movingInputOf, movingOf, type Moving } from '../../src/derived/moving/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { reportPdf, type Paper } from '../../src/print/index.ts';
import { numberedRound, OUTLOOK_IDS, OUTLOOK_TITLES, outlookSheet, partsOfSheet, type OutlookGround } from '../../src/views/index.ts';
import { checkStructure } from './check-structure.ts';
import { CASES, outlookOf, pictureOf, surveyed } from './paper-cases.ts';
import { hasReader, textOf } from './read-pdf.ts';

const readers = hasReader('pdfinfo', 'pdftotext', 'pdffonts', 'qpdf');
const ALL = [...CASES, ...['kettlebrae-50-simply-good', 'dunmarrow-90-cracked-leaf', 'wrenhollow-65-knocks-before-the-blow'].map((name) => ({ name, entries: surveyed(name) }))];
const WAYS = [['letter', 'inch'], ['a4', 'metric']] as const satisfies readonly (readonly [Paper, 'inch' | 'metric'])[];
const flat = (text: string): string => text.replace(/[\s⁄]+/gu, '');
const groundOf = (entries: (typeof ALL)[number]['entries'], system: 'inch' | 'metric'): OutlookGround => {
  const picture = pictureOf(entries, system);
  return { picture, outlook: outlookOf(picture), knowledge, program: '9.9.9' };
};

describe.skipIf(!readers).each(ALL)('sheets of $name', ({ entries }) => {
  test.each(WAYS)('on %s in %s open clean and tagged, the answer on the first page, three pages at most', { timeout: 60_000 }, async (paper, system) => {
    const ground = groundOf(entries, system);
    for (const id of OUTLOOK_IDS) {
      const tree = outlookSheet(id, ground);
      const pdf = await reportPdf(tree, { paper });
      expect(checkStructure(pdf, paper, tree.title), id).toBeLessThanOrEqual(3);
      const [first = ''] = textOf(pdf).split('\f');
      const { identity } = ground.picture.known;
      for (const said of [identity.tag, partsOfSheet(id, ground).answer.words, ground.picture.provenance.logHash, 'program 9.9.9', ground.picture.provenance.asOf]) expect(flat(first), `${id}: ${said}`).toContain(flat(said));
      const all = flat(textOf(pdf));
      for (const said of ['Cautions', 'Sources:', 'How far to trust it']) expect(all, id).toContain(flat(said));
      if (ground.picture.duty.verdict === 'stand-down') expect(flat(first), id).toContain(flat('Nothing on this sheet lets it run.'));
      expect(all, id).not.toMatch(/NaN|undefined|\[object/u);
    }
  });
});

test('a hammer that was hardly looked at has estimates alone, and each sheet says what to measure first', () => {
  const hardly = CASES.find(({ name }) => name === 'hardly looked at');
  if (hardly === undefined) throw new Error('the case is gone');
  const ground = groundOf(hardly.entries, 'inch');
  for (const id of OUTLOOK_IDS) {
    const { answer, measureFirst } = partsOfSheet(id, ground);
    expect(answer.estimate, id).toBe(true);
    expect(measureFirst.length, id).toBeGreaterThan(0);
  }
});

test.each(ALL)('the oiling map of $name has every number of the table, on the drawing or named under it', ({ entries }) => {
  const ground = groundOf(entries, 'inch');
  const { points } = numberedRound(ground);
  const figure = outlookSheet('oiling', ground).blocks.find((block) => block.kind === 'figure');
  if (figure?.kind !== 'figure') throw new Error('the map is gone');
  const drawn = [...figure.svg.matchAll(/<g class="balloon sound"[^>]*>.*?<text[^>]*>([\d, ]+)<\/text>/gu)].flatMap(([, numbers = '']) => numbers.split(', ').map(Number));
  const named = [...figure.caption.matchAll(/(?:: |; )(\d+), /gu)].map(([, number]) => Number(number));
  expect([...drawn, ...named].sort((a, b) => a - b)).toEqual(points.map((one) => one.number));
});

test.each(ALL)('the lean from which $name is said to go over is the least within its intervals, whole, and again without its anvil where that is less', ({ entries }) => {
  const ground = groundOf(entries, 'metric');
  const moving = movingOf(movingInputOf(ground.outlook.values, ground.picture.known), ground.picture.provenance.seed, 'metric');
  if (moving.state !== 'known' || 'state' in moving.whole) throw new Error('it has no standing');
  const said = Number(/lean from (\d+)°/u.exec(partsOfSheet('moving', ground).answer.words)?.[1]);
  for (const way of ['sideways', 'forwards', 'backwards'] as const) {
    const lean = moving.whole[way];
    if (lean.state !== 'known') throw new Error(lean.because);
    expect((said * Math.PI) / 180).toBeLessThanOrEqual(lean.low);
  }
  const least = (of: Moving['body']): number => (of === undefined || 'state' in of ? Infinity : Math.min(...[of.sideways, of.forwards, of.backwards].map((lean) => (lean.state === 'known' ? lean.low : Infinity))));
  // No degree is given away: the table's least, in whole degrees down.
  expect(said).toBe(Math.floor((least(moving.whole) * 180) / Math.PI));
  const without = /without its anvil from (\d+)°/u.exec(partsOfSheet('moving', ground).answer.words)?.[1];
  if (without !== undefined) expect(Number(without)).toBe(Math.floor((least(moving.body) * 180) / Math.PI));
  else expect(Math.floor((least(moving.body) * 180) / Math.PI)).toBeGreaterThanOrEqual(said);
});

test('every sheet has a title and says whom it is for', () => {
  for (const id of OUTLOOK_IDS) expect(OUTLOOK_TITLES[id].words).toMatch(/(?:For|To take to) .+\.$/u);
});

test('a cracked frame is not slung, and one that nobody looked at is looked at first', () => {
  const good = surveyed('kettlebrae-50-simply-good');
  const answer = (entries: typeof good): string => partsOfSheet('moving', groundOf(entries, 'inch')).answer.sentence;
  const cracked = good.map((entry) => ((entry.body as { readonly look?: string }).look === 'frame.crack' ? { ...entry, body: { ...(entry.body as object), answer: 'present' } } as typeof entry : entry));
  expect(answer(good)).not.toMatch(/crack/);
  expect(answer(cracked)).toMatch(/^Do not sling it through the throat or by the column: the frame is cracked/);
  expect(answer(good.filter((entry) => (entry.body as { readonly look?: string }).look !== 'frame.crack'))).toMatch(/^Look at throat and spine for cracks/);
});

test('the overload relay is told the current of the plate to the digit', () => {
  const said = JSON.stringify(outlookSheet('power', groundOf(surveyed('tannerwick-150-worn-pivot'), 'inch')));
  expect(said).toContain('"Overload relay","11.5 A"');
});

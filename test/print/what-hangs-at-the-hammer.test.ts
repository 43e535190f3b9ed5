import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { pictureToday } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { limitsCard, reportTree } from '../../src/views/index.ts';
import { handOverSheet, SHEET_IDS } from '../../src/views/work/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound } from '../worksheet/worn-hammer.ts';
import { surveyed } from './paper-cases.ts';

const EXAMPLES = readdirSync(fileURLToPath(new URL('../../examples/', import.meta.url))).filter((name) => name.endsWith('.yaml')).map((name) => name.replace('.yaml', ''));
/** Long after the surveys, so that checks are overdue. */
const LATE = '2027-06-01T00:00:00Z';

describe.each(EXAMPLES)('%s', (name) => {
  const entries = surveyed(name);
  const found = pictureToday(entries, knowledge, LATE, 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  const card = JSON.stringify(limitsCard(found));
  const report = reportTree(found, knowledge);
  const first = JSON.stringify(report.blocks.slice(0, report.blocks.findIndex((block) => block.kind === 'new-page')));
  const sale = JSON.stringify(handOverSheet('sale', { picture: found, entries, knowledge }).blocks);

  test('what is overdue stands once on card, first page and sale sheet, whatever the verdict', () => {
    expect(found.duty.overdue?.length).toBeGreaterThan(0);
    for (const paper of [card, first, sale]) expect(paper.match(/dated checks? (is|are) overdue: /g)?.length).toBe(1);
  });

  test('a paper that is no card does not speak of "this card"', () => {
    const papers = [report, ...SHEET_IDS.map((id) => handOverSheet(id, { picture: found, entries, knowledge }))];
    for (const paper of papers) expect(JSON.stringify(paper.blocks), paper.title).not.toContain('this card');
    expect(card).not.toContain('the limits card');
  });

  test('where the tread is bounded, card and first page say how it is measured', () => {
    const bounded = found.duty.limits.some((limit) => limit.kind === 'greatest-tread');
    const runs = found.duty.verdict === 'fit' || found.duty.verdict === 'fit-within-limits';
    expect(first.includes('chalk the treadle’s height')).toBe(bounded);
    expect(card.includes('chalk the treadle’s height')).toBe(bounded && runs);
  });

  test('a bounded tread of three quarters is named so, one of half so', () => {
    for (const limit of found.duty.limits.filter((one) => one.kind === 'greatest-tread')) expect(first).toContain(limit.sentence.includes('75 %') ? 'three quarters of the way down' : 'half way down');
  });
});

test('a card for one operator keeps a line for the name', () => {
  const log = gatesSound(new LogOf('50 lb', 'coil-and-toggle'));
  const found = pictureToday(log.look('guards.belt', 'open').look('guards.front', 'missing-alone').read('upper-die.rest-gap', '3/4 in').entries, knowledge, '2026-05-13T00:00:00Z', 1);
  if (found === undefined) throw new Error('the case enrols no hammer');
  const card = limitsCard(found);
  expect([...card.limits, ...card.habits].join(' ')).toContain('Only the operator named on this card.');
  expect(card.always.join(' ')).toContain('Operator: ____');
});

import { expect, test } from 'vitest';
import { dutyLadder, outlook } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { limitsCard, outlookSheet } from '../../src/views/index.ts';
import type { Block } from '../../src/views/report/index.ts';
import { ladderBlocks } from '../../src/views/work/ladder-blocks.ts';
import { motionOnPaper } from '../../src/views/work/motion-sheet.ts';
import { planOfUpkeep } from '../../src/views/work/upkeep-blocks.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

const of = (tag: string) => EXAMPLE_PICTURES.find((one) => one.tag === tag)!;
const wordsOf = (blocks: readonly Block[]): string => JSON.stringify(blocks);

test('what only running shows is checked by running it, for that check only', () => {
  const { found } = of('SF-40');
  const words = wordsOf(ladderBlocks(found, dutyLadder(found.known, found.findings, found.worksheet, knowledge)));
  expect(words).toContain('Not to be run before the guard is on; then for that check only, and for nothing else before it: ram with the treadle up.');
  expect(words).not.toContain('Not to be run until what is missing is checked.');
});

test.each(['SF-40', 'DT-90'])('the motion sheet of %s says first that it stands down, and its card how much nobody checked', (tag) => {
  const { found } = of(tag);
  expect(motionOnPaper(found).blocks[0]).toMatchObject({ kind: 'paragraph', tone: 'next', text: expect.stringMatching(/^It stands down today: .* Nothing on this sheet lets it run\.$/u) });
  const open = found.findings.filter((finding) => finding.grade === 'not-known').length;
  expect(limitsCard(found).always.join(' ')).toContain(`Not checked, and not taken as good: ${open} of `);
});

test('a count that the reckoning does not come to stands beside it, and a bar has the doubt of its blow beside it', () => {
  const { found } = of('TW-150');
  expect(wordsOf(motionOnPaper(found).blocks)).toMatch(/213 a minute, with 4\.5 % lost to slip\.[^"]* Counted on the hammer: 186 a minute, 17 % lost to slip\. The count is right/);
  expect(wordsOf(motionOnPaper(of('KB-50').found).blocks)).not.toContain('Counted on the hammer');
  const answer = outlookSheet('capacity', { picture: found, outlook: outlook(found, 1), knowledge }).blocks.find((block) => block.kind === 'answer');
  expect(answer).toMatchObject({ sentence: expect.stringMatching(/These bars rest on a blow of \d+ ft·lbf \(\d+ to \d+\)[^:]*, which nobody measured: begin well below them\./u) });
});

test('a reading that only a running hammer gives does not make a survey overdue that was taken at rest', () => {
  const { found, entries } = of('DT-90');
  // Surveyed on 2025-05-17 at rest; its blows a minute are of the year before.
  expect(planOfUpkeep(found, entries).nextSurvey).toMatchObject({ on: '2026-05-17', because: '12 months after the oldest reading that still counts and that is taken at rest, of 2025-05-17.' });
});

import { expect, test } from 'vitest';
import { outlook } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { outlookSheet } from '../../src/views/index.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';

const sheetOf = (tag: string) => { const { found } = EXAMPLE_PICTURES.find((one) => one.tag === tag)!; return outlookSheet('power', { picture: found, outlook: outlook(found, 1), knowledge }).blocks; };
const boxes = (tag: string): number => sheetOf(tag).flatMap((block) => (block.kind === 'figure' ? [...block.svg.matchAll(/var\(--ink,#16181d\)"/gu)] : [])).length;

test('a motor that draws more than its plate says so first, and it and its starter are black', () => {
  // 16 A read against 11.5 A on the plate: 139 %, above the 125 % that an overload set to the plate may let through.
  expect(16 / 11.5).toBeCloseTo(1.391, 3);
  const answer = sheetOf('TW-150').find((block) => block.kind === 'answer');
  expect(answer).toMatchObject({ words: 'It draws 16 A, 139 % of its plate; full load by the table 12 A: conductors from 15 A, breaker to 30 A', sentence: expect.stringMatching(/^Wire for 15 A does not carry the 16 A that it draws\./u) });
  const words = sheetOf('TW-150').flatMap((block) => (block.kind === 'figure' ? [block.words] : [])).join();
  expect(words).toContain('overload set, and the motor draws more than that lets through');
  expect(words).toContain('Motor: 2 hp, 11.5 A; draws 16 A');
  expect(boxes('TW-150') - boxes('KB-50')).toBe(2);
  expect(sheetOf('KB-50').find((block) => block.kind === 'answer')).toMatchObject({ words: expect.stringMatching(/^(?:Full load|About|Current)/u) });
});

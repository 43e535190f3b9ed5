import { expect, test } from 'vitest';
import { outlook } from '../../src/derived/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { limitsCard, outlookSheet, reportTree } from '../../src/views/index.ts';
import { EXAMPLE_PICTURES } from '../cases/example-pictures.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf } from '../worksheet/worn-hammer.ts';

test('a shut oil way is the first line of the card, and every paper calls it by one name', () => {
  const found = EXAMPLE_PICTURES.find((one) => one.tag === 'TW-150')!.found;
  const sentence = 'Not before the oil way of the helve pivots is open.';
  expect(limitsCard(found).limits[0]).toBe(sentence);
  const [answer] = outlookSheet('oiling', { picture: found, outlook: outlook(found, 1), knowledge }).blocks.filter((block) => block.kind === 'answer');
  expect(answer).toMatchObject({ words: sentence.slice(0, -1) });
  expect(found.duty.sentence).toContain(`Fit within limits: not before the oil way of the helve pivots is open; from then on it may run`);
  const report = JSON.stringify(reportTree(found, knowledge));
  expect(report).toContain('Oil ways, helve pivots');
  expect(report).not.toMatch(/linkage pins/u);
});

test('several shut oil ways are one line, grease shuts like dirt, and a share of them shuts all', () => {
  const log = (family: 'coil-and-toggle' | 'bow-spring'): LogOf => gatesSound(new LogOf('50 lb', family)).read('upper-die.rest-gap', '3/4 in');
  const first = (one: LogOf): string | undefined => limitsCard(pictureOf(one)).limits[0];
  expect(first(log('coil-and-toggle').look('oil-ways.open@linkage-pins', 'blocked').look('oil-ways.open@main-front', 'greased').look('oil-ways.open@crank-pin', 'runs'))).toBe('Not before the oil ways of the toggle and link pins and the crank-end main bearing are open.');
  expect(first(log('coil-and-toggle').look('oil-ways.open@crank-pin', 'runs'))).not.toContain('oil way');
  expect(first(log('coil-and-toggle').read('oil-ways.blocked-share', '30 %'))).toBe('Not before every oil way is open.');
  expect(first(log('coil-and-toggle').read('oil-ways.blocked-share', '30 %').look('oil-ways.open@linkage-pins', 'blocked').look('oil-ways.open@ways', 'blocked'))).toBe('Not before every oil way is open, those of the toggle and link pins and the ram ways among them.');
});

test('a facing that may hold asbestos is said on the card and at its oil point, which gets no drop', () => {
  const found = EXAMPLE_PICTURES.find((one) => one.tag === 'DT-90')!.found;
  const words = 'ay hold asbestos: no oil, no brush, no air and no hand there before it is tested.';
  expect(limitsCard(found).limits).toContain(`Clutch facing: m${words}`);
  const sheet = outlookSheet('oiling', { picture: found, outlook: outlook(found, 1), knowledge }).blocks;
  const rows = sheet.flatMap((block) => (block.kind === 'table' && block.columns.includes('Drops') ? block.rows : []));
  const row = rows.find(({ cells }) => cells[1]?.startsWith('Clutch facing'));
  expect(row).toMatchObject({ condition: 'stand-down', cells: [expect.anything(), `Clutch facing: M${words}`, 'none', 'never', '–', 'nothing to probe'] });
  expect(sheet.find((block) => block.kind === 'answer')).toMatchObject({ sentence: expect.stringContaining(`Clutch facing: m${words}`) });
  // Where nobody says that it may, it is oiled as ever.
  const plain = EXAMPLE_PICTURES.find((one) => one.tag === 'WH-65')!.found;
  expect(limitsCard(plain).limits.join(' ')).not.toContain('asbestos');
});

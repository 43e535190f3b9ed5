import { tmpdir } from 'node:os';
import { beforeAll, expect, test } from 'vitest';
import { OUTLOOK_IDS, OUTLOOK_TITLES } from '../../../src/views/index.ts';
import { EXAMPLES, typed } from '../../cli/at-the-door.ts';
import { asked, inventedEntries } from './asked.ts';

const { ask, send } = asked(tmpdir());
const entries = inventedEntries('sallowfield-40-sunken-seat');
const hammer = entries[0]?.hammer ?? '';
beforeAll(() => send('/api/entries', { entries }));

test.each(OUTLOOK_IDS)('the sheet %s comes as a page and as PDF in both papers', async (id) => {
  const page = await ask(`/paper/${hammer}/${id}`);
  expect(page.headers.get('content-type')).toMatch(/^text\/html/);
  expect(await page.text()).toContain(`SF-40: ${OUTLOOK_TITLES[id].title.toLowerCase()}`);
  for (const [paper, size] of [['a4', /595\.\d+ 841\.\d+/], ['letter', /612 792/]] as const) {
    const pdf = await ask(`/paper/${hammer}/${id}.pdf?paper=${paper}`);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(pdf.headers.get('content-disposition')).toBe(`inline; filename="SF-40-${id}.pdf"`);
    expect(Buffer.from(await pdf.arrayBuffer()).toString('latin1')).toMatch(size);
  }
});

test('the sheet on moving is printed with the door and the floor that were asked', async () => {
  const text = async (query: string): Promise<string> => (await ask(`/paper/${hammer}/moving${query}`)).text();
  expect(await text('')).toContain('The door was not measured.');
  const wide = await text('?door=3x3&floor=50000');
  expect(wide).toMatch(/goes through the door with/);
  expect(wide).toMatch(/% of the rating stated, standing still/);
  expect(await text('?door=0.3x2')).toMatch(/too wide for the door/);
  expect(await text('?door=wide&floor=strong')).toContain('The door was not measured.');
});

test('the server and the command line give the same report, the outlook in it', async () => {
  const heading = 'What it forges, drinks, draws, stands on and weighs';
  const fromServer = await (await ask(`/paper/${hammer}/report`)).text();
  const { out } = await typed(['report', `${EXAMPLES}sallowfield-40-sunken-seat.yaml`]);
  const partOf = (text: string): string => text.slice(text.indexOf(heading), text.indexOf('</table>', text.indexOf(heading))).replaceAll(/<[^>]*>/g, ' ');
  expect(partOf(fromServer)).toContain('Oiling round');
  expect(partOf(fromServer)).toBe(partOf(out));
});

import { tmpdir } from 'node:os';
import { beforeAll, expect, test } from 'vitest';
import { readSurveyFile, type Entry } from '../../../src/entries/index.ts';
import { asked, inventedEntries } from './asked.ts';

const { ask, send } = asked(tmpdir());
const entries = [...inventedEntries('sallowfield-40-sunken-seat'), ...inventedEntries()];
const hammer = entries[0]?.hammer ?? '';
beforeAll(() => send('/api/entries', { entries }));

test.each(['report', 'card', 'elevation.svg', 'survey.yaml'])('no paper of a hammer that is not in the yard: %s', async (paper) => {
  const answer = await ask(`/paper/01JZZZZZZZZZZZZZZZZZZZZZZZ/${paper}`);
  expect(answer.status).toBe(404);
  expect(await answer.text()).toContain('No hammer of this id is in the yard');
});

test('the report is a page by itself: the verdict, the finding that stops the hammer, the drawing', async () => {
  const answer = await ask(`/paper/${hammer}/report`);
  expect(answer.headers.get('content-type')).toMatch(/^text\/html/);
  const text = await answer.text();
  expect(text).toMatch(/^<!doctype html><html lang="en">/);
  for (const words of ['SF-40', 'Stand down', 'Hold of dies and keys', '<svg', 'SHA-256', 'Invented hammer']) expect(text).toContain(words);
  expect(text).not.toMatch(/<script|(src|href)="(https?:)?\/\//);
});

test('the card says what may be done, and in millimetres where that is asked', async () => {
  const inch = await (await ask(`/paper/${entries.at(-1)?.hammer}/card`)).text();
  expect(inch).toContain('KB-50');
  expect(inch).toContain('Never die on die cold.');
  const report = (units: string) => ask(`/paper/${hammer}/report?units=${units}`).then((answer) => answer.text());
  expect(await report('metric')).toMatch(/Nothing thinner than \d+(\.\d+)? mm/);
  expect(await report('inch')).toMatch(/Nothing thinner than [\d/ ]+ in/);
});

test('the drawing is SVG', async () => {
  const answer = await ask(`/paper/${hammer}/elevation.svg`);
  expect(answer.headers.get('content-type')).toBe('image/svg+xml');
  expect(await answer.text()).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"[\s\S]*<\/svg>$/);
});

test('the survey file reads back to the same hammer', async () => {
  const answer = await ask(`/paper/${hammer}/survey.yaml`);
  expect(answer.headers.get('content-disposition')).toBe('attachment; filename="SF-40.yaml"');
  const back = readSurveyFile(await answer.text());
  expect(back.problems).toEqual([]);
  const essence = (all: readonly Entry[]) => all.map(({ kind, by, body }) => JSON.stringify([kind, by, body])).sort();
  expect(essence(back.entries)).toEqual(essence(entries.filter((entry) => entry.hammer === hammer)));
});

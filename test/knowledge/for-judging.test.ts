import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { forJudging, knowledge } from '../../src/knowledge/index.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');

test.each(readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml')))('a picture needs no text of sources and cautions: %s', (name) => {
  const { entries } = readSurveyFile(readFileSync(join(EXAMPLES, name), 'utf8'));
  const [short, whole] = [forJudging, knowledge].map((known) => picture(entries, known, '2026-11-26T00:00:00Z', 1));
  expect(whole?.findings.length).toBeGreaterThan(50);
  expect(short).toEqual(whole);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { forJudging, knowledge } from '../../src/knowledge/index.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');

test.each(readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml')))('a picture needs no text of sources, cautions and disputes: %s', (name) => {
  const { entries } = readSurveyFile(readFileSync(join(EXAMPLES, name), 'utf8'));
  const [short, whole] = [forJudging, knowledge].map((known) => picture(entries, known, '2026-11-26T00:00:00Z', 1));
  expect(whole?.findings.length).toBeGreaterThan(50);
  const { findings, ...others } = whole!;
  // A dispute is carried along for whoever reads the finding; nothing else may differ.
  expect(short).toEqual({ ...others, findings: findings.map((one) => {
    const { dispute, ...rest } = one;
    return dispute === undefined || short?.findings.some((other) => other.criterion === one.criterion && other.at === one.at && other.dispute !== undefined) ? one : rest;
  }) });
  expect(knowledge.criteria.filter((one) => one.dispute !== undefined).length).toBeGreaterThan(forJudging.criteria.filter((one) => one.dispute !== undefined).length + 15);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { schemaText } from '../../src/cli/schema.ts';
import { canonicalJson, orderEntries, readSurveyFile, surveyFileSchema, writeSurveyFile } from '../../src/entries/index.ts';

const FOLDER = new URL('../../examples/', import.meta.url).pathname;
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml'));
const text = (name: string): string => readFileSync(join(FOLDER, name), 'utf8');
const validate = new Ajv({ strict: false, allErrors: true, allowUnionTypes: true }).compile(surveyFileSchema());

describe('the published schema', () => {
  it('is the one that the vocabulary gives today; write it again with: npx tsx src/cli/main.ts schema -o examples/survey-file-schema.json', () => {
    expect(text('survey-file-schema.json')).toBe(schemaText());
  });

  const survey = (readings: unknown, looks: unknown = {}): unknown => ({ tupwise: 1, hammer: { tag: 'a', family: 'helve', class: '50 lb' }, visits: [{ date: '2026-01-01', by: 'x', readings, looks }] });
  it.each([
    ['short, long and several places', survey({ 'seat.sunk': '2 thou', 'lower-die.height': { value: '2 in', tool: 'caliper', way: 'whole-die' }, 'main-bearings.clearance': { front: '9 thou', rear: { value: '4 thou' }, tool: 'feeler' }, 'main-shaft.diameter@front': '2 in' }, { 'frame.crack': 'none', 'keys.state': { upper: 'good', lower: { answer: 'bent', words: 'x' } } }), true],
    ['a number without a unit, which the reader then refuses', survey({ 'seat.sunk': 2 }), true],
    ['a mistyped place', survey({ 'seat.sunken': '2 thou' }), false],
    ['a point that is not on the part', survey({ 'main-bearings.clearance@left': '2 thou' }), false],
    ['an unknown tool', survey({ 'seat.sunk': { value: '2 thou', tool: 'thumb' } }), false],
    ['a way that the place does not have', survey({ 'seat.sunk': { value: '2 thou', way: 'whole-die' } }), false],
    ['an unknown answer', survey({}, { 'frame.crack': 'perhaps' }), false],
    ['no visits', { tupwise: 1, hammer: { tag: 'a', family: 'helve', class: '50 lb' } }, false],
    ['an unknown family', { tupwise: 1, hammer: { tag: 'a', family: 'steam', class: '50 lb' }, visits: [] }, false],
  ])('takes or refuses as it should: %s', (_, value, right) => {
    expect(validate(value), JSON.stringify(validate.errors?.slice(0, 3))).toBe(right);
  });
});

describe.each(FILES)('the survey %s', (name) => {
  const read = readSurveyFile(text(name), { asOf: '2026-01-15' });

  it('has no problem and no warning, says that it is invented, and is full enough to show every page', () => {
    expect(read.problems).toEqual([]);
    expect(text(name)).toMatch(/An invented hammer of an invented yard/);
    expect(read.entries.find((entry) => entry.kind === 'enrol')?.body).toMatchObject({ invented: true });
    expect(read.entries.filter((entry) => entry.kind === 'reading').length).toBeGreaterThanOrEqual(60);
    expect(read.entries.filter((entry) => entry.kind === 'sighting').length).toBeGreaterThanOrEqual(60);
  });

  it('passes the schema as an editor would hold it', () => {
    expect(validate(parse(text(name))), JSON.stringify(validate.errors?.slice(0, 5), null, 1)).toBe(true);
  });

  it('is written and read back as the same log, and what is written passes the schema too', () => {
    const written = writeSurveyFile(read.entries);
    const back = readSurveyFile(written);
    expect(back.problems).toEqual([]);
    expect(canonicalJson(orderEntries(back.entries))).toBe(canonicalJson(orderEntries(read.entries)));
    expect(validate(parse(written)), JSON.stringify(validate.errors?.slice(0, 5), null, 1)).toBe(true);
    expect(written).not.toMatch(/\bmore:/);
  });
});

describe('the invented yard', () => {
  it('has history, prices, hours, an override, a correction, work in hand and things only told', () => {
    const all = FILES.map((name) => readSurveyFile(text(name)).entries);
    const kinds = all.flat().map((entry) => entry.kind);
    for (const kind of ['price', 'hours', 'override', 'correction', 'statement', 'job-progress', 'setting', 'as-made']) expect(kinds).toContain(kind);
    expect(all.filter((entries) => new Set(entries.map((entry) => entry.at.slice(0, 10))).size > 1).length).toBeGreaterThanOrEqual(2);
    const identities = all.map((entries) => entries.find((entry) => entry.kind === 'enrol')?.body as { family: string; maker: string; year: string; place: string });
    expect(new Set(identities.map((identity) => identity.maker)).size).toBe(FILES.length);
    expect(new Set(identities.map((identity) => identity.family)).size).toBe(3);
  });
});

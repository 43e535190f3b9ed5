import { describe, expect, test } from 'vitest';
import { blankSurvey } from '../../src/cli/new.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { LINKAGE_FAMILIES, partsFor } from '../../src/hammer/index.ts';
import { typed } from './at-the-door.ts';

describe.each(LINKAGE_FAMILIES)('a blank survey of a %s hammer', (family) => {
  const text = blankSurvey(family, { class: '50 lb', tag: 'HB-1', by: 'A. Quill' }, '2026-01-10');

  test('reads as it stands, and knows nothing yet', () => {
    const read = readSurveyFile(text);
    expect(read.problems.filter((problem) => problem.severity === 'problem')).toEqual([]);
    expect(read.entries.map((entry) => entry.kind)).toEqual(['enrol']);
  });

  test('has every look and every measuring place of the family', () => {
    for (const part of partsFor(family)) for (const one of [...part.looks, ...part.places]) expect(text).toContain(`# ${one.id}: `);
  });

  test('is judged as not known yet, with what would settle it', async () => {
    const heard = await typed(['judge', '-'], text);
    expect(heard.exit).toBe(20);
    expect(heard.out).toContain('What would settle the verdict');
  });
});

test('a weight that is none is refused by name', async () => {
  expect(await typed(['new', '--class', 'heavy'])).toMatchObject({ exit: 2, out: '' });
  expect((await typed(['new', '--family', 'steam'])).err).toContain('coil-and-toggle');
});

import { expect, test } from 'vitest';
import { knowledge, type Criterion } from '../../src/knowledge/index.ts';
import { criterionProblems, sourceProblems } from './criterion-problems.ts';

test('at least 60 criteria, each with a source and with examples that the tests can run', () => {
  expect(knowledge.criteria.length).toBeGreaterThanOrEqual(60);
  expect(criterionProblems(knowledge)).toEqual([]);
});

test('every source says what it is, where it stands and who read it', () => {
  expect(knowledge.sources.length).toBeGreaterThan(0);
  expect(sourceProblems(knowledge.sources)).toEqual([]);
});

test('a criterion without source, examples or known names is seen', () => {
  const good: Criterion = {
    id: 'guide.play',
    title: 'Play in the guides',
    question: 'How much play is there?',
    part: 'ram-guides',
    rows: [1],
    families: ['helve'],
    rule: { kind: 'measured', value: 'guide.play', worse: 'more', steps: [{ grade: 'watch', from: '10 thou', source: 'a', because: 'it wears' }] },
    gate: false,
    minutes: 5,
    cures: [],
    cautions: [],
    examples: (['at', 'just under', 'just over'] as const).map((stands) => ({ given: '10 thou', grade: 'watch', stands })),
  };
  const problems = (criterion: Criterion) =>
    criterionProblems({ criteria: [criterion], sources: [{ id: 'a', title: 'A', kind: 'memory', where: '', standing: 'from memory' }], jobs: [], cautions: [] });
  expect(problems(good)).toEqual([]);
  expect(problems({ ...good, examples: good.examples.slice(1) })).toEqual(['guide.play: has no example at a step']);
  expect(problems({ ...good, cures: ['pray'] })).toEqual(['guide.play: names an unknown job: pray']);
  expect(problems({ ...good, rule: { kind: 'measured', value: 'x', worse: 'more', steps: [] } })).toEqual(['guide.play: has no source']);
  expect(problems({ ...good, rule: { kind: 'seen', look: 'x', answers: { yes: { grade: 'sound', because: 'b', source: 'hearsay' } } } })).toEqual([
    'guide.play: names an unknown source: hearsay',
  ]);
  expect(problems({ ...good, id: 'Guide play' })).toHaveLength(1);
  expect(sourceProblems([{ id: 'a', title: 'A', kind: 'handbook', where: '', standing: '' }])).toHaveLength(2);
});

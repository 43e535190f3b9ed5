import { describe, expect, test } from 'vitest';
import { picture, valueKey } from '../../src/derived/index.ts';
import { gradeMeasured, readSteps } from '../../src/derived/condition/grade-measured.ts';
import { lookOf, placeOf } from '../../src/hammer/index.ts';
import { knowledge, type Criterion } from '../../src/knowledge/index.ts';
import { readQuantity, type Dimension } from '../../src/methods/quantity/index.ts';
import { LogOf } from '../cases/log-of.ts';

/** What a consequence measures; a new one that a criterion judges must be entered here. */
const CONSEQUENCES: Readonly<Record<string, Dimension>> = { stack: 'length', linkage: 'length', helve: 'length', clutch: 'length', journals: 'length', noise: 'time' };

function dimensionOf(value: string): Dimension {
  const place = placeOf(value)?.place.dimension;
  if (place !== undefined) return place;
  if (value.endsWith('-share') || value.endsWith('-ratio') || value.endsWith('slip') || value.endsWith('unbalance') || value.endsWith('overspeed-load')) return 'ratio';
  const room = CONSEQUENCES[value.split('.')[0] ?? ''];
  if (room === undefined) throw new Error(`what does this consequence measure? ${value}`);
  return room;
}

describe.each(knowledge.criteria.map((criterion) => [criterion.id, criterion] as const))('%s', (_id, criterion) => {
  test.each(criterion.examples.map((example) => [`${example.given} is ${example.grade}, ${example.stands}`, example] as const))('%s', (_name, example) => {
    if (criterion.rule.kind === 'measured') {
      const dimension = dimensionOf(criterion.rule.value);
      const reading = readQuantity(example.given, { dimension });
      if (!reading.ok) throw new Error(reading.problem.message);
      expect(gradeMeasured({ ...reading.quantity, uncertainty: 0 }, readSteps(criterion.rule, dimension), criterion.rule.worse).grade).toBe(example.grade);
      return;
    }
    expect(gradeFromLog(criterion, criterion.rule.look, example.given)).toBe(example.grade);
  });
});

/** A seen rule is judged through the whole picture, from the entry to the finding. */
function gradeFromLog(criterion: Criterion, look: string, answer: string): string | undefined {
  const [family = 'coil-and-toggle'] = criterion.families;
  const log = new LogOf('50 lb', family);
  if (criterion.onlyWhere !== undefined) log.look(criterion.onlyWhere.look, criterion.onlyWhere.answers[0] ?? '');
  const [at] = lookOf(look)?.look.at ?? [];
  const key = valueKey(look, at);
  log.look(key, answer);
  return picture(log.entries, knowledge, '2027-01-01T00:00:00Z', 1)?.findings.find((finding) => finding.criterion === criterion.id && finding.from.includes(key))?.grade;
}

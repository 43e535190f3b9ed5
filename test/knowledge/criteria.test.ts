import { describe, expect, it } from 'vitest';
import { LINKAGE_FAMILIES, PARTS, lookOf, partOf, placeOf } from '../../src/hammer/index.ts';
import { readQuantity, type Dimension } from '../../src/methods/quantity/index.ts';
import { GRADES, knowledge, type Criterion, type LimitRule } from '../../src/knowledge/index.ts';

/** Rows of the component list that no criterion judges, each with the reason. */
const NOT_JUDGED: Readonly<Record<string, string>> = {};

/** Dangers that stand a hammer down or keep the verdict open, whatever else is good. */
const RED_LIST: readonly (readonly [danger: string, criterion: string])[] = [
  ['a crack in the load path', 'frame.crack'], ['a broken ear of the ram guide', 'guide.ears'], ['a die or key that cannot be secured', 'keys.secure'],
  ['oil in the dovetail', 'keys.oil'], ['dies that touch at bottom dead centre', 'stack.rest-gap'], ['a cracked arm, link or pin', 'toggles.crack'],
  ['a cracked coil spring', 'spring.crack'], ['a cracked leaf', 'bow.crack'], ['a cracked helve', 'helve.crack'], ['a loose cap or missing bolt', 'caps.bolts'],
  ['no means of isolation', 'starter.isolation'], ['a ram that creeps or drops', 'running.creep'], ['a brake that slips where it is relied on', 'brake.holds'],
  ['no guard where other people come near', 'guards.front'], ['exposed live parts', 'starter.live-parts'], ['a cracked crank', 'crank.crack'], ['a cracked ram', 'ram.crack'],
];

const { criteria } = knowledge;
const sources = new Set(knowledge.sources.map((source) => source.id));
const jobs = new Map(knowledge.jobs.map((job) => [job.id, job]));
const cautions = new Set(knowledge.cautions.map((caution) => caution.id));
const byId = new Map(criteria.map((criterion) => [criterion.id, criterion]));

const judgements = (criterion: Criterion): readonly { readonly grade: string; readonly source: string; readonly because: string; readonly limits?: readonly LimitRule[]; readonly cures?: readonly string[] }[] =>
  criterion.rule.kind === 'measured' ? criterion.rule.steps : Object.values(criterion.rule.answers);

/** Consequences that are lengths; every other one that a criterion judges is a ratio. */
const LENGTHS = /^(stack\.(loss|loss-upper|loss-lower|filler-plate|linkage-clearance)|linkage\.(pin-play-sum|arm-mismatch)|journals\.shims-left-after)$/;
const LIMIT_DIMENSIONS: Readonly<Record<string, Dimension>> = { 'least-work-thickness': 'length', 'greatest-tread': 'ratio', 'longest-run': 'time', 'oil-every': 'time', 'check-keys-every': 'time' };
const dimensionOf = (value: string): Dimension => placeOf(value)?.place.dimension ?? (LENGTHS.test(value) ? 'length' : 'ratio');

describe('criteria', () => {
  it('are at least sixty, each with an id of its own in dotted trade words', () => {
    expect(criteria.length).toBeGreaterThanOrEqual(60);
    expect(byId.size).toBe(criteria.length);
    for (const { id } of criteria) expect(id).toMatch(/^[a-z]+(-[a-z]+)*(\.[a-z]+(-[a-z]+)*)+$/);
  });

  it('judge every row of the component list that can be judged', () => {
    const judged = new Set(criteria.flatMap((criterion) => criterion.rows.map(String)));
    const rows = new Set(PARTS.flatMap((part) => part.rows.map(String)));
    expect([...rows].filter((row) => !judged.has(row)).sort()).toEqual(Object.keys(NOT_JUDGED));
    expect([...judged].filter((row) => !rows.has(row))).toEqual([]);
  });

  it('belong to a part of their families', () => {
    for (const criterion of criteria) {
      const part = partOf(criterion.part);
      expect(part, criterion.id).toBeDefined();
      expect(criterion.families.filter((family) => !part?.families.includes(family)), criterion.id).toEqual([]);
    }
  });

  it('cite sources, jobs and cautions that exist, and say why', () => {
    for (const criterion of criteria) {
      for (const one of judgements(criterion)) {
        expect(sources.has(one.source), `${criterion.id}: source ${one.source}`).toBe(true);
        expect(one.because, criterion.id).toMatch(/^[A-Z0-9].*\.$/);
      }
      if (criterion.dispute !== undefined) expect(sources.has(criterion.dispute.source), criterion.id).toBe(true);
      expect(criterion.cures.filter((id) => !jobs.has(id)), criterion.id).toEqual([]);
      expect(criterion.cautions.filter((id) => !cautions.has(id)), criterion.id).toEqual([]);
      for (const family of criterion.families) {
        const possible = criterion.cures.filter((id) => jobs.get(id)?.families.includes(family));
        if (criterion.cures.length > 0) expect(possible.length, `${criterion.id} has no cure for ${family}`).toBeGreaterThan(0);
      }
    }
  });

  it('ask at each grade for cures out of their own list, and for one at least where the hammer is limited or stands down', () => {
    for (const criterion of criteria) {
      for (const one of judgements(criterion)) {
        const asked = one.cures ?? criterion.cures;
        expect(asked.filter((id) => !criterion.cures.includes(id)), criterion.id).toEqual([]);
        if (one.grade === 'sound' || one.grade === 'watch' || criterion.id === 'running.noise') continue;
        for (const family of criterion.families) expect(asked.some((id) => jobs.get(id)?.families.includes(family)), `${criterion.id} ${one.grade} ${family}`).toBe(true);
      }
    }
  });

  it('look at what the hammer has: every answer is graded and none is invented', () => {
    for (const { id, rule, onlyWhere } of criteria) {
      if (onlyWhere !== undefined) {
        const answers = lookOf(onlyWhere.look)?.look.answers.map((answer) => answer.id) ?? [];
        expect(onlyWhere.answers.filter((answer) => !answers.includes(answer)), id).toEqual([]);
      }
      if (rule.kind === 'seen') expect(Object.keys(rule.answers).sort(), id).toEqual((lookOf(rule.look)?.look.answers ?? []).map((answer) => answer.id).sort());
      else if (partOf(rule.value.split('.')[0] ?? '') !== undefined) expect(placeOf(rule.value), `${id} needs ${rule.value}`).toBeDefined();
      else expect(rule.value, id).toMatch(/^(stack|seat-pressure|spring|bow|journals|linkage|drive|capacity)\.[a-z]+(-[a-z]+)*$/);
    }
  });

  it('run from the mildest step to the strictest', () => {
    for (const { id, rule } of criteria) {
      if (rule.kind !== 'measured') continue;
      const levels = rule.steps.map((step) => GRADES.indexOf(step.grade));
      expect(levels, id).toEqual([...new Set(levels)].sort((a, b) => a - b));
      expect(levels.length, id).toBeGreaterThan(0);
    }
  });

  it('carry an example at, just under and just over each step, and one for each answer', () => {
    for (const { id, rule, examples } of criteria) {
      if (rule.kind === 'seen') {
        expect(examples.map((one) => [one.given, one.grade, one.stands]), id).toEqual(Object.entries(rule.answers).map(([answer, graded]) => [answer, graded.grade, 'plain']));
        continue;
      }
      for (const [index, step] of rule.steps.entries()) {
        const [under, at, over] = examples.slice(index * 3, index * 3 + 3);
        expect([under?.stands, at?.stands, over?.stands], id).toEqual(['just under', 'at', 'just over']);
        expect([at?.given, at?.grade], id).toEqual([step.from, step.grade]);
        const milder = index === 0 ? 'sound' : rule.steps[index - 1]?.grade;
        expect(rule.worse === 'more' ? [under?.grade, over?.grade] : [over?.grade, under?.grade], id).toEqual([milder, step.grade]);
      }
      expect(examples.length, id).toBe(rule.steps.length * 3);
    }
  });

  it('are written in shop notation of the value they judge, in order, and inside what is possible', () => {
    for (const { id, rule, examples } of criteria) {
      if (rule.kind !== 'measured') continue;
      const [least, most] = placeOf(rule.value)?.place.plausible ?? [0, Number.POSITIVE_INFINITY];
      const read = (text: string): number => {
        const reading = readQuantity(text, { dimension: dimensionOf(rule.value), field: id });
        if (!reading.ok) throw new Error(`${id}: ${reading.problem.message}: ${text}`);
        expect(reading.quantity.value, `${id}: ${text}`).toBeGreaterThanOrEqual(least);
        expect(reading.quantity.value, `${id}: ${text}`).toBeLessThanOrEqual(most);
        return reading.quantity.value;
      };
      const steps = rule.steps.map((step) => read(step.from));
      expect(rule.worse === 'more' ? steps : [...steps].reverse(), id).toEqual([...steps].sort((a, b) => a - b));
      for (const [index, step] of steps.entries()) {
        const [under, at, over] = examples.slice(index * 3, index * 3 + 3).map((one) => read(one.given));
        expect(at, id).toBe(step);
        expect(under, id).toBeLessThan(step);
        expect(over, id).toBeGreaterThan(step);
      }
    }
  });

  it('impose limits whose figures can be read, or that a consequence gives', () => {
    for (const { id, ...criterion } of criteria) {
      for (const limit of judgements({ id, ...criterion }).flatMap((one) => one.limits ?? [])) {
        if (limit.value === undefined) continue;
        if ('from' in limit.value) expect(['stack.least-work-thickness', 'capacity.largest-bar', 'class.rate', 'class.working-rate'], id).toContain(limit.value.from);
        else {
          const dimension = LIMIT_DIMENSIONS[limit.kind];
          expect(dimension, `${id}: ${limit.kind}`).toBeDefined();
          if (dimension !== undefined) expect(readQuantity(limit.value.fixed, { dimension, field: id }).ok, `${id}: ${limit.value.fixed}`).toBe(true);
        }
      }
    }
  });

  it('hold a limit for each finding that is limited, except where the cure is the only answer', () => {
    const bare = criteria.filter((criterion) => judgements(criterion).some((one) => one.grade === 'limited' && (one.limits ?? []).length === 0));
    expect(bare.map((criterion) => criterion.id)).toEqual([]);
    for (const criterion of criteria) {
      for (const limit of judgements(criterion).flatMap((one) => one.limits ?? [])) {
        expect(limit.sentence.includes('{value}'), `${criterion.id}: ${limit.sentence}`).toBe(limit.value !== undefined);
      }
    }
  });

  it('stand the hammer down for everything on the red list, and a careful person settles the gates within the hour', () => {
    for (const [danger, id] of RED_LIST) {
      const criterion = byId.get(id);
      expect(criterion?.gate, danger).toBe(true);
      expect(criterion === undefined ? [] : judgements(criterion).map((one) => one.grade), danger).toContain('stand-down');
    }
    expect(criteria.filter((criterion) => criterion.gate).map((criterion) => criterion.id).sort()).toEqual(RED_LIST.map(([, id]) => id).sort());
    for (const family of LINKAGE_FAMILIES) {
      const gates = criteria.filter((criterion) => criterion.gate && criterion.families.includes(family));
      expect(gates.length).toBeGreaterThanOrEqual(12);
      expect(gates.length).toBeLessThanOrEqual(16);
      const minutes = gates.reduce((sum, criterion) => sum + criterion.minutes, 0);
      console.log(`${family}: ${gates.length} gates, ${minutes} min`);
      expect(minutes).toBeLessThan(60);
    }
  });

  it('show both sides where the trade does not agree', () => {
    const disputed = criteria.filter((criterion) => criterion.dispute !== undefined).map((criterion) => criterion.id);
    for (const id of ['clutch.state', 'dies.upper-hardness', 'frame.crack', 'guide.play-side', 'drive.rate', 'sow-block.fitted', 'idler.drag', 'oil-ways.open', 'foundation.kind']) expect(disputed).toContain(id);
  });

  it('put the numbers of good practice where they belong', () => {
    const steps = (id: string) => { const rule = byId.get(id)?.rule; return rule?.kind === 'measured' ? rule.steps.map((step) => `${step.grade} ${step.from}`) : []; };
    expect(steps('clutch.play-much')).toEqual(['watch 16 thou', 'limited 31 thou']);
    expect(steps('clutch.play-little')).toEqual(['watch 9 thou', 'limited 4 thou']);
    expect(steps('journals.clearance').at(-1)).toBe('limited 0.004');
    expect(steps('stack.loss').at(-1)).toBe('limited 1 in');
    expect(steps('stack.linkage-clearance').at(-1)).toBe('limited 3/8 in');
    expect(byId.get('stack.linkage-clearance')?.rule).toMatchObject({ steps: [{}, { limits: [{ kind: 'least-work-thickness', value: { from: 'stack.least-work-thickness' } }] }] });
  });
});

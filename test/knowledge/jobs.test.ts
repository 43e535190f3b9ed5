import { describe, expect, it } from 'vitest';
import { PARTS, partOf } from '../../src/hammer/index.ts';
import { RAM_CLASSES, knowledge, type Span } from '../../src/knowledge/index.ts';

const { jobs, stages } = knowledge;
const byId = new Map(jobs.map((job) => [job.id, job]));
const sources = new Set(knowledge.sources.map((source) => source.id));
const cautions = new Set(knowledge.cautions.map((caution) => caution.id));

const inOrder = (span: Span): boolean => span.least >= 0 && span.least <= span.likely && span.likely <= span.most;

/** The first cycle found by walking the waits in depth, or nothing. */
function cycle(): readonly string[] {
  const done = new Set<string>();
  const walk = (id: string, path: readonly string[]): readonly string[] => {
    if (path.includes(id)) return [...path.slice(path.indexOf(id)), id];
    if (done.has(id)) return [];
    for (const before of byId.get(id)?.after ?? []) {
      const found = walk(before.job, [...path, id]);
      if (found.length > 0) return found;
    }
    done.add(id);
    return [];
  };
  for (const { id } of jobs) { const found = walk(id, []); if (found.length > 0) return found; }
  return [];
}

describe('jobs', () => {
  it('are at least forty-five, each with an id of its own and a part that exists', () => {
    expect(jobs.length).toBeGreaterThanOrEqual(45);
    expect(byId.size).toBe(jobs.length);
    for (const job of jobs) {
      const part = partOf(job.part);
      expect(part, job.id).toBeDefined();
      expect(job.families.filter((family) => !part?.families.includes(family)), job.id).toEqual([]);
      expect(job.words, job.id).toMatch(/^[A-Z].{20,}\.$/);
    }
  });

  it('wait only for jobs that exist, with a reason, and never for one of a later stage', () => {
    for (const job of jobs) {
      for (const before of job.after) {
        const other = byId.get(before.job);
        expect(other, `${job.id} waits for ${before.job}`).toBeDefined();
        expect(other?.stage, `${job.id} waits for ${before.job}`).toBeLessThanOrEqual(job.stage);
        expect(before.because.length, job.id).toBeGreaterThan(10);
      }
    }
    expect(cycle()).toEqual([]);
  });

  it('replace only jobs that exist, on parts that exist, and never in a ring', () => {
    const ids = new Set(jobs.map((job) => job.id));
    const known = new Set(PARTS.map((part) => part.id));
    const replaced = new Map(jobs.map((job) => [job.id, (job.replaces ?? []).map((one) => one.job)]));
    for (const job of jobs) for (const one of job.replaces ?? []) {
      expect(ids.has(one.job), `${job.id} replaces ${one.job}`).toBe(true);
      for (const part of one.on) expect(known.has(part), `${job.id}: ${part}`).toBe(true);
      expect(replaced.get(one.job)).not.toContain(job.id);
    }
  });

  it('have a stage of the datum chain, sixteen after the one that makes it safe, each with its reason', () => {
    expect(stages.map((stage) => stage.number)).toEqual(Array.from({ length: 17 }, (_, index) => index));
    for (const stage of stages) expect(sources.has(stage.source), stage.title).toBe(true);
    for (const stage of stages) expect(jobs.some((job) => job.stage === stage.number), `stage ${stage.number}`).toBe(true);
    for (const job of jobs) expect(job.stage, job.id).toBeLessThanOrEqual(16);
  });

  it('cost and last within ranges that are in order, from sources that exist', () => {
    for (const job of jobs) {
      expect(inOrder(job.hours), job.id).toBe(true);
      expect(job.hours.least, job.id).toBeGreaterThan(0);
      expect(sources.has(job.source), job.id).toBe(true);
      for (const part of job.parts) expect(inOrder(part.priceEach) && part.quantity > 0 && sources.has(part.source) && (part.leadDays === undefined || inOrder(part.leadDays)), `${job.id}: ${part.id}`).toBe(true);
      if (job.outside !== undefined) expect(inOrder(job.outside.price) && sources.has(job.outside.source), job.id).toBe(true);
    }
  });

  it('price one part alike wherever it is used', () => {
    const prices = new Map<string, string>();
    for (const part of jobs.flatMap((job) => job.parts)) {
      const price = `${part.words} ${JSON.stringify(part.priceEach)}`;
      expect(prices.get(part.id) ?? price, part.id).toBe(price);
      prices.set(part.id, price);
    }
  });

  it('keep their cautions beside them, and every caution is used', () => {
    const used = new Set([...jobs.flatMap((job) => job.cautions), ...knowledge.criteria.flatMap((criterion) => criterion.cautions)]);
    for (const job of jobs) expect(job.cautions.filter((id) => !cautions.has(id)), job.id).toEqual([]);
    expect([...cautions].filter((id) => !used.has(id))).toEqual([]);
    for (const caution of knowledge.cautions) expect(sources.has(caution.source), caution.id).toBe(true);
    for (const id of ['bearings.pour', 'clutch-pulley.bush', 'shipper.pour-saddle']) expect(byId.get(id)?.cautions).toEqual(expect.arrayContaining(['molten-metal', 'babbitt-lead']));
    for (const job of jobs.filter((one) => one.part === 'coil-spring' && one.stage === 10)) expect(job.cautions).toContain('spring-unload');
  });

  it('obey the three rules that are never broken', () => {
    const waits = (id: string) => (byId.get(id)?.after ?? []).map((before) => before.job);
    expect(waits('rod.set-gap')).toEqual(expect.arrayContaining(['spring.renew', 'drive.set-speed', 'seat.fit-filler-plate', 'dies.new-upper', 'dies.new-lower']));
    expect(waits('guide.shim')).toEqual(expect.arrayContaining(['ways.polish', 'ram.build-up']));
    expect(waits('clutch.reline')).toEqual(expect.arrayContaining(['clutch-pulley.bush', 'shaft.set-end-float']));
    expect(waits('dies.new-lower')).toEqual(expect.arrayContaining(['seat.fit-filler-plate', 'rod.make-room']));
    expect(waits('bearings.pour')).toEqual(expect.arrayContaining(['base.level', 'frame.stitch', 'shaft.turn-true']));
    expect(waits('brake.fit')).toContain('clutch.adjust');
  });

  it('are all cures of something, or named as what may be chosen besides', () => {
    const cures = new Set(knowledge.criteria.flatMap((criterion) => criterion.cures));
    const besides = jobs.map((job) => job.id).filter((id) => !cures.has(id)).sort();
    // Room for a higher stack is asked for by the jobs that raise it, and not by a finding.
    expect(besides).toEqual(['bow.renew-spring', 'rod.make-room', 'trial.run']);
  });
});

describe('ram classes', () => {
  it('grow in weight, power and bar, and fall in rate', () => {
    for (const [index, one] of RAM_CLASSES.entries()) {
      const next = RAM_CLASSES[index + 1];
      if (next === undefined) continue;
      expect(next.ramPounds).toBeGreaterThan(one.ramPounds);
      expect(next.bpm[1]).toBeLessThan(one.bpm[1]);
      expect(next.motorHorsepower[1]).toBeGreaterThan(one.motorHorsepower[1]);
      expect(next.machinePounds[0]).toBeGreaterThan(one.machinePounds[1]);
      expect(sources.has(one.source)).toBe(true);
    }
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { criticalPath, inOrder, type Step, type Task } from '../../../src/methods/ordering/index.ts';

/** Steps that wait only for steps of a hidden order, then shuffled: always possible. */
const possible: fc.Arbitrary<readonly Step[]> = fc
  .integer({ min: 1, max: 14 })
  .chain((count) => fc.tuple(fc.array(fc.array(fc.nat({ max: 30 }), { maxLength: 4 }), { minLength: count, maxLength: count }), fc.array(fc.integer({ min: 0, max: 3 }), { minLength: count, maxLength: count })))
  .map(([waits, ranks]) => waits.map((before, i): Step => ({ id: `s${i}`, rank: ranks[i]!, after: i === 0 ? [] : [...new Set(before.map((one) => `s${one % i}`))] })))
  .chain((steps) => fc.shuffledSubarray([...steps], { minLength: steps.length }));

const orderOf = (steps: readonly Step[]): readonly string[] => {
  const outcome = inOrder(steps);
  if (outcome.state !== 'ordered') throw new Error(`a cycle: ${outcome.cycle.join(', ')}`);
  return outcome.order;
};

describe('precedence', () => {
  test('every step comes once, after all that it waits for', () => {
    fc.assert(fc.property(possible, (steps) => {
      const order = orderOf(steps);
      expect([...order].sort()).toEqual(steps.map((step) => step.id).sort());
      for (const step of steps) for (const before of step.after) expect(order.indexOf(before)).toBeLessThan(order.indexOf(step.id));
    }), { numRuns: 500, seed: 21 });
  });

  test('wherever there is a choice the lowest rank goes first, then the one listed first', () => {
    fc.assert(fc.property(possible, (steps) => {
      const order = orderOf(steps);
      const place = (id: string): number => steps.findIndex((step) => step.id === id);
      order.forEach((id, i) => {
        const done = new Set(order.slice(0, i));
        const ready = steps.filter((step) => !done.has(step.id) && step.after.every((before) => done.has(before)));
        const best = ready.reduce((a, b) => (b.rank < a.rank || (b.rank === a.rank && place(b.id) < place(a.id)) ? b : a));
        expect(id).toBe(best.id);
      });
    }), { numRuns: 300, seed: 22 });
  });

  test('a cycle is named, in the order in which its steps wait for each other', () => {
    fc.assert(fc.property(possible, fc.integer({ min: 1, max: 5 }), fc.nat(), (steps, length, salt) => {
      // A ring of its own, with one of the possible steps waiting for it: that step is no part of the cycle.
      const ring: Step[] = Array.from({ length }, (_, i) => ({ id: `r${i}`, rank: 0, after: [`r${(i + length - 1) % length}`] }));
      const hung = steps.map((step, i) => (i === salt % steps.length ? { ...step, after: [...step.after, 'r0'] } : step));
      const outcome = inOrder([...hung, ...ring]);
      if (outcome.state !== 'cycle') throw new Error('the ring was ordered');
      expect([...outcome.cycle].sort()).toEqual(ring.map((step) => step.id).sort());
      const all = new Map([...hung, ...ring].map((step) => [step.id, step]));
      outcome.cycle.forEach((id, i) => expect(all.get(id)!.after).toContain(outcome.cycle[(i + length - 1) % length]));
    }), { numRuns: 200, seed: 23 });
  });

  test('a step that waits for an unknown one, or two of one name, are mistakes of the caller', () => {
    expect(() => inOrder([{ id: 'a', rank: 0, after: ['b'] }])).toThrow('b');
    expect(() => inOrder([{ id: 'a', rank: 0, after: [] }, { id: 'a', rank: 0, after: [] }])).toThrow('a, a');
    expect(inOrder([])).toEqual({ state: 'ordered', order: [] });
  });
});

describe('critical path', () => {
  const tasks = fc.tuple(possible, fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 14, maxLength: 14 })).map(([steps, durations]) => steps.map((step, i): Task => ({ id: step.id, after: step.after, duration: durations[i]! })));
  const scheduleOf = (list: readonly Task[]) => {
    const outcome = criticalPath(list);
    if (outcome.state !== 'scheduled') throw new Error('a cycle');
    return outcome;
  };

  test('it is a chain without slack whose durations make up the whole', () => {
    fc.assert(fc.property(tasks, (list) => {
      const { length, critical, tasks: scheduled } = scheduleOf(list);
      const byId = new Map(list.map((one) => [one.id, one]));
      expect(critical.reduce((sum, id) => sum + byId.get(id)!.duration, 0)).toBe(length);
      critical.slice(1).forEach((id, i) => expect(byId.get(id)!.after).toContain(critical[i]));
      for (const id of critical) expect(scheduled.find((one) => one.id === id)!.slack).toBe(0);
    }), { numRuns: 300, seed: 24 });
  });

  test('a task may be late by its slack and no more', () => {
    fc.assert(fc.property(tasks, fc.nat(), (list, salt) => {
      const before = scheduleOf(list);
      const chosen = list[salt % list.length]!;
      const { slack } = before.tasks.find((one) => one.id === chosen.id)!;
      const late = (by: number): number => scheduleOf(list.map((one) => (one.id === chosen.id ? { ...one, duration: one.duration + by } : one))).length;
      expect(late(slack)).toBe(before.length);
      expect(late(slack + 1)).toBe(before.length + 1);
    }), { numRuns: 300, seed: 25 });
  });

  test('tasks that wait for each other have no schedule', () => {
    expect(criticalPath([{ id: 'a', duration: 1, after: ['b'] }, { id: 'b', duration: 1, after: ['a'] }]).state).toBe('cycle');
    expect(() => criticalPath([{ id: 'a', duration: -1, after: [] }])).toThrow('-1');
  });
});

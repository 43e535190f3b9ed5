import type { Knowledge } from '../knowledge/index.ts';
import { readQuantity } from '../methods/quantity/index.ts';
import type { Known } from './survey/index.ts';
import { usualOfClass } from './usual-of-class.ts';
import type { Value } from './value.ts';

/**
 * Values that no reading gives: figures of practice from knowledge, and what is usual for the ram class.
 * Each stands as `assumed`, so that everything worked out from it looks like an estimate.
 */
export function assumedValues(known: Known, knowledge: Knowledge): readonly Value[] {
  const practice = knowledge.practice.map((one): Value => {
    const reading = readQuantity(one.text, { dimension: one.dimension, field: one.id });
    if (!reading.ok) throw new Error(`knowledge: ${one.id} cannot be read: ${reading.problem.message}: ${one.text}`);
    return {
      key: one.id, title: one.title, outcome: { state: 'known', quantity: reading.quantity }, standing: 'assumed', rests: 'assumed',
      from: [], sources: [one.source], evidence: [], asWritten: one.text, words: one.note,
    };
  });
  const usual = usualOfClass(known.identity.ramClass.quantity.value).map((one): Value => ({
    key: one.key, title: one.title, outcome: { state: 'known', quantity: one.quantity }, standing: 'assumed', rests: 'assumed',
    from: [], sources: [one.source], evidence: [], words: 'usual for the ram class; not read on this hammer',
  }));
  return [...practice, ...usual];
}

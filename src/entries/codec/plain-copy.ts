import { problemOf, type Problem } from '../problem.ts';

const DEEPEST = 16;
const MOST_NODES = 20_000;
const FORBIDDEN_KEYS: readonly string[] = ['__proto__', 'constructor', 'prototype'];

/**
 * Copies plain data and freezes the copy, so that an entry can never be written after it came in.
 * @param value whatever was handed in
 * @param problems receives one problem for each place that is not plain data
 * @returns the frozen copy; parts with problems are left out
 */
export function plainCopy(value: unknown, problems: Problem[]): unknown {
  let nodes = 0;
  const copied = (part: unknown, field: string, depth: number): unknown => {
    nodes += 1;
    if (nodes > MOST_NODES) {
      if (nodes === MOST_NODES + 1) problems.push(problemOf(field, part, 'the entry holds too much', `at most ${MOST_NODES} values in one entry`));
      return undefined;
    }
    if (part === null || typeof part === 'string' || typeof part === 'boolean') return part;
    if (typeof part === 'number' && Number.isFinite(part)) return part;
    if (typeof part !== 'object') {
      problems.push(problemOf(field, part, `${field || 'the entry'} is no plain value`, 'text, finite number, true, false, list or record'));
      return undefined;
    }
    if (depth > DEEPEST) {
      problems.push(problemOf(field, part, `${field} lies too deep`, `at most ${DEEPEST} levels`));
      return undefined;
    }
    if (Array.isArray(part)) return Object.freeze(part.map((each, index) => copied(each, `${field}[${index}]`, depth + 1)));
    return copiedRecord(part as Readonly<Record<string, unknown>>, field, depth);
  };
  const copiedRecord = (record: Readonly<Record<string, unknown>>, field: string, depth: number): unknown => {
    const out: Record<string, unknown> = {};
    for (const key of Object.keys(record)) {
      const inner = field === '' ? key : `${field}.${key}`;
      if (FORBIDDEN_KEYS.includes(key)) problems.push(problemOf(inner, key, 'a field has a name that is not allowed', `any name but ${FORBIDDEN_KEYS.join(', ')}`));
      else if (record[key] !== undefined) out[key] = copied(record[key], inner, depth + 1);
    }
    return Object.freeze(out);
  };
  return copied(value, '', 0);
}

import type { TurnedLimit } from './criterion.ts';

/** Nobody fits a guard that is on: where it was seen fitted, what is asked is that it stays, and that nobody stands before it. */
export const TURNED_LIMITS: readonly TurnedLimit[] = [
  { from: 'guard-first', where: { look: 'guards.front', answers: ['fitted'] }, to: { kind: 'guard-kept', sentence: 'Keep the guard on; nobody stands in front of it while it runs.' } },
];

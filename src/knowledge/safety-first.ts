import type { LimitKind } from './criterion.ts';

/**
 * Criteria whose cure stands before every other use of money: that it can be cut off and stays off, that no live part is
 * open, and that guards are on. Nothing runs before it stands guarded, the trial included; common practice, no source. A
 * brake is not among them: without one nothing loose goes under the die, which is a limit, and a brake set before the
 * clutch is right hides a clutch that drags.
 */
export const SAFETY_FIRST: readonly string[] = ['starter.isolation', 'starter.live-parts', 'starter.no-volt', 'guards.front', 'guards.belt', 'guards.scale', 'treadle.guard'];

/** The stage whose jobs make it safe to work on: no hand goes near before them, not for the guards either. */
export const SAFE_TO_WORK_ON = 0;

/** Limits that let nothing turn before their cure: it comes with the matters of safety, whatever the money. */
export const BEFORE_ANY_RUN: readonly LimitKind[] = ['guard-first', 'oil-way-first'];

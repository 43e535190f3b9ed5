/**
 * Criteria whose cure stands before every other use of money: that it can be cut off and stays off, that no live part is
 * open, and that guards are on. Nothing runs before it stands guarded, the trial included; common practice, no source. A
 * brake is not among them: without one nothing loose goes under the die, which is a limit, and a brake set before the
 * clutch is right hides a clutch that drags.
 */
export const SAFETY_FIRST: readonly string[] = ['starter.isolation', 'starter.live-parts', 'starter.no-volt', 'guards.front', 'guards.belt', 'guards.scale', 'treadle.guard'];

/** Those of them without which no hand goes near: before the guards too. */
export const SAFE_TO_TOUCH: readonly string[] = ['starter.isolation', 'starter.live-parts'];

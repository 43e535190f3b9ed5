// SI sizes of the units in which handbook tables of machine elements are printed, so that each table can stand as its source prints it.

/** Inch, m, exact. */
export const INCH = 0.0254;
/** Foot per minute, m/s, exact. */
export const FOOT_PER_MINUTE = 0.3048 / 60;
/** Pound-force, N: 0.45359237 kg under standard gravity, exact. */
export const POUND_FORCE = 0.45359237 * 9.80665;
/** A thousand pounds-force on a square inch, Pa. */
export const KSI = (1000 * POUND_FORCE) / INCH ** 2;
/** Mechanical horsepower, W: 550 foot-pounds-force in a second. */
export const HORSEPOWER = 550 * 0.3048 * POUND_FORCE;
/** Millionth of a metre. */
export const MICROMETRE = 1e-6;

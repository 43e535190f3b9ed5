/**
 * Force along the line of two toggle arms over the force that presses their common pin across it, no unit: 1/(tan α + tan β).
 * With equal arms 1/(2 tan α). Half of the cross force goes to each arm; a formula of 1/tan α, printed in places, forgets the other arm.
 * @param lean α: angle of an arm against the line through its outer pins, rad, above 0 and below π/2
 * @param otherLean β of the other arm; the same unless said
 */
export const toggleRatio = (lean: number, otherLean = lean): number => {
  for (const angle of [lean, otherLean]) {
    if (!(angle > 0 && angle < Math.PI / 2)) throw new RangeError(`The lean of a toggle arm is outside its range; above 0 and below a quarter turn is allowed: ${angle} rad`);
  }
  return 1 / (Math.tan(lean) + Math.tan(otherLean));
};

/**
 * The same by lengths, as a rule reads it: span/(4 rise) with equal arms, where a handbook measures half the span as a and writes F a/(2 h).
 * @param halfSpan along the line from an outer pin to the middle, m, > 0
 * @param rise of the middle pin off the line, m, > 0
 */
export const toggleRatioByLengths = (halfSpan: number, rise: number): number => toggleRatio(Math.atan2(rise, halfSpan));

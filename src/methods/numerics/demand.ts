/**
 * The value back, if it is a positive number. A method asked with anything else was asked by mistake.
 * @param what what the value is, as it should stand in the sentence
 */
export const demandPositive = (what: string, value: number): number => {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${what} is outside its range; above 0 is allowed: ${value}`);
  return value;
};

/**
 * The value back, if it lies between two bounds, both included.
 * @param what what the value is, as it should stand in the sentence
 */
export const demandBetween = (what: string, value: number, least: number, most: number): number => {
  if (!(value >= least && value <= most)) throw new RangeError(`${what} is outside its range; ${least} to ${most} is allowed: ${value}`);
  return value;
};

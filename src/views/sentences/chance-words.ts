/** Chances that people say, as numerator and denominator. */
const SAID: readonly (readonly [of: number, among: number])[] = [[1, 20], [1, 10], [1, 6], [1, 4], [1, 3], [2, 5], [1, 2], [3, 5], [2, 3], [3, 4], [5, 6], [9, 10], [19, 20]];

/** A chance as people say it: `about 1 in 3`. @param chance 0 to 1 */
export function chanceWords(chance: number): string {
  const nearest = SAID.reduce((best, one) => (Math.abs(one[0] / one[1] - chance) < Math.abs(best[0] / best[1] - chance) ? one : best));
  return `about ${nearest[0]} in ${nearest[1]}`;
}

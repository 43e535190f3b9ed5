/**
 * The Dormand-Prince pair of orders five and four, seven stages, first same as last.
 *
 * J. R. Dormand and P. J. Prince, "A family of embedded Runge-Kutta formulae", Journal of Computational and
 * Applied Mathematics 6 (1980) 19-26; the interpolant of fourth order after E. Hairer, S. P. Norsett and
 * G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), section II.6. Values from memory; the
 * order conditions in the tests hold them to ten units in the last place.
 */

/** Where in the step each stage stands, as a fraction of it. */
export const NODES: readonly number[] = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1];

/** Row s: the weights of the earlier slopes that lead to stage s. The last row is the solution of fifth order. */
export const STAGES: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];

/** The solution of fifth order, which is carried on. */
export const FIFTH: readonly number[] = [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84, 0];

/** The solution of fourth order, used only to judge the step. */
export const FOURTH: readonly number[] = [
  5179 / 57600, 0, 7571 / 16695, 393 / 640, -92097 / 339200, 187 / 2100, 1 / 40,
];

/** Fifth less fourth: the estimate of the error in one step, in slopes. */
export const ERROR: readonly number[] = [
  71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40,
];

/** The last coefficient of the interpolant. */
export const DENSE: readonly number[] = [
  -12715105075 / 11282082432, 0, 87487479700 / 32700410799, -10690763975 / 1880347072,
  701980252875 / 199316789632, -1453857185 / 822651844, 69997945 / 29380423,
];

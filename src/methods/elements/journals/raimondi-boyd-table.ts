/** One column of the table: rows by eccentricity, 0.1 0.2 0.4 0.6 0.8 0.9 0.97. */
export interface BearingColumn {
  readonly sommerfeld: readonly number[];
  /** Attitude angle, degrees as printed. */
  readonly attitudeDegrees: readonly number[];
  readonly friction: readonly number[];
  readonly flow: readonly number[];
  readonly sideFlow: readonly number[];
  readonly pressureRatio: readonly number[];
}

/** Eccentricity ε of the rows; the least film is 1 - ε of the radial clearance. */
export const ECCENTRICITIES: readonly number[] = [0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97];

/**
 * A. A. Raimondi and J. Boyd, A solution for the finite journal bearing, ASLE Trans. 1, 1958, 159: full bearing, film broken where
 * the pressure would fall below that of the room. From memory; held against a solution of Reynolds' equation of our own.
 */
export const RAIMONDI_BOYD: Readonly<Record<'endless' | 'one' | 'half' | 'quarter', BearingColumn>> = {
  endless: {
    sommerfeld: [0.24, 0.123, 0.0626, 0.0389, 0.021, 0.0115],
    attitudeDegrees: [69.1, 67.26, 61.94, 54.31, 42.22, 31.62],
    friction: [4.8, 2.57, 1.52, 1.2, 0.961, 0.756],
    flow: [3.03, 2.83, 2.26, 1.56, 0.76, 0.411],
    sideFlow: [0, 0, 0, 0, 0, 0],
    pressureRatio: [0.826, 0.814, 0.764, 0.667, 0.495, 0.358],
  },
  one: {
    sommerfeld: [1.33, 0.631, 0.264, 0.121, 0.0446, 0.0188, 0.00474],
    attitudeDegrees: [79.5, 74.02, 63.1, 50.58, 36.24, 26.45, 15.47],
    friction: [26.4, 12.8, 5.79, 3.22, 1.7, 1.05, 0.514],
    flow: [3.37, 3.59, 3.99, 4.33, 4.62, 4.74, 4.82],
    sideFlow: [0.15, 0.28, 0.497, 0.68, 0.842, 0.919, 0.973],
    pressureRatio: [0.54, 0.529, 0.484, 0.415, 0.313, 0.247, 0.152],
  },
  half: {
    sommerfeld: [4.31, 2.03, 0.779, 0.319, 0.0923, 0.0313, 0.00609],
    attitudeDegrees: [81.62, 74.94, 61.45, 48.14, 33.31, 23.66, 13.75],
    friction: [85.6, 40.9, 17, 8.1, 3.26, 1.6, 0.61],
    flow: [3.43, 3.72, 4.29, 4.85, 5.41, 5.69, 5.88],
    sideFlow: [0.173, 0.318, 0.552, 0.73, 0.874, 0.939, 0.98],
    pressureRatio: [0.523, 0.506, 0.441, 0.365, 0.267, 0.206, 0.126],
  },
  quarter: {
    sommerfeld: [16.2, 7.57, 2.83, 1.07, 0.261, 0.0736, 0.0101],
    attitudeDegrees: [82.31, 75.18, 60.86, 46.72, 31.04, 21.85, 12.22],
    friction: [322, 153, 61.1, 26.7, 8.8, 3.5, 0.922],
    flow: [3.45, 3.76, 4.37, 4.99, 5.6, 5.91, 6.12],
    sideFlow: [0.18, 0.33, 0.567, 0.746, 0.884, 0.945, 0.984],
    pressureRatio: [0.515, 0.489, 0.415, 0.334, 0.24, 0.18, 0.108],
  },
};

/** A straight line y = intercept + slope (x - middle), with `middle` the mean of x. */
export interface StraightLine {
  readonly middle: number;
  readonly intercept: number;
  readonly slope: number;
  /** Sum of the squared distances of x from its middle; the slope's variance is the variance of y over this. */
  readonly spreadOfX: number;
}

/** The line of least squares, or undefined when no two x differ. */
export function straightLine(x: ArrayLike<number>, y: ArrayLike<number>): StraightLine | undefined {
  const n = x.length;
  let [middle, intercept] = [0, 0];
  for (let i = 0; i < n; i++) {
    middle += x[i]! / n;
    intercept += y[i]! / n;
  }
  let [xx, xy] = [0, 0];
  for (let i = 0; i < n; i++) {
    xx += (x[i]! - middle) ** 2;
    xy += (x[i]! - middle) * (y[i]! - intercept);
  }
  return xx > 0 ? { middle, intercept, slope: xy / xx, spreadOfX: xx } : undefined;
}

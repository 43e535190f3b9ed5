/** A logistic model: chance = 1 / (1 + exp(-(constant + sum of coefficient times feature))). */
export interface LogisticModel {
  readonly constant: number;
  readonly coefficients: readonly number[];
}

/**
 * Fits a logistic model by Newton's steps, the features brought to spread one and held back by a ridge (D. R. Cox, J. R.
 * Stat. Soc. B 20 (1958) 215; ridge: le Cessie and van Houwelingen, Appl. Stat. 41 (1992) 191; from memory).
 * @param rows features, one row a case
 * @param truths whether the case is one, by row
 * @param ridge of the mean log likelihood, 0 or more
 */
export function fitLogistic(rows: readonly (readonly number[])[], truths: readonly boolean[], ridge: number): LogisticModel {
  const count = rows.length;
  const width = rows[0]!.length;
  const middle = Array.from({ length: width }, (_, j) => rows.reduce((sum, row) => sum + row[j]!, 0) / count);
  const spread = middle.map((m, j) => Math.sqrt(rows.reduce((sum, row) => sum + (row[j]! - m) ** 2, 0) / count) || 1);
  const standard = rows.map((row) => [...row.map((x, j) => (x - middle[j]!) / spread[j]!), 1]);
  let weights: number[] = Array.from({ length: width + 1 }, () => 0);
  for (let round = 0; round < 40; round++) {
    const slope = weights.map((w, j) => (j < width ? ridge * w : 0));
    const bend = weights.map((_, i) => weights.map((_w, j) => (i === j ? (i < width ? ridge : 0) + 1e-9 : 0)));
    standard.forEach((row, n) => {
      const chance = 1 / (1 + Math.exp(-row.reduce((sum, x, j) => sum + x * weights[j]!, 0)));
      const off = (chance - (truths[n] ? 1 : 0)) / count;
      const steep = (chance * (1 - chance)) / count;
      row.forEach((x, i) => {
        slope[i] = slope[i]! + off * x;
        row.forEach((y, j) => (bend[i]![j] = bend[i]![j]! + steep * x * y));
      });
    });
    const step = solved(bend, slope);
    weights = weights.map((w, j) => w - step[j]!);
    if (Math.max(...step.map(Math.abs)) < 1e-9) break;
  }
  const coefficients = spread.map((s, j) => weights[j]! / s);
  return { constant: weights[width]! - coefficients.reduce((sum, c, j) => sum + c * middle[j]!, 0), coefficients };
}

function solved(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const n = rows.length;
  for (let a = 0; a < n; a++) {
    const best = rows.reduce((top, row, i) => (i >= a && Math.abs(row[a]!) > Math.abs(rows[top]![a]!) ? i : top), a);
    [rows[a], rows[best]] = [rows[best]!, rows[a]!];
    for (let b = 0; b < n; b++) {
      if (b === a) continue;
      const factor = rows[b]![a]! / rows[a]![a]!;
      for (let c = a; c <= n; c++) rows[b]![c] = rows[b]![c]! - factor * rows[a]![c]!;
    }
  }
  return rows.map((row, a) => row[n]! / row[a]!);
}

/**
 * Values of a statistic on samples drawn with replacement, as many as the sample has (Efron, Ann. Stat. 7 (1979) 1).
 * @param count size of the sample, 1 or more
 * @param rounds how often to draw, 1 or more
 * @param draw uniform in [0, 1), from a seeded generator
 * @param statistic is given the drawn indices (the same array each round); its undefined answers are left out
 * @returns the values, sorted
 */
export function bootstrap(count: number, rounds: number, draw: () => number, statistic: (indices: Uint32Array) => number | undefined): Float64Array {
  const indices = new Uint32Array(count);
  const values: number[] = [];
  for (let round = 0; round < rounds; round++) {
    drawAnew(indices, draw);
    const value = statistic(indices);
    if (value !== undefined && Number.isFinite(value)) values.push(value);
  }
  return Float64Array.from(values).sort();
}

function drawAnew(indices: Uint32Array, draw: () => number): void {
  const count = indices.length;
  for (let i = 0; i < count; i++) indices[i] = Math.min(count - 1, Math.floor(draw() * count));
}

/** Keeps wanted positions in order and at least `apart` from each other, within the bounds where they fit. */
export function spread(wanted: readonly number[], apart: number, least: number, most: number): readonly number[] {
  const placed: number[] = [];
  for (const want of wanted) placed.push(Math.max(want, (placed.at(-1) ?? -Infinity) + apart, least));
  const over = (placed.at(-1) ?? most) - most;
  if (over > 0) {
    let limit = most;
    for (let index = placed.length - 1; index >= 0; index -= 1) {
      placed[index] = Math.min(placed[index] ?? limit, limit);
      limit = (placed[index] ?? limit) - apart;
    }
  }
  return placed;
}

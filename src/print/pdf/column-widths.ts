const NARROW = 12;
const LEAST = 18;
const MOST = 110;

/**
 * Shares of the width that the columns of a table take: 0 lets a narrow column be as wide as its text,
 * the others share the rest by the usual length of their texts.
 * @param rows cells by row; every row as long as `columns`
 */
export function columnWidths(columns: readonly string[], rows: readonly (readonly string[])[]): readonly number[] {
  const shares = columns.map((title, index) => {
    const lengths = rows.map((row) => row[index]?.length ?? 0);
    const longest = Math.max(title.length, ...lengths);
    if (longest <= NARROW) return 0;
    const usual = lengths.reduce((sum, length) => sum + Math.min(length, MOST * 2), 0) / Math.max(1, lengths.length);
    return Math.min(MOST, Math.max(LEAST, (usual + Math.min(longest, MOST)) / 2));
  });
  return shares.every((share) => share === 0) ? shares.map(() => 1) : shares;
}

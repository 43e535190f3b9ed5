const NARROW = 12;
const LEAST = 18;
const MOST = 110;
/** Letters that go into a line over the whole width. */
const LINE = 95;

/**
 * Shares of the width that the columns of a table take: 0 lets a narrow column be as wide as its text,
 * the others share the rest by the usual length of their texts, and no word is wider than its column: it would print over the next.
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
  if (shares.every((share) => share === 0)) return shares.map(() => 1);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share, index) => (share === 0 ? 0 : Math.max(share, (total * longestWord([columns[index] ?? '', ...rows.map((row) => row[index] ?? '')])) / LINE)));
}

/** Letters of the longest word, with the room behind it. */
const longestWord = (texts: readonly string[]): number => 2 + Math.min(LINE / 4, Math.max(...texts.flatMap((text) => text.split(/\s+/u).map((word) => word.length))));

/** A heading with its items below it, or nothing where there are none. */
export const listUnder = (heading: string, items: readonly string[]): string => (items.length === 0 ? '' : `\n${heading}\n${items.map((item) => `  - ${item}`).join('\n')}\n`);

/** Columns set one under the other. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => [...(row[column] ?? '')].length)));
  return rows.map((row) => row.map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column] ?? 0))).join('  ').trimEnd()).join('\n');
}

/** The line that marks a hammer of an invented scenario. */
export const inventedLine = (invented: boolean | undefined): string => (invented === true ? 'An invented hammer.\n' : '');

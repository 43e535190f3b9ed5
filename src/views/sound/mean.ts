/** Mean of a row; 0 for an empty one. */
export const mean = (row: readonly number[]): number => (row.length === 0 ? 0 : row.reduce((sum, x) => sum + x, 0) / row.length);

import { expect } from 'vitest';

/**
 * How the row's figures are known.
 * - `read`: the figures were read in the document named.
 * - `transcribed`: read in an open transcription of the book's worked example; the book itself was not opened.
 * - `from memory`: not opened; the row says so wherever it is printed.
 * - `recomputed`: worked independently (closed form or another program), no printed figure stands behind it.
 */
export type RowStatus = 'transcribed' | 'read' | 'from memory' | 'recomputed';

/** How far the computed figure may lie from the printed one. A relative band is a share of the printed figure. */
export type Tolerance = { readonly absolute: number } | { readonly relative: number };

/** One published figure: what was put in, as printed, what came out, as printed, and how close we must come. */
export interface Row<Inputs> {
  /** Book, edition, page and example; or standard and clause. */
  readonly source: string;
  readonly status: RowStatus;
  /** What the figure is, with the unit in which it is printed. */
  readonly figure: string;
  readonly inputs: Inputs;
  readonly expected: number;
  /** Set from the printed digits before the run, see `digits`. */
  readonly tolerance: Tolerance;
}

/** A row together with what we computed for it. */
export interface RowResult<Inputs> {
  readonly row: Row<Inputs>;
  readonly actual: number;
  readonly error: number;
  readonly relativeError: number;
  readonly holds: boolean;
}

/**
 * Tolerance that the printed digits allow: half a unit of the last place printed.
 * @param printed the figure exactly as printed, for example `'41.203'`, `'2500'`, `'1.6e-3'`
 * @param units how many half units to allow; above 1 only where the source rounds on the way, and the row says why
 */
export const digits = (printed: string, units = 1): Tolerance => {
  const match = /^[+-]?\d*(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/.exec(printed.trim());
  if (!match || printed.trim() === '') throw new Error(`A printed figure must be a plain number: ${printed}`);
  const place = (match[2] === undefined ? 0 : Number(match[2])) - (match[1]?.length ?? 0);
  // A figure that lies exactly half way between two printed ones must not fail for its last binary digit.
  return { absolute: units * 0.5 * 10 ** place * (1 + 1e-9) };
};

/** Allowed distance from the printed figure, in the unit of the row. */
export const allowed = (expected: number, tolerance: Tolerance): number =>
  'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);

/** Compares one computed figure with its row. A figure that is not finite never holds, whatever the tolerance. */
export const compare = <Inputs>(row: Row<Inputs>, actual: number): RowResult<Inputs> => {
  const limit = allowed(row.expected, row.tolerance);
  if (!Number.isFinite(row.expected) || !Number.isFinite(limit) || limit < 0) {
    throw new Error(`Row "${row.figure}" needs a finite expected figure and tolerance: ${row.expected}, ${limit}`);
  }
  const error = Math.abs(actual - row.expected);
  const relativeError = row.expected === 0 ? error : error / Math.abs(row.expected);
  return { row, actual, error, relativeError, holds: Number.isFinite(actual) && error <= limit };
};

/** Sentence for one row, as it is printed when the row fails. */
export const describeRow = <Inputs>({ row, actual, error }: RowResult<Inputs>): string =>
  `${row.source} [${row.status}] ${row.figure}: published ${row.expected}, computed ${actual}, ` +
  `off by ${error.toPrecision(3)}, allowed ${allowed(row.expected, row.tolerance).toPrecision(3)}`;

/**
 * Runs every row of a claim, prints the worst relative error with its source, and fails naming each row that does not hold.
 * @param claim what the rows hold, in the words of the trade
 * @param rows at least one row
 * @param compute the figure for the row's inputs, in the unit of the row
 */
export const runRows = <Inputs>(
  claim: string,
  rows: readonly Row<Inputs>[],
  compute: (inputs: Inputs, row: Row<Inputs>) => number,
): readonly RowResult<Inputs>[] => {
  if (rows.length === 0) throw new Error(`Claim "${claim}" has no rows`);
  const results = rows.map((row) => compare(row, compute(row.inputs, row)));
  const size = (result: RowResult<Inputs>): number =>
    Number.isFinite(result.relativeError) ? result.relativeError : Number.POSITIVE_INFINITY;
  const worst = results.reduce((a, b) => (size(b) > size(a) ? b : a));
  console.log(
    `${claim}: ${rows.length} rows, worst relative error ${size(worst).toExponential(2)} ` +
      `(${worst.row.source} [${worst.row.status}], ${worst.row.figure}: published ${worst.row.expected}, computed ${Number(worst.actual.toPrecision(7))})`,
  );
  expect(results.filter((result) => !result.holds).map(describeRow)).toEqual([]);
  return results;
};

/**
 * Rows of one worked example, which share source and inputs; the tolerance of each is half a unit of its last printed place.
 * @param figures what the figure is, as printed, and where needed another tolerance with the reason beside it in the test
 */
export const rowsOf = <Inputs>(
  source: string,
  status: RowStatus,
  inputs: Inputs,
  figures: readonly (readonly [figure: string, printed: string, tolerance?: Tolerance])[],
): readonly Row<Inputs>[] =>
  figures.map(([figure, printed, tolerance]) => ({ source, status, figure, inputs, expected: Number(printed), tolerance: tolerance ?? digits(printed) }));

/** Finds the way to work a figure out by its name; a row without one is a mistake in the test. */
export const byFigure =
  <Inputs>(ways: Readonly<Record<string, (inputs: Inputs) => number>>) =>
  (inputs: Inputs, row: Row<Inputs>): number => {
    const way = ways[row.figure];
    if (!way) throw new Error(`No way to work out "${row.figure}"`);
    return way(inputs);
  };

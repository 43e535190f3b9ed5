/** Makes the spread of a normal distribution out of its median absolute deviation: 1 / 0.67449. */
export const NORMAL_CONSISTENCY = 1.482602218505602;

/** A sorted copy, smallest first. */
export const sorted = (values: ArrayLike<number>): Float64Array => new Float64Array(values).sort();

/** Every so many values of a row, from the first on. @param stride whole number, 1 or more */
export function thinned(row: Float32Array, stride: number): Float64Array {
  const out = new Float64Array(Math.ceil(row.length / stride));
  for (let i = 0; i < out.length; i++) out[i] = row[i * stride]!;
  return out;
}

/**
 * A quantile by linear interpolation between order statistics (type 7 of Hyndman and Fan, American Statistician 50
 * (1996) 361).
 * @param inOrder sorted values, at least one
 * @param share 0 to 1
 */
export function quantile(inOrder: ArrayLike<number>, share: number): number {
  const place = (inOrder.length - 1) * Math.min(1, Math.max(0, share));
  const below = Math.floor(place);
  const low = inOrder[below];
  if (low === undefined) throw new Error('A quantile of no values was asked for.');
  return low + (place - below) * ((inOrder[below + 1] ?? low) - low);
}

/** The middle value; of an even number, the mean of the middle two. At least one value. */
export function median(values: ArrayLike<number>): number {
  if (values.length === 0) throw new Error('A median of no values was asked for.');
  return middleOf(new Float64Array(values));
}

/** The same of a row that may be put into another order; only what decides the middle is sorted (Hoare, Comm. ACM 4 (1961) 321). @param count of the first values that are meant, 1 or more */
export function middleOf(row: Float64Array, count = row.length): number {
  const place = (count - 1) >> 1;
  const here = placed(row, count, place);
  return count % 2 === 1 ? here : here + 0.5 * (leastFrom(row, place + 1, count) - here);
}

/** The same quantile of a row that may be put into another order. At least one value. */
export function quantileOf(row: Float64Array, share: number): number {
  if (row.length === 0) throw new Error('A quantile of no values was asked for.');
  const place = (row.length - 1) * Math.min(1, Math.max(0, share));
  const below = Math.floor(place);
  const low = placed(row, row.length, below);
  return below === place ? low : low + (place - below) * (leastFrom(row, below + 1, row.length) - low);
}

/** The value that stands at a place when the first `count` are in order; none before it is greater, and none after it less. */
function placed(row: Float64Array, count: number, place: number): number {
  let low = 0;
  let high = count - 1;
  while (high > low) {
    const pivot = row[(low + high) >> 1]!;
    let i = low;
    let j = high;
    while (i <= j) {
      while (row[i]! < pivot) i++;
      while (row[j]! > pivot) j--;
      if (i > j) break;
      const held = row[i]!;
      row[i++] = row[j]!;
      row[j--] = held;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return row[place]!;
}

function leastFrom(row: Float64Array, from: number, count: number): number {
  let least = Infinity;
  for (let k = from; k < count; k++) if (row[k]! < least) least = row[k]!;
  return least;
}

/**
 * Spread of values about their median, as the standard deviation that a normal distribution with the same median
 * absolute deviation would have (Hampel, J. Am. Stat. Assoc. 69 (1974) 383). At least one value.
 * @param middle their median, where it is known
 */
export function robustSpread(values: ArrayLike<number>, middle = median(values)): number {
  const distances = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) distances[i] = Math.abs(values[i]! - middle);
  return NORMAL_CONSISTENCY * middleOf(distances);
}

/** Mean of what is left when a share of the values is cut off at each end. @param share 0 to below 0.5 */
export function trimmedMean(values: ArrayLike<number>, share: number): number {
  const inOrder = sorted(values);
  const cut = Math.floor(inOrder.length * share);
  let sum = 0;
  for (let i = cut; i < inOrder.length - cut; i++) sum += inOrder[i]!;
  return sum / (inOrder.length - 2 * cut);
}

/**
 * Median of the values around each place. @param reach how many on each side, 0 or more; the ends use what there is
 */
export function runningMedian(values: ArrayLike<number>, reach: number): Float64Array {
  const out = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const row: number[] = [];
    for (let j = Math.max(0, i - reach); j <= Math.min(values.length - 1, i + reach); j++) row.push(values[j]!);
    out[i] = middleOf(new Float64Array(row));
  }
  return out;
}

/**
 * Slope of a straight line through points, as the median of the slopes of all pairs (Sen, J. Am. Stat. Assoc. 63
 * (1968) 1379). Pairs are thinned evenly when there are more than 20,000.
 * @returns the slope, or undefined when no two x differ
 */
export function medianSlope(x: ArrayLike<number>, y: ArrayLike<number>): number | undefined {
  const slopes: number[] = [];
  const pairs = (x.length * (x.length - 1)) / 2;
  const stride = Math.max(1, Math.ceil(pairs / 20_000));
  let count = 0;
  for (let i = 0; i < x.length; i++)
    for (let j = i + 1; j < x.length; j++) if (count++ % stride === 0 && x[j]! !== x[i]!) slopes.push((y[j]! - y[i]!) / (x[j]! - x[i]!));
  return slopes.length === 0 ? undefined : median(slopes);
}

import { normalCdf, quantile } from '../../methods/chance/index.ts';
import type { Span } from '../../knowledge/index.ts';

const STEPS_PER_SIGMA = 16;
const SIGMAS = 4.5;
const LAST = 2 * SIGMAS * STEPS_PER_SIGMA;

/** Values from 0 (least) to 1 (most) at even normal scores, for one shape of three-point estimate. */
type Table = Float64Array;

/**
 * Draws three-point estimates (beta about the likely value, weight 4) from normal scores by tables, since the exact
 * quantile is slow and a worksheet wants a hundred thousand of them. Off by less than 0.0005 of the range.
 */
export class SpanTables {
  readonly #tables = new Map<number, Table>();

  /** The value of a span at a normal score. @param span least <= likely <= most */
  at(span: Span, score: number): number {
    const range = span.most - span.least;
    if (!(range > 0)) return span.likely;
    const table = this.#tableFor((span.likely - span.least) / range);
    const place = Math.min(LAST, Math.max(0, (score + SIGMAS) * STEPS_PER_SIGMA));
    const below = Math.min(LAST - 1, Math.floor(place));
    const low = table[below]!;
    return span.least + range * (low + (place - below) * (table[below + 1]! - low));
  }

  #tableFor(likely: number): Table {
    const held = this.#tables.get(likely);
    if (held !== undefined) return held;
    const table = Float64Array.from({ length: LAST + 1 }, (_, index) => quantile({ kind: 'pert', least: 0, likely, most: 1 }, normalCdf(index / STEPS_PER_SIGMA - SIGMAS)));
    this.#tables.set(likely, table);
    return table;
  }
}

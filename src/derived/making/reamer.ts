import type { MakingContext } from './making-context.ts';
import { shopNumber } from './shop-figures.ts';

const STEP_INCH = shopNumber('plate-room');
const STEP_METRIC = 0.5e-3;
/** Above this, reamers are kept in whole millimetres. */
const WHOLE_FROM = 0.02;
const CLEAN_UP_METRIC = 0.25e-3;

/** Smallest step of a reamer over a size, m. */
export const nextReamer = (size: number, context: MakingContext): number => {
  const step = context.system === 'inch' ? STEP_INCH : size > WHOLE_FROM ? 2 * STEP_METRIC : STEP_METRIC;
  return Math.ceil(size / step - 1e-6) * step;
};

/** Smallest reamer that cleans a worn hole up, m: a knocked hole is oval and bell-mouthed, and a reamer of its own size touches nothing. */
export const reamerOver = (hole: number, context: MakingContext): number => nextReamer(hole + (context.system === 'inch' ? shopNumber('clean-up') : CLEAN_UP_METRIC), context);

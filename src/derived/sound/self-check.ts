/** Numbers by which a beat is believed, and what they must reach; set on made-up recordings and on sounds without a beat. */
export interface SelfCheck {
  /** blows heard over strokes expected, 0 to 1 */
  readonly fill: number;
  /** what the chain gains against what the same events at random times would */
  readonly contrast: number;
  /** jitter over the period */
  readonly jitterShare: number;
  readonly strokes: number;
}

export const BELIEVED = { fill: 0.8, contrast: 3, jitterShare: 0.05, strokes: 6 };
/** Under these it is not even called a beat. */
export const HEARD = { fill: 0.62, contrast: 2, jitterShare: 0.065, strokes: 4 };

export const reaches = (check: SelfCheck, least: typeof BELIEVED): boolean =>
  check.fill >= least.fill && check.contrast >= least.contrast && check.jitterShare <= least.jitterShare && check.strokes >= least.strokes;

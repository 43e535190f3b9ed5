import type { Standing } from './gravity.ts';

/** How something stands, or why there is no figure. */
export type Stood = Standing | { readonly state: 'outside-validity'; readonly because: string };

/**
 * The least lean at which anything that is moved goes over, rad: the machine whole, and its body once the anvil is out of it,
 * which stands worse for want of that weight low down.
 * @returns undefined where any of the angles is not known
 */
export function leastLean(stood: readonly Stood[]): number | undefined {
  const angles = stood.flatMap((one) => ('gravityHeight' in one ? [one.sideways, one.forwards, one.backwards] : []));
  return angles.length < 3 * stood.length || angles.some((one) => one.state !== 'known') ? undefined : Math.min(...angles.map((one) => (one.state === 'known' ? one.low : Infinity)));
}

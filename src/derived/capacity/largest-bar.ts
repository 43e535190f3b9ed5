import { energyFor, type Stroke } from './strike.ts';
import type { StressAt } from './hot-stress.ts';

export type BarFound =
  /** side of the square, m */
  | { readonly state: 'known'; readonly size: number }
  | { readonly state: 'outside-validity'; readonly because: string };

/**
 * Side of the square bar from which one blow just takes a share of its thickness.
 * @param energy into the work, J @param share of the thickness, above 0 and below 1
 */
export function largestBar(stroke: Omit<Stroke, 'section'>, energy: number, share: number, stressAt: StressAt): BarFound {
  const strain = -Math.log1p(-share);
  // Energy grows about as the square of the side; a stress of 100 MPa starts the search.
  let size = Math.sqrt(energy / (stroke.bite * 1e8 * strain));
  for (let round = 0; round < 60; round++) {
    const wanted = energyFor({ ...stroke, section: { height: size, width: size } }, strain, stressAt);
    if (typeof wanted === 'string') return { state: 'outside-validity', because: wanted };
    const next = size * Math.sqrt(energy / wanted);
    const moved = Math.abs(next - size);
    // Where a law steps in or out just here the steps go to and fro: halve them, and either side of the step is as good.
    if (moved <= 1e-7 * size || (round >= 40 && moved <= 0.1 * size)) return { state: 'known', size: Math.sqrt(size * next) };
    size = round < 12 ? next : Math.sqrt(size * next);
  }
  return { state: 'outside-validity', because: `no square bar could be found for ${energy.toPrecision(3)} J and ${(100 * share).toPrecision(2)} % a blow` };
}

import { fitOf, type FitOutcome, type HoleCode, type ShaftCode } from '../../methods/elements/index.ts';

export interface RunningFit {
  readonly hole: HoleCode;
  readonly shaft: ShaftCode;
  readonly fit: Extract<FitOutcome, { state: 'known' }>;
}

/** Running fits on a basic hole, from close to loose (ISO 286). */
const CHOICES: readonly (readonly [HoleCode, ShaftCode])[] = [['H7', 'g6'], ['H7', 'f7'], ['H8', 'f7'], ['H8', 'f8'], ['H7', 'e8'], ['H8', 'e8'], ['H8', 'd8'], ['H9', 'd9']];

/**
 * The fit of ISO 286 whose clearances lie nearest to those that practice asks for: least sum of both differences.
 * @param size nominal diameter, m
 * @param least clearance wanted, m; @param most clearance wanted, m
 * @returns undefined where the table does not hold the size
 */
export function nearestFit(size: number, least: number, most: number): RunningFit | undefined {
  const fits = CHOICES.flatMap(([hole, shaft]) => {
    const fit = fitOf(size, hole, shaft);
    return fit.state === 'known' ? [{ hole, shaft, fit, off: Math.abs(fit.leastClearance - least) + Math.abs(fit.mostClearance - most) }] : [];
  });
  return fits.sort((a, b) => a.off - b.off)[0];
}

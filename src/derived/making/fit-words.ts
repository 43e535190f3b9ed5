import { formatQuantity } from '../../methods/quantity/index.ts';
import type { MakingContext } from './making-context.ts';
import type { RunningFit } from './running-fit.ts';

/** Least and most clearance of a fit, in words for the drawing. */
export function clearanceNote(fit: RunningFit, context: MakingContext): string {
  const print = (length: number) => formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, context.system === 'inch' ? { unit: 'in', resolution: 0.0254e-4 } : { unit: 'mm', resolution: 1e-6 });
  return `Clearance with ${fit.hole}/${fit.shaft}: ${print(fit.fit.leastClearance)} to ${print(fit.fit.mostClearance)}.`;
}

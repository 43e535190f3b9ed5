import { knowledge } from '../../knowledge/index.ts';
import { readQuantity, type Quantity } from '../../methods/quantity/index.ts';

type Lookup = (key: string) => Quantity | undefined;

/** How far the bow may flex in full stroke, and by how much it was drawn in too far. SI. */
export interface BowDraw {
  /** Greatest flex at which no leaf is bent further than it stands, m. */
  readonly most: number;
  /** As read. */
  readonly read: Quantity;
  /** What it flexed too far, m; 0 where it stands it. */
  readonly over: number;
}

/**
 * Bending grows in proportion to the flex, so that the flex that the leaves stand follows from the one that was read and its stress.
 * @returns undefined where the flex was not read, or the stress is not known
 */
export function bowDraw(known: Lookup): BowDraw | undefined {
  const read = known('bow-spring.deflection');
  const share = known('bow.stress-share')?.value;
  if (read === undefined || share === undefined || !(share > 0)) return undefined;
  const most = (read.value * stressStep()) / share;
  return { most, read, over: Math.max(0, read.value - most) };
}

/** Straps let out by as much as the bow was drawn in too far, in sixteenths upwards: own reckoning, the straps hang near plumb. */
export const strapLonger = ({ over }: BowDraw): number => Math.ceil(over / SIXTEENTH - 1e-6) * SIXTEENTH;

const SIXTEENTH = 0.0254 / 16;

/** Share of what a leaf stands from which the judgement watches it. */
function stressStep(): number {
  const rule = knowledge.criteria.find((one) => one.id === 'bow.stress')?.rule;
  const read = rule?.kind === 'measured' && rule.steps[0] !== undefined ? readQuantity(rule.steps[0].from, { dimension: 'ratio', field: 'bow.stress' }) : undefined;
  if (read?.ok !== true) throw new Error('knowledge: the bending of the leaves is judged by a share');
  return read.quantity.value;
}

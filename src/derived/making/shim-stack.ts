import { formatQuantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';

/** Thicknesses that shim stock is sold in, m; from memory. Thousandths of an inch, and steps of 0.025 mm. */
const LEAVES: Readonly<Record<PrintSystem, readonly number[]>> = {
  inch: [0.031, 0.025, 0.02, 0.015, 0.01, 0.005, 0.004, 0.003, 0.002, 0.001].map((one) => one * 0.0254),
  metric: [1, 0.5, 0.25, 0.2, 0.1, 0.05, 0.025].map((one) => one * 1e-3),
};

/**
 * Leaves that make up a pack to within half of the thinnest, thick ones first; half a step goes up, for a pack that is too thick leaves play
 * and one that is too thin binds.
 * @param pack m
 */
export function shimStack(pack: number, system: PrintSystem): readonly number[] {
  const leaves = LEAVES[system];
  const step = leaves[leaves.length - 1]!;
  let left = Math.floor(pack / step + 0.5 + 1e-6);
  const stack: number[] = [];
  for (const leaf of leaves) {
    const steps = Math.round(leaf / step);
    while (left >= steps) {
      stack.push(leaf);
      left -= steps;
    }
  }
  return stack;
}

/** A pack as its leaves and their sum. */
export function stackWords(pack: number, system: PrintSystem): string {
  const stack = shimStack(pack, system);
  if (stack.length === 0) return 'none';
  const [unit, resolution] = system === 'inch' ? (['in', 0.0254e-3] as const) : (['mm', 1e-6] as const);
  const print = (length: number): string => formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, { unit, resolution, doubt: false }).replace(/ (in|mm)$/, '');
  const sum = stack.reduce((all, one) => all + one, 0);
  return `${stack.map(print).join(' + ')}${stack.length === 1 ? '' : ` = ${print(sum)}`} ${unit}`;
}

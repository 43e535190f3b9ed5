import { bowStrapDetail, bowStrapForce, bowStrapNumbers } from './bow-strap.ts';
import { coilToggleDetail, coilToggleForce, coilToggleNumbers } from './coil-toggle.ts';
import { helveDetail, helveForce, helveNumbers } from './helve.ts';
import type { Suspension, SuspensionDetail } from './suspension.ts';

/** The code of the family among the numbers of a hammer. */
export const FAMILY_CODE: Readonly<Record<Suspension['kind'], number>> = { 'coil-toggle': 0, 'bow-strap': 1, helve: 2 };

/** The family's own numbers. */
export function suspensionNumbers(s: Suspension): number[] {
  if (s.kind === 'coil-toggle') return coilToggleNumbers(s);
  return s.kind === 'bow-strap' ? bowStrapNumbers(s) : helveNumbers(s);
}

/**
 * Force on the ram from the suspension alone, without friction and stops.
 * @param family 0 coil and toggle, 1 bow and straps, 2 helve
 * @param n the hammer's numbers
 * @param q m, inside the range the hammer's numbers allow
 * @returns N, up positive
 */
export function suspensionForce(family: number, n: Float64Array, q: number): number {
  if (family === 0) return coilToggleForce(n, q);
  return family === 1 ? bowStrapForce(n, q) : helveForce(n, q);
}

/** The same with spring force, energy, travel left and link force. */
export function suspensionDetail(family: number, n: Float64Array, q: number): SuspensionDetail {
  if (family === 0) return coilToggleDetail(n, q);
  return family === 1 ? bowStrapDetail(n, q) : helveDetail(n, q);
}

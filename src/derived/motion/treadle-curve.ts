import { mapCell } from './map-cell.ts';
import type { CellSettings, MapCell } from './map-cell.ts';
import type { MotionSpec } from './motion-spec.ts';

/** What the hammer does with the treadle part way down. */
export interface TreadlePoint {
  /** 0 to 1 of the clutch's full torque */
  readonly treadle: number;
  readonly cell: MapCell;
}

/**
 * Blow energy as the treadle is let in: the clutch slips at a share of its torque, the crank turns slower and the blow is softer.
 * @param shares each 0.01 to 1
 */
export function treadleCurve(spec: MotionSpec, shares: readonly number[], settings: CellSettings = {}): TreadlePoint[] {
  return shares.map((treadle) => ({ treadle, cell: mapCell({ ...spec, treadle }, settings) }));
}

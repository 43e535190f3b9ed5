import { demandBetween, demandPositive } from '../../numerics/index.ts';

/** One belt from a driving to a driven pulley, diameters in m. */
export interface BeltStage {
  readonly driver: number;
  readonly driven: number;
  /** Share of the speed lost by slip and creep, 0 to below 1; usually 0.02 to 0.04 (common practice, no source). */
  readonly slip?: number;
}

/**
 * Speed of the last shaft of a chain of belts, in the unit of `speed`: each belt multiplies by driver/driven (1 - slip) (Khurmi and
 * Gupta, Theory of Machines, ch. 11).
 */
export const drivenSpeed = (speed: number, stages: readonly BeltStage[]): number =>
  stages.reduce((turning, { driver, driven, slip = 0 }) => turning * (demandPositive('pulley diameter', driver) / demandPositive('pulley diameter', driven)) * (1 - demandBetween('slip', slip, 0, 0.99)), speed);

/** Diameter of the driving pulley, m, that gives a speed through one belt. Both speeds in the same unit, > 0. */
export const driverForSpeed = (speed: number, wantedSpeed: number, driven: number, slip = 0): number =>
  (demandPositive('speed wanted', wantedSpeed) * demandPositive('pulley diameter', driven)) / (demandPositive('driving speed', speed) * (1 - demandBetween('slip', slip, 0, 0.99)));

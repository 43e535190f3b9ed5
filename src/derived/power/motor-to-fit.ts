import { MOTOR_RATINGS } from '../../knowledge/index.ts';
import type { PrintSystem } from '../print-system.ts';
import { usualOfClass } from '../usual-of-class.ts';

/** The job that fits a larger motor. */
export const MOTOR_JOB = 'motor.renew';

/** A motor as it is sold. */
export interface MotorToFit {
  /** W */
  readonly power: number;
  /** With its unit, as a catalogue has it: `5 hp`. */
  readonly words: string;
}

/** A plate that is short by less than this reaches what is wanted. */
const SHORT = 0.01;

/** W of one mechanical horsepower. */
const HORSEPOWER = 745.69987158;

/**
 * The least motor that is sold and reaches what is usual for the class; the largest of the list where none does.
 * @param ramMass nominal ram mass, kg
 */
export function motorToFit(ramMass: number, system: PrintSystem = 'inch'): MotorToFit {
  const wanted = usualOfClass(ramMass).find((one) => one.key === 'class.motor-power')?.quantity.value ?? 0;
  const inch = system === 'inch';
  const unit = inch ? HORSEPOWER : 1000;
  const ratings: readonly number[] = inch ? MOTOR_RATINGS.horsepower : MOTOR_RATINGS.kilowatts;
  const rating = ratings.find((one) => one * unit >= wanted * (1 - SHORT)) ?? ratings.at(-1)!;
  return { power: rating * unit, words: `${rating} ${inch ? 'hp' : 'kW'}` };
}

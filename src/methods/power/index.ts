export { polesOf, rotorFrequency, rotorVoltage, slipOf, synchronousSpeed } from './induction-motor.ts';
export { fullLoadCurrent, greatestBreakerRating, leastConductorCurrent, SINGLE_PHASE_CURRENTS, THREE_PHASE_CURRENTS } from './motor-current.ts';
export type { FullLoadCurrent, MotorPlate } from './motor-current.ts';
export { capacitanceFor, capacitorCurrent, converterCapacitance, converterIdlerPower, UNBALANCE_LIMITS, voltageUnbalance } from './phases.ts';
export type { DisputedRange, Starting } from './phases.ts';
export { allowedTime, GREATEST_PEAK_DECIBELS, levelsTogether, NIOSH, noiseDose, OSHA, timeWeightedAverage } from './noise-dose.ts';
export type { Exposure, ExposureRule } from './noise-dose.ts';
export { DROPS_PER_MILLILITRE, fromSaybolt, gradeLimits, gradeOf, ISO_GRADES, ISO_NEAR_SAE, oilFlow, viscosityAt } from './oil.ts';
export type { IsoGrade, Viscosity, ViscosityPoint } from './oil.ts';

export { OIL_POINTS } from './oil-points.ts';
export type { OilPoint } from './oil-points.ts';
export { gradeFor, viscosityOfGrade } from './viscosity.ts';
export { oilingRound } from './oiling-round.ts';
export type { OilingRound, RoundPoint } from './oiling-round.ts';
export { bearingTemperature, workOutOiling } from './work-out-oiling.ts';

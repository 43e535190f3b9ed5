export { beltSpeed, openBeltCentres, openBeltLength, openBeltLengthShort, openBeltWrap } from './belt-geometry.ts';
export { beltPull, capstanRatio, speedOfGreatestPower } from './belt-pull.ts';
export type { BeltPull } from './belt-pull.ts';
export { LEATHER_JOINT_STRESS, LEATHER_RULES, leatherBeltPower, leatherBeltWidth, wrapShare } from './leather-rules.ts';
export type { LeatherRule, LeatherRuleId } from './leather-rules.ts';
export { drivenSpeed, driverForSpeed } from './line-shaft.ts';
export type { BeltStage } from './line-shaft.ts';

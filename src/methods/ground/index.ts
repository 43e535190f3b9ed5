export { anvilSpeed, blowEfficiency, drivenResistance, plasticImpact, STANDARD_GRAVITY, stoppingForce } from './impact.ts';
export type { Driving, PlasticImpact } from './impact.ts';
export { foundationModes, foundationResponse, movementAt, padStress } from './two-mass.ts';
export type { Amplitudes, FoundationMode, FoundationResponse, HammerFoundation } from './two-mass.ts';
export { blockLimits } from './block-limits.ts';
export type { BlockLimits } from './block-limits.ts';
export { propFor, RAM_PROPS, RAM_PROP_STRENGTH } from './ram-props.ts';
export type { PropChoice, RamProp } from './ram-props.ts';

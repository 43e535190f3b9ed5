import type { SpecWithDoubt } from './class-priors.ts';

/** Between what an assumed value may well lie (19 of 20 hammers), SI. */
export interface AssumedRange {
  /** dotted name in the specification */
  readonly field: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

type Spread = { readonly share: readonly [number, number] } | { readonly bounds: readonly [number, number] };
const share = (low: number, high = low): Spread => ({ share: [low, high] });
const bounds = (low: number, high: number): Spread => ({ bounds: [low, high] });

/** How far the usual values scatter: common practice and judgement, no source. Shares of the value below and above, or bounds. */
const SPREADS: Readonly<Record<string, Spread>> = {
  ramMass: share(0.05), throw: share(0.12), rodLength: share(0.12), workThickness: share(0.5), stackLoss: bounds(0, 0.012),
  ledgeClearance: bounds(0.015, 0.05), jointStop: share(0.2, 0.4), upperStop: share(0.2, 0.3), stopStiffness: bounds(5e6, 5e7), stopDamping: bounds(0.1, 0.5),
  pinFriction: bounds(0.02, 0.08), lostMotion: bounds(0, 0.003), guideFriction: share(0.7, 9), sideFriction: bounds(0.05, 0.2), viscous: share(0.4, 1),
  crankInertia: share(0.4), carrierMass: share(0.3), motorInertia: share(0.5), pullOutTorque: share(0.3), pullOutSlip: bounds(0.08, 0.25),
  driveSpeed: share(0.1), clutchTorque: share(0.4), bearingFriction: share(0.5, 1), anvilRatio: share(0.5),
  'contact.restitution': bounds(0.1, 0.3), 'contact.cap': bounds(0.1, 0.5), 'contact.flowStress': share(0.4), 'contact.area': share(0.5), 'contact.structureStiffness': share(0.5, 1),
  'suspension.lowerLimb': share(0.1), 'suspension.upperLimb': share(0.1), 'suspension.link': share(0.15), 'suspension.armAngle': bounds(-0.15, 0.05),
  'suspension.crankOffset': bounds(-0.1, 0.25), 'suspension.rate': share(0.3), 'suspension.preCompression': share(0.35), 'suspension.sag': bounds(0, 0.012),
  'suspension.travel': share(0.2), 'suspension.solidRate': share(0.5, 1), 'suspension.tipRate': share(0.35), 'suspension.tipDraw': share(0.35), 'suspension.strap': share(0.2),
  'suspension.pathAngle': bounds(-0.1, 0.35), 'suspension.tipTravel': share(0.3), 'suspension.headRadius': share(0.2), 'suspension.cushionRadius': share(0.2),
  'suspension.rodRadius': share(0.2), 'suspension.beamInertia': share(0.5), 'suspension.beamMoment': share(0.5), 'suspension.cushionRate': share(0.5),
  'suspension.hardening': share(1), 'suspension.squeeze': share(0.4), 'suspension.solidSqueeze': share(0.3),
};

/** m either way on the frame's height, which stands for the rest gap that nobody has measured. */
const GAP_DOUBT = 0.012;

/**
 * The ranges of all values that nobody has measured.
 * `treadle` is what the person does and not a property of the hammer; it has none.
 */
export function doubtOfAssumed(spec: SpecWithDoubt): AssumedRange[] {
  const ranges: AssumedRange[] = [];
  for (const field of spec.assumed) {
    const value = field.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], spec.spec);
    if (typeof value !== 'number') continue;
    const spread = field === 'frameHeight' ? bounds(value - GAP_DOUBT, value + GAP_DOUBT) : SPREADS[field];
    if (spread === undefined) continue;
    const [low, high] = 'bounds' in spread ? spread.bounds : [value * (1 - spread.share[0]), value * (1 + spread.share[1])];
    ranges.push({ field, value, low: Math.min(low, value), high: Math.max(high, value) });
  }
  return ranges;
}

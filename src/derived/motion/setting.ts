import { hammerNumbers } from './hammer-numbers.ts';
import type { MotionSpec } from './motion-spec.ts';
import { hangingDepth } from './start-state.ts';

/** What a person can turn, shim or change on a hammer, or what wears of itself; SI each. */
export type SettingName =
  | 'throw' | 'rodLength' | 'restGap' | 'preCompression' | 'sag' | 'springRate' | 'driveSpeed' | 'workThickness' | 'stackLoss'
  | 'treadle' | 'clutchTorque' | 'lostMotion' | 'jointStop' | 'upperStop' | 'guideFriction' | 'pinFriction' | 'restitution' | 'ramMass';

/** m: the die gap with the ram hanging at bottom dead centre, dies as they are now. */
export function restGapOf(spec: MotionSpec): number {
  const n = hammerNumbers(spec);
  return n[4]! - (spec.rodLength + spec.throw) * n[37]! - (hangingDepth(n) ?? 0);
}

/** The preload setting of whichever family: nut, strap draw or cushion squeeze. */
function preload(spec: MotionSpec): number {
  const s = spec.suspension;
  return s.kind === 'coil-toggle' ? s.preCompression : s.kind === 'bow-strap' ? s.tipDraw : s.squeeze;
}

function rate(spec: MotionSpec): number {
  const s = spec.suspension;
  return s.kind === 'coil-toggle' ? s.rate : s.kind === 'bow-strap' ? s.tipRate : s.cushionRate;
}

/** The value a setting has now; `undefined` where this hammer has no such setting. */
export function settingOf(spec: MotionSpec, name: SettingName): number | undefined {
  if (name === 'restGap') return restGapOf(spec);
  if (name === 'preCompression') return preload(spec);
  if (name === 'springRate') return rate(spec);
  if (name === 'sag') return spec.suspension.kind === 'coil-toggle' ? spec.suspension.sag : undefined;
  if (name === 'restitution') return spec.contact.kind === 'fixed' ? spec.contact.restitution : spec.contact.cap;
  return spec[name];
}

/**
 * The hammer with one setting changed and nothing else: rod and throw are turned without setting the gap again, the gap is set
 * by raising or lowering the frame's height over the dies.
 */
export function withSetting(spec: MotionSpec, name: SettingName, value: number): MotionSpec {
  const s = spec.suspension;
  switch (name) {
    case 'restGap':
      return { ...spec, frameHeight: spec.frameHeight + value - restGapOf(spec) };
    case 'preCompression':
      if (s.kind === 'coil-toggle') return { ...spec, suspension: { ...s, preCompression: value } };
      return { ...spec, suspension: s.kind === 'bow-strap' ? { ...s, tipDraw: value } : { ...s, squeeze: value } };
    case 'springRate':
      if (s.kind === 'coil-toggle') return { ...spec, suspension: { ...s, rate: value } };
      return { ...spec, suspension: s.kind === 'bow-strap' ? { ...s, tipRate: value } : { ...s, cushionRate: value } };
    case 'sag':
      return s.kind === 'coil-toggle' ? { ...spec, suspension: { ...s, sag: value } } : spec;
    case 'restitution':
      return { ...spec, contact: spec.contact.kind === 'fixed' ? { kind: 'fixed', restitution: value } : { ...spec.contact, cap: value } };
    default:
      return { ...spec, [name]: value };
  }
}

/**
 * Turns of a nut or sleeve for a change of length.
 * @param change m
 * @param pitch m a turn, positive; twice the thread's pitch for a turnbuckle of right and left hand
 */
export function turnsFor(change: number, pitch: number): number {
  if (!(pitch > 0)) throw new Error(`a thread's pitch must be positive: ${pitch}`);
  return change / pitch;
}

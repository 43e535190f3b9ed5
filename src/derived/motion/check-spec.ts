import { hammerNumbers } from './hammer-numbers.ts';
import type { MotionSpec } from './motion-spec.ts';
import { hangingDepth } from './start-state.ts';
import { suspensionForce } from './suspension/law.ts';

/** One thing wrong with a specification. */
export interface SpecProblem {
  /** dotted name of the value at odds */
  readonly field: string;
  /** what is wrong; what is allowed: the value */
  readonly sentence: string;
}

type Row = readonly [field: string, low: number, high: number, unit: string];

/** What can be at all; far wider than what is usual. */
const ALLOWED: readonly Row[] = [
  ['ramMass', 0.5, 3000, 'kg'], ['throw', 0.005, 0.6, 'm'], ['rodLength', 0.03, 4, 'm'], ['frameHeight', -2, 8, 'm'],
  ['stackLoss', -0.1, 0.3, 'm'], ['workThickness', 0, 0.5, 'm'], ['ledgeClearance', 0, 2, 'm'], ['jointStop', 0.002, 1, 'm'],
  ['upperStop', 0.002, 1, 'm'], ['stopStiffness', 1e5, 1e9, 'N/m'], ['stopDamping', 0, 5, 's/m'], ['pinFriction', 0, 0.5, ''],
  ['lostMotion', 0, 0.05, 'm'], ['guideFriction', 0, 1e4, 'N'], ['sideFriction', 0, 1, ''], ['viscous', 0, 1e4, 'N s/m'],
  ['crankInertia', 0.01, 2000, 'kg m2'], ['carrierMass', 0.1, 2000, 'kg'], ['motorInertia', 0.01, 2000, 'kg m2'],
  ['pullOutTorque', 1, 1e5, 'N m'], ['pullOutSlip', 0.01, 1, ''], ['driveSpeed', 2, 100, 'rad/s'], ['clutchTorque', 1, 1e5, 'N m'],
  ['treadle', 0.01, 1, ''], ['bearingFriction', 0, 1e3, 'N m'], ['anvilRatio', 0.5, 1000, ''],
  ['contact.restitution', 0, 0.95, ''], ['contact.cap', 0, 0.95, ''], ['contact.flowStress', 1e5, 1e10, 'Pa'],
  ['contact.area', 1e-7, 1, 'm2'], ['contact.structureStiffness', 1e5, 1e11, 'N/m'],
  ['anvil.mass', 1, 1e6, 'kg'], ['anvil.stiffness', 1e4, 1e12, 'N/m'], ['anvil.damping', 0, 1e9, 'N s/m'],
  ['suspension.lowerLimb', 0.01, 2, 'm'], ['suspension.upperLimb', 0.01, 2, 'm'], ['suspension.link', 0.01, 2, 'm'],
  ['suspension.armAngle', -0.8, 0.8, 'rad'], ['suspension.crankOffset', -0.8, 0.8, 'rad'], ['suspension.rate', 100, 1e7, 'N/m'],
  ['suspension.preCompression', 0, 0.5, 'm'], ['suspension.sag', 0, 0.2, 'm'], ['suspension.travel', 0.005, 1, 'm'],
  ['suspension.solidRate', 0, 1e9, 'N/m'], ['suspension.tipRate', 100, 1e7, 'N/m'], ['suspension.tipDraw', 0, 0.5, 'm'],
  ['suspension.strap', 0.01, 2, 'm'], ['suspension.pathAngle', -0.8, 0.8, 'rad'], ['suspension.tipTravel', 0.001, 1, 'm'],
  ['suspension.headRadius', 0.05, 6, 'm'], ['suspension.cushionRadius', 0.02, 6, 'm'], ['suspension.rodRadius', 0.02, 6, 'm'],
  ['suspension.beamInertia', 0, 1e5, 'kg m2'], ['suspension.beamMoment', -1e5, 1e5, 'N m'], ['suspension.cushionRate', 100, 1e9, 'N/m'],
  ['suspension.hardening', 0, 1e7, '1/m2'], ['suspension.squeeze', 0, 0.5, 'm'], ['suspension.solidSqueeze', 0.001, 1, 'm'],
];

/** What each family, contact and anvil must have. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  'coil-toggle': ['lowerLimb', 'upperLimb', 'link', 'armAngle', 'crankOffset', 'rate', 'preCompression', 'sag', 'travel', 'solidRate'],
  'bow-strap': ['tipRate', 'tipDraw', 'strap', 'pathAngle', 'tipTravel', 'solidRate'],
  helve: ['headRadius', 'cushionRadius', 'rodRadius', 'beamInertia', 'beamMoment', 'cushionRate', 'hardening', 'squeeze', 'solidSqueeze', 'solidRate'],
  fixed: ['restitution'],
  yielding: ['flowStress', 'area', 'structureStiffness', 'cap'],
};

/** Dotted names of the nested values this specification needs; the problem where a kind is unknown. */
function needed(spec: MotionSpec): Set<string> | SpecProblem {
  const names = new Set<string>();
  for (const field of ['suspension', 'contact'] as const) {
    const kind = (spec[field] as { kind?: string } | undefined)?.kind ?? '';
    const parts = PARTS[kind];
    if (parts === undefined || (kind === 'fixed' || kind === 'yielding') !== (field === 'contact'))
      return { field: `${field}.kind`, sentence: `${field} is of no known kind; allowed are ${field === 'contact' ? 'fixed, yielding' : 'coil-toggle, bow-strap, helve'}: ${String(kind)}` };
    for (const part of parts) names.add(`${field}.${part}`);
  }
  if (spec.anvil !== undefined) for (const part of ['mass', 'stiffness', 'damping']) names.add(`anvil.${part}`);
  return names;
}

function valueAt(spec: MotionSpec, field: string): unknown {
  return field.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], spec);
}

const mm = (metres: number): string => `${(metres * 1000).toFixed(1)} mm`;

/** Where in its range the suspension's law cannot be followed, as a sentence; `undefined` where it can everywhere. */
function geometry(spec: MotionSpec, n: Float64Array): SpecProblem | undefined {
  const low = n[25]!;
  const high = n[26]!;
  const s = spec.suspension;
  const mid = Math.abs(suspensionForce(n[34]!, n, 0.002));
  for (let i = 0; i <= 400; i++) {
    const q = low + ((high - low) * i) / 400;
    const force = suspensionForce(n[34]!, n, q);
    const turned = (q > 0.002 && force < 0) || (q < -0.002 && force > 0);
    if (Number.isFinite(force) && !turned && Math.abs(force) < 1e3 * Math.max(mid, n[1]!)) continue;
    const where = `${mm(Math.abs(q))} ${q < 0 ? 'above' : 'below'} link level`;
    const stop = q < 0 ? 'upperStop' : 'jointStop';
    if (s.kind === 'coil-toggle')
      return { field: 'suspension.link', sentence: `the linkage comes into line or parts ${where}, inside its stops; link ${mm(s.link)} and lower limb ${mm(s.lowerLimb)} must close as far as ${stop}: ${mm(q < 0 ? spec.upperStop : spec.jointStop)}` };
    return { field: s.kind === 'bow-strap' ? 'suspension.strap' : 'suspension.cushionRate', sentence: `the suspension cannot be followed ${where}, inside its stops; it must reach as far as ${stop}: ${mm(q < 0 ? spec.upperStop : spec.jointStop)}` };
  }
  return undefined;
}

/**
 * What is wrong with a specification; empty where it can be run.
 * Nothing that passes makes the equations singular: the rod reaches round the throw, the linkage closes between its stops, the ram can be carried.
 */
export function checkSpec(spec: MotionSpec): SpecProblem[] {
  const problems: SpecProblem[] = [];
  const names = needed(spec);
  if (!(names instanceof Set)) return [names];
  for (const [field, low, high, unit] of ALLOWED) {
    const value = valueAt(spec, field);
    if (field.includes('.') && !names.has(field)) continue;
    if (typeof value === 'number' && value >= low && value <= high) continue;
    problems.push({ field, sentence: `${field} cannot be that; allowed is ${low} to ${high}${unit === '' ? '' : ` ${unit}`}: ${String(value)}` });
  }
  if (problems.length > 0) return problems;
  if (!(spec.rodLength > 1.1 * spec.throw))
    return [{ field: 'rodLength', sentence: `the rod cannot pass the crank; it must be longer than 1.1 times the throw of ${mm(spec.throw)}: ${mm(spec.rodLength)}` }];
  const s = spec.suspension;
  if (s.kind === 'coil-toggle' && s.preCompression - s.sag <= 0)
    problems.push({ field: 'suspension.preCompression', sentence: `the spring is slack with the links level; preCompression must be more than the sag of ${mm(s.sag)}: ${mm(s.preCompression)}` });
  if (s.kind === 'coil-toggle' && s.travel - s.preCompression <= 0)
    problems.push({ field: 'suspension.travel', sentence: `the spring is solid with the links level; travel must be more than the preCompression of ${mm(s.preCompression)}: ${mm(s.travel)}` });
  if (s.kind === 'helve' && s.solidSqueeze <= s.squeeze)
    problems.push({ field: 'suspension.solidSqueeze', sentence: `the cushions are solid at rest; solidSqueeze must be more than the squeeze of ${mm(s.squeeze)}: ${mm(s.solidSqueeze)}` });
  if (problems.length > 0) return problems;
  const n = hammerNumbers(spec);
  if (!(n[1]! > 0)) return [{ field: 'suspension.beamMoment', sentence: `the beam's tail outweighs the head; beamMoment must leave a weight on the dies: ${n[1]!.toFixed(0)} N` }];
  const bent = geometry(spec, n);
  if (bent !== undefined) return [bent];
  const hang = hangingDepth(n);
  const carrier = s.kind === 'coil-toggle' ? 'suspension.preCompression' : s.kind === 'bow-strap' ? 'suspension.tipDraw' : 'suspension.cushionRate';
  if (hang === undefined)
    return [{ field: carrier, sentence: `the spring cannot carry the ram before the linkage meets its guide; ${carrier} must hold up ${n[1]!.toFixed(0)} N within jointStop: ${mm(spec.jointStop)}` }];
  // Top of the stroke with the ram hanging: it must clear the work, or there is no stroke to run.
  const topGap = n[4]! - Math.sqrt(n[3]!) + n[2]! - hang;
  if (topGap <= n[28]! + 0.002)
    problems.push({ field: n[28]! > spec.workThickness ? 'ledgeClearance' : 'workThickness', sentence: `the dies do not open over what they are to strike at ${mm(n[28]!)}; the opening at the top of the stroke must be more: ${mm(topGap)}` });
  if (topGap > n[28]! + 4 * n[2]! + 0.6)
    problems.push({ field: 'frameHeight', sentence: `the dies never come near; the opening at the top of the stroke must be within reach of the throw: ${mm(topGap)}` });
  return problems;
}

import { frameHeightFor } from './class-priors.ts';
import type { SpecWithDoubt } from './class-priors.ts';
import type { MotionSpec } from './motion-spec.ts';
import { restGapOf } from './setting.ts';
import type { Suspension } from './suspension/suspension.ts';

/** What has been measured, SI; only what is known. The rest gap is measured with the ram hanging at bottom dead centre. */
export type Measured = Partial<Omit<MotionSpec, 'suspension' | 'frameHeight'>> & {
  readonly suspension?: Partial<Suspension>;
  readonly restGap?: number;
};

/**
 * Puts measured values in place of assumed ones and strikes them off the list of assumptions.
 *
 * Where the rest gap was measured it fixes the frame's height for the hammer as it now is. Where it was not, the gap of the class is kept, so that a
 * measured rod or throw is taken to be what the hammer was set up with.
 * A suspension of another kind than the one assumed replaces it whole.
 */
export function withMeasured(base: SpecWithDoubt, measured: Measured): SpecWithDoubt {
  const { suspension, restGap, ...plain } = measured;
  const known = new Set<string>();
  const values: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(plain)) {
    if (value === undefined) continue;
    values[key] = value;
    known.add(key);
    if (typeof value === 'object') for (const inner of Object.keys(value)) known.add(`${key}.${inner}`);
  }
  let held: Suspension = base.spec.suspension;
  let assumed = [...base.assumed];
  if (suspension !== undefined) {
    if (suspension.kind !== undefined && suspension.kind !== held.kind) {
      held = suspension as Suspension;
      assumed = assumed.filter((name) => !name.startsWith('suspension.'));
    } else held = { ...held, ...suspension } as Suspension;
    for (const inner of Object.keys(suspension)) known.add(`suspension.${inner}`);
  }
  const rough = { ...base.spec, ...values, suspension: held } as MotionSpec;
  const gap = restGap ?? restGapOf(base.spec) + rough.stackLoss - base.spec.stackLoss;
  if (restGap !== undefined) known.add('frameHeight');
  const spec = { ...rough, frameHeight: frameHeightFor(rough, gap) };
  return { spec, assumed: assumed.filter((name) => !known.has(name)) };
}

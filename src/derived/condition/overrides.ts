import type { Criterion } from '../../knowledge/index.ts';
import type { OverrideBody } from '../../entries/index.ts';
import type { Known, Stamp } from '../survey/index.ts';

export type Override = OverrideBody & Stamp & { readonly step: NonNullable<OverrideBody['step']> };

/**
 * The owner's own limit in force for a criterion. A gate keeps its default: what stands a hammer down for safety is not
 * the owner's to loosen, and the picture's problems say so.
 */
export function overrideFor(known: Known, criterion: Criterion, at: string | undefined): Override | undefined {
  if (criterion.gate || criterion.rule.kind !== 'measured') return undefined;
  return known.overrides.filter((one): one is Override => one.criterion === criterion.id && (one.at === undefined || one.at === at) && one.step !== undefined).at(-1);
}

/** Overrides that have no effect, each with the reason. */
export function idleOverrides(known: Known, criteria: readonly Criterion[]): readonly string[] {
  return known.overrides.flatMap((one) => {
    const criterion = criteria.find((candidate) => candidate.id === one.criterion);
    if (criterion === undefined) return [`The owner's limit of ${one.when.slice(0, 10)} names a rule that this version does not have: ${one.criterion}`];
    if (criterion.rule.kind !== 'measured') return [`The owner's limit of ${one.when.slice(0, 10)} has no effect: ${criterion.title} is judged by looking, not by a figure`];
    if (criterion.gate) return [`The owner's limit of ${one.when.slice(0, 10)} has no effect: ${criterion.title} is a matter of safety and keeps its limit`];
    if (one.step === undefined) return [`The owner's limit of ${one.when.slice(0, 10)} for ${criterion.title} gives no figure`];
    const { step } = one;
    if (!criterion.rule.steps.some((candidate) => candidate.grade === step.grade)) return [`The owner's limit of ${one.when.slice(0, 10)} has no effect: ${criterion.title} has no step called ${step.grade.replace('-', ' ')}`];
    return [];
  });
}

import type { SettingRule } from '../../knowledge/index.ts';
import { changesStack, gapPlan, gapSentences } from '../worksheet/index.ts';
import type { SettingInputs, SettingLine, SettingTarget } from './setting-line.ts';

/** What the open jobs make of the gap, for its line on the sheet. */
export interface AfterJobs {
  readonly says: Pick<SettingLine, 'afterJobs' | 'first'>;
  readonly target?: SettingTarget;
  /** How far it has to go from there, m; absent where the gap as found still says how far. */
  readonly change?: number;
  /** Height that the open jobs give the stack, m. */
  readonly rise: number;
}

/** For the gap only, and only where the open jobs are known: undefined where they change nothing. */
export function afterJobsOf(inputs: SettingInputs, rule: SettingRule, target: SettingTarget | undefined): AfterJobs | undefined {
  const { known, values, findings = [], jobs, system = 'inch' } = inputs;
  if (rule.id !== 'gap' || jobs === undefined) return undefined;
  const lookup = (key: string) => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  const range = target?.from === undefined || target.to === undefined ? undefined : { from: target.from, to: target.to };
  const plan = gapPlan({ known, findings, lookup, jobs, ...(range === undefined ? {} : { range }) });
  const first = gapSentences(plan, known.identity.family, lookup, system);
  if (first.length === 0) return undefined;
  const { later } = plan;
  const changes = changesStack(plan) && later !== undefined;
  const kept = changes && target !== undefined && plan.wanted.from.value !== target.from?.value ? { target: { ...target, from: plan.wanted.from, sentence: `No less than it is today, which the report calls good. ${target.sentence}` } } : {};
  return { ...kept, says: { first, ...(changes ? { afterJobs: later } : {}) }, rise: plan.stack.rise.value, ...(changes ? { change: plan.move } : {}) };
}

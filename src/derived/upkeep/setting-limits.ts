import { GRADES, knowledge, LOAD_BEARERS, type SettingRule } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import type { Finding } from '../condition/index.ts';
import { powerInputOf, powerOf } from '../power/index.ts';
import { printQuantity } from '../print-system.ts';
import type { SettingInputs } from './setting-line.ts';
import { shopQuantity } from './shop-quantity.ts';

/** Settings of which more is more load on everything that moves. */
const LOADING: readonly string[] = ['speed', 'throw'];

/**
 * Whether the report calls a reading good that lies outside of what is usual: the rules that judge this reading on the side on
 * which it is off all find it sound. A rule for too little says nothing of too much.
 */
export function calledGood(findings: readonly Finding[], rule: SettingRule, change: number, asFound: number): boolean {
  // What the limits card forbids is not good, whatever its own rule says.
  const greatest = rule.id === 'speed' ? greatestSpeed(findings) : undefined;
  if (greatest !== undefined && asFound > greatest.value) return false;
  const judging = new Set(knowledge.criteria.filter((one) => one.rule.kind === 'measured' && (one.rule.value === rule.shownBy || one.id === rule.judgedBy) && one.rule.worse === (change < 0 ? 'more' : 'less')).map((one) => one.id));
  const found = findings.filter((finding) => judging.has(finding.criterion) && finding.grade !== 'does-not-apply');
  return found.length > 0 && found.every((finding) => finding.grade === 'sound');
}

/** The greatest speed that the limits card allows, blows a second; undefined where it allows any. */
export const greatestSpeed = (findings: readonly Finding[]): Quantity | undefined =>
  findings.flatMap((finding) => finding.limits).filter((limit) => limit.kind === 'greatest-speed').flatMap((limit) => limit.quantity ?? []).sort((a, b) => a.value - b.value)[0];

/**
 * What stands in the way of a change, by the limits that the judgement imposes; nothing where it may be made.
 * @param rise how much height the open jobs give back to the stack, m: with the dies closed the linkage stands that much higher over its guide
 */
export function heldBy(inputs: SettingInputs, rule: SettingRule, asFound: Quantity, change: number, rise = 0): readonly string[] {
  if (LOADING.includes(rule.id) && change > 0) return [...motorHolds(inputs, (asFound.value + change) / asFound.value), ...bearersHold(inputs.findings ?? [])];
  if (rule.id === 'gap') return gapHolds(inputs, change, rise);
  return [];
}

/** What the motor draws running, as a share of its full-load current; undefined where it was not read. */
export function motorShare({ known, values }: SettingInputs): number | undefined {
  const power = powerOf(powerInputOf(values, known), 1, 10);
  return power.state === 'known' ? power.running?.share : undefined;
}

/** The current rises with the speed at the least; load on the linkage with its square. */
function motorHolds(inputs: SettingInputs, ratio: number): readonly string[] {
  const share = motorShare(inputs);
  if (share === undefined || share * ratio <= 1) return [];
  const percent = (value: number): string => `${Math.round(100 * value)} %`;
  return [share > 1
    ? `The motor draws ${percent(share)} of its full-load current already, and more speed asks for more: find what drags, or fit a larger motor first.`
    : `The motor draws ${percent(share)} of its full-load current; with this it would draw ${percent(share * ratio)} at the least.`];
}

function bearersHold(findings: readonly Finding[]): readonly string[] {
  const holding = findings.filter((finding) => LOAD_BEARERS.some((one) => one.criterion === finding.criterion && atLeast(finding, one.from)));
  if (holding.length === 0) return [];
  const names = [...new Set(holding.map((finding) => finding.title.toLowerCase()))];
  return [`It would load more what is not right yet: ${names.join('; ')}.`];
}

const atLeast = (finding: Finding, grade: (typeof GRADES)[number]): boolean => GRADES.findIndex((one) => one === finding.grade) >= GRADES.indexOf(grade);

/** A narrower gap is a longer rod, which needs thread and brings the linkage down on its guide; a helve has its height screws. */
function gapHolds({ known, values, system = 'inch' }: SettingInputs, change: number, rise: number): readonly string[] {
  const number = (key: string): number | undefined => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system);
  if (known.identity.family === 'helve') return known.looks['helve.height-screws']?.answer === 'stuck' ? ['The height screws are stuck: free them first.'] : [];
  if (change >= 0) return [];
  const thread = number('connecting-rod.thread-left');
  const read = number('stack.linkage-clearance');
  const clearance = read === undefined ? undefined : read + rise;
  const least = soundClearance();
  return [
    ...(thread !== undefined && thread < -change ? [`The rod has only ${print(thread)} of thread left: height under the dies makes the gap good, not the rod.`] : []),
    ...(clearance !== undefined && clearance + change <= least ? [`A rod so much longer leaves ${print(Math.max(0, clearance + change))} between linkage and guide with the dies closed, and more than ${print(least)} is called good: height under the dies makes the gap good, not the rod.`] : []),
  ];
}

/** Clearance of the linkage above which the judgement finds it sound, m. */
function soundClearance(): number {
  const rule = knowledge.criteria.find((one) => one.id === 'stack.linkage-clearance')?.rule;
  const from = rule?.kind === 'measured' ? rule.steps[0]?.from : undefined;
  if (from === undefined) throw new Error('knowledge: the clearance of the linkage is judged by a figure');
  return shopQuantity(from, 'length', 'stack.linkage-clearance').value;
}

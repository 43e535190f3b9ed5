import { answerWords, saysLeftOut } from '../../hammer/index.ts';
import { SETTINGS, type SettingRule } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import { printQuantity, writtenIn } from '../print-system.ts';
import type { SettingInputs, SettingLine, SettingTarget } from './setting-line.ts';
import { calledGood, heldBy } from './setting-limits.ts';
import { afterJobsOf } from './gap-after-jobs.ts';
import { speedAfterJobs } from './speed-after-jobs.ts';
import { targetOf } from './setting-target.ts';
import { shopQuantity } from './shop-quantity.ts';

/** The settings of re-assembly in the order in which each changes the next, one change at a time, with what to reach and how to check it. */
export function settingSheet(inputs: SettingInputs): readonly SettingLine[] {
  const { family } = inputs.known.identity;
  const { looks } = inputs.known;
  const applies = ({ shownBy, onlyWhere }: SettingRule): boolean => saysLeftOut(shownBy.split('.')[0] ?? '', looks) === undefined && (onlyWhere === undefined || onlyWhere.answers.includes(looks[onlyWhere.look]?.answer ?? ''));
  const clutch = saysLeftOut('clutch-facing', looks) === undefined;
  return SETTINGS.filter((rule) => rule.families.includes(family) && applies(rule)).map((rule, index) => withMeans(lineOf(inputs, clutch ? rule : { ...rule, ...rule.withoutClutch }, index + 1)));
}

/** What brings a setting where it should be is named where it is to be set, and where it must wait; what is to be left needs nothing. */
function withMeans(line: SettingLine): SettingLine {
  if (line.target?.by === undefined || line.state === 'good') return line;
  const { by, ...target } = line.target;
  return { ...line, target: { ...target, sentence: `${target.sentence}${by}` } };
}

function lineOf(inputs: SettingInputs, rule: SettingRule, number: number): SettingLine {
  const found = foundOf(inputs, rule);
  const { target, missing } = targetOf(inputs, rule);
  const after = afterJobsOf(inputs, rule, target);
  const asFound = found?.quantity;
  const speed = rule.id === 'speed' && asFound !== undefined ? speedAfterJobs(inputs, asFound) : undefined;
  const common = {
    number, id: rule.id, title: rule.title, because: rule.because, how: rule.how, ...(rule.running === undefined ? {} : { running: rule.running }), source: rule.source, ...(found === undefined ? {} : { asFound: found }),
    ...(target === undefined ? {} : { target: after?.target ?? target }), ...(after === undefined ? {} : after.says), ...speed,
  };
  const dimension = target?.from?.dimension ?? target?.to?.dimension ?? asFound?.dimension;
  // A speed is wanted in a range, and not above it by any tolerance.
  const tolerance = rule.tolerance === undefined || dimension === undefined || rule.id === 'speed' ? undefined : shopQuantity(rule.tolerance, dimension, rule.id);
  const wanted = [...new Set([...missing, ...(found === undefined ? [rule.shownBy] : [])])];
  if (target === undefined) return { ...common, state: found === undefined || missing.length > 0 ? 'not-known' : 'look', missing: wanted, ...(tolerance === undefined ? {} : { tolerance }) };
  if (asFound === undefined || (target.from === undefined && target.to === undefined)) return { ...common, state: found === undefined ? 'not-known' : 'look', missing: wanted, ...(tolerance === undefined ? {} : { tolerance }) };
  if (after?.change !== undefined) {
    const moved: Quantity = { dimension: asFound.dimension, value: after.change, uncertainty: after.says.afterJobs?.uncertainty ?? asFound.uncertainty };
    const held = heldBy(inputs, rule, asFound, after.change, after.rise);
    const changed = { ...common, missing, ...(tolerance === undefined ? {} : { tolerance }) };
    return after.change === 0 ? { ...changed, state: 'set' } : held.length > 0 ? { ...changed, state: 'held', held, change: moved } : { ...changed, state: 'off', change: moved };
  }
  const slack = (tolerance?.value ?? 0) * (1 + 1e-9) + 1e-12;
  const change = changeTo(target, (speed?.afterJobs ?? asFound).value);
  const set = Math.abs(change) <= slack;
  const near = { ...common, missing, ...(tolerance === undefined ? {} : { tolerance }) };
  if (target.anew === true || target.ground === true) return { ...near, state: 'off' };
  if (set) return { ...near, state: 'set' };
  if (target.basis === 'usual' && calledGood(inputs.findings ?? [], rule, change, asFound.value)) return { ...near, state: 'good' };
  const held = heldBy(inputs, rule, asFound, change + ((speed?.afterJobs ?? asFound).value - asFound.value));
  const off: Quantity = { dimension: asFound.dimension, value: change, uncertainty: asFound.uncertainty };
  return held.length > 0 ? { ...near, state: 'held', held, change: off } : { ...near, state: 'off', change: off };
}

/** How far it has to go from there to the nearer end of the target. */
const changeTo = ({ from, to }: SettingTarget, now: number): number => (from !== undefined && now < from.value ? from.value - now : to !== undefined && now > to.value ? to.value - now : 0);

/** Settings of which the place read lowest has to come within the target. */
const LOWEST_COUNTS: readonly string[] = ['cushions', 'straps'];

/** Of several places on the part the one read highest is shown, or lowest where less is worse: it is the one that has to come within the target. */
function foundOf({ known, values, system = 'inch' }: SettingInputs, rule: SettingRule): SettingLine['asFound'] {
  const keys = Object.keys(values).filter((key) => (key === rule.shownBy || key.startsWith(`${rule.shownBy}@`)) && !key.includes('#'));
  const read = keys.flatMap((key) => {
    const value = values[key];
    return value?.outcome.state === 'known' && value.standing !== 'assumed' ? [{ key, quantity: value.outcome.quantity, words: value.asWritten === undefined ? printQuantity(value.outcome.quantity, system) : writtenIn(value.outcome.quantity, value.asWritten, system) }] : [];
  });
  const [first] = read.sort((a, b) => (LOWEST_COUNTS.includes(rule.id) ? a.quantity.value - b.quantity.value : b.quantity.value - a.quantity.value));
  if (first !== undefined) return first;
  const look = known.looks[rule.shownBy];
  return look === undefined ? undefined : { key: look.key, words: answerWords(look.key, look.answer) };
}

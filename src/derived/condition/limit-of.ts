import type { LimitRule } from '../../knowledge/index.ts';
import { readQuantity, type Dimension, type Quantity } from '../../methods/quantity/index.ts';
import type { Value } from '../value.ts';
import { printQuantity, shopBar, SMALL_BAR, type PrintSystem } from '../print-system.ts';
import type { Limit } from './limit.ts';
import { oilWayFirst } from './oil-way-first.ts';

const DIMENSIONS: Readonly<Partial<Record<LimitRule['kind'], Dimension>>> = {
  'least-work-thickness': 'length', 'greatest-work-thickness': 'length', 'greatest-speed': 'rotation', 'greatest-bar': 'length',
  'greatest-tread': 'ratio', 'longest-run': 'time', 'oil-every': 'time', 'check-keys-every': 'time',
};

/** Half a millimetre: a least thickness below it forbids nothing that anybody would work. */
const NO_THICKNESS = 0.0005;

/**
 * Turns a rule of knowledge into the limit for this hammer; a limit whose figure is not known says so instead of a number.
 * @param oilWay how the oil way of the finding is called on this hammer, where it is about one
 * @returns undefined where the figure says that nothing needs forbidding: a least work thickness of nothing is no limit
 */
export function limitOf(values: ReadonlyMap<string, Value>, rule: LimitRule, finding: string, system: PrintSystem, oilWay?: string): Limit | undefined {
  if (rule.kind === 'oil-way-first') return oilWayFirst(oilWay, finding);
  if (rule.kind === 'light-work-only') return lightWork(values, rule, finding, system);
  const quantity = quantityOf(values, rule);
  if (rule.kind === 'least-work-thickness' && quantity !== undefined && quantity.value < NO_THICKNESS) return undefined;
  const figure = quantity === undefined ? 'a figure not known yet' : printQuantity(quantity, system, rule.kind.startsWith('least') ? 'up' : rule.kind.startsWith('greatest') ? 'down' : 'nearest');
  return { kind: rule.kind, sentence: rule.sentence.replaceAll('{value}', figure), because: [finding], ...(quantity === undefined ? {} : { quantity }) };
}

/** A bar that nobody gave a size is as small as everybody likes: light work says up to which. */
function lightWork(values: ReadonlyMap<string, Value>, rule: LimitRule, finding: string, system: PrintSystem): Limit {
  const largest = values.get('capacity.largest-bar')?.outcome;
  if (largest?.state !== 'known') return { kind: rule.kind, sentence: rule.sentence, because: [finding] };
  const quantity: Quantity = { dimension: 'length', value: shopBar(largest.quantity.value * SMALL_BAR, system), uncertainty: 0 };
  return { kind: rule.kind, sentence: rule.sentence.replace('small bars', `bars up to ${printQuantity(quantity, system)}`), because: [finding], quantity };
}

function quantityOf(values: ReadonlyMap<string, Value>, rule: LimitRule): Quantity | undefined {
  if (rule.value === undefined) return undefined;
  if ('from' in rule.value) {
    const value = values.get(rule.value.from);
    return value?.outcome.state === 'known' ? value.outcome.quantity : undefined;
  }
  const dimension = DIMENSIONS[rule.kind];
  if (dimension === undefined) throw new Error(`knowledge: a limit of kind ${rule.kind} takes no figure: ${rule.value.fixed}`);
  const reading = readQuantity(rule.value.fixed, { dimension, field: rule.kind });
  if (!reading.ok) throw new Error(`knowledge: the figure of a limit cannot be read: ${reading.problem.message}: ${rule.value.fixed}`);
  return reading.quantity;
}

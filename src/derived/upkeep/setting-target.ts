import type { SettingRule } from '../../knowledge/index.ts';
import { placeOf } from '../../hammer/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { DieEnd } from '../stack/index.ts';
import { usualGap } from '../worksheet/index.ts';
import { bowTarget, strapTarget } from './bow-target.ts';
import { cushionTarget } from './cushion-target.ts';
import { dieTarget } from './die-target.ts';
import { pulleySentence } from './motor-pulley.ts';
import { greatestSpeed } from './setting-limits.ts';
import type { SettingInputs, SettingTarget, Targeted } from './setting-line.ts';
import { springSetTarget, springTarget } from './spring-target.ts';
import { shopQuantity } from './shop-quantity.ts';

/** How much more than the work the gap may be. */
const GAP_OVER = '1/4 in';

/** What a setting of this hammer should be: its own values first, then what is usual. */
export function targetOf(inputs: SettingInputs, rule: SettingRule): Targeted {
  const system = inputs.system ?? 'inch';
  const known = (key: string): Quantity | undefined => {
    const outcome = inputs.values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  const either = (quantity: Quantity | undefined, basis: SettingTarget['basis'], sentence: string, missing: readonly string[]): Targeted =>
    quantity === undefined ? { missing } : { target: { from: quantity, to: quantity, basis, sentence, sources: ['common-practice'] }, missing: [] };
  switch (rule.id) {
    case 'speed':
      return withPulley(withinLimits(speedTarget(known, rule.tolerance), inputs), known, system);
    case 'upper-die':
      return dieTargeted('upper', inputs, known) ?? either(known('upper-die.height#as-made'), 'as-made', 'The height that the die was made with, or that of the die that replaces it.', ['upper-die.height#as-made']);
    case 'lower-die':
      return dieTargeted('lower', inputs, known) ?? either(known('lower-die.height#as-made'), 'as-made', plateSentence(known('stack.filler-plate'), system), ['lower-die.height#as-made']);
    case 'gap':
      return gapTarget(inputs, known);
    case 'spring':
      return springTarget(inputs, known);
    case 'spring-set':
      return springSetTarget(inputs, known);
    case 'straps':
      return strapTarget(known, system);
    case 'bow':
      return bowTarget(known, system);
    case 'cushions':
      return cushionTarget(inputs, known);
    case 'height-screws':
      return { target: { basis: 'usual', sentence: 'free to turn and locked, both alike', sources: [rule.source] }, missing: [] };
    case 'throw': {
      const made = known('crank.throw#as-made');
      return made !== undefined ? either(made, 'as-made', 'The throw that it was made with.', []) : either(known('crank.throw'), 'worked-out', 'As found: it is left alone unless every setting above is right and the blow is still wrong.', ['crank.throw']);
    }
    default:
      return rule.from === undefined && rule.to === undefined ? { missing: [] } : { target: usual(rule), missing: [] };
  }
}

/** Where the open jobs are known: the height that they leave the die with. */
function dieTargeted(end: DieEnd, { jobs, system = 'inch' }: SettingInputs, known: (key: string) => Quantity | undefined): Targeted | undefined {
  const target = jobs === undefined ? undefined : dieTarget(end, known, jobs, system);
  return target === undefined ? undefined : { target, missing: [] };
}

function speedTarget(known: (key: string) => Quantity | undefined, tolerance: string | undefined): Targeted {
  const made = known('running.rate#as-made');
  if (made !== undefined) {
    // Never above the maker's speed, so that what is near enough lies below it alone.
    const range = { from: { ...made, value: made.value - shopQuantity(tolerance ?? '0 rpm', 'rotation', 'speed').value, uncertainty: 0 }, to: { ...made, uncertainty: 0 } };
    return { target: { ...range, basis: 'as-made', sentence: 'Up to the maker’s speed, and never above it.', sources: ['common-practice'] }, missing: [] };
  }
  const working = known('class.working-rate');
  const greatest = known('class.rate');
  if (working === undefined || greatest === undefined) return { missing: ['running.rate#as-made'] };
  const start = { ...greatest, value: greatest.value * 0.8, uncertainty: 0 };
  const range = { from: start, to: { ...greatest, value: greatest.value * 0.85, uncertainty: 0 } };
  return { target: { ...range, basis: 'usual', sentence: 'The maker’s speed is not known: start 15 to 20 % under the greatest that is usual for the class.', sources: ['common-practice'] }, missing: ['running.rate#as-made'] };
}

/** With the motor pulley that gives the speed wanted. */
function withPulley(targeted: Targeted, known: (key: string) => Quantity | undefined, system: PrintSystem): Targeted {
  const { target } = targeted;
  if (target?.from === undefined || target.to === undefined) return targeted;
  return { ...targeted, target: { ...target, by: pulleySentence(known, { from: target.from, to: target.to }, system) } };
}

/** A speed is never wanted above what the limits card allows. */
function withinLimits(targeted: Targeted, { findings = [], system = 'inch' }: SettingInputs): Targeted {
  const { target } = targeted;
  const greatest = greatestSpeed(findings);
  if (target?.to === undefined || greatest === undefined || target.to.value <= greatest.value) return targeted;
  // The range keeps its width, or there would be no speed to hit.
  const from = target.from === undefined ? undefined : { ...target.from, value: greatest.value - (target.to.value - target.from.value) };
  return { ...targeted, target: { ...target, ...(from === undefined ? {} : { from }), to: { ...target.to, value: greatest.value }, sentence: `${target.sentence} The limits card allows no more than ${printQuantity(greatest, system, 'down')}.` } };
}

const plateSentence = (plate: Quantity | undefined, system: PrintSystem): string =>
  plate === undefined || plate.value === 0 ? 'The net height that the die was made with, above the seat’s true base.' : `The net height that the die was made with, on a filler plate of ${printQuantity(plate, system)}.`;

/** About the work or a little more; and the linkage has its room whatever the work. */
function gapTarget({ known: hammer, work }: SettingInputs, known: (key: string) => Quantity | undefined): Targeted {
  const least = known('stack.least-work-thickness');
  const warned = least !== undefined && least.value > 0 ? ' The linkage wants its room: nothing thinner than the limits card says is worked, whatever the gap.' : '';
  if (work !== undefined) {
    const from = { ...work, uncertainty: 0 };
    return { target: { from, to: { ...from, value: work.value + shopQuantity(GAP_OVER, 'length', 'gap').value }, basis: 'worked-out', sentence: `The thickness of the work, or up to a quarter of an inch more.${warned}`, sources: ['common-practice'] }, missing: [] };
  }
  const { from, to } = usualGap(hammer.identity.ramClass.quantity.value);
  return { target: { from, to, basis: 'usual', sentence: `About the thickness of the usual work, or a little more: usual for the class.${warned}`, sources: ['common-practice'] }, missing: [] };
}

function usual(rule: SettingRule): SettingTarget {
  const dimension = placeOf(rule.shownBy)?.place.dimension ?? 'length';
  const end = (text: string | undefined): Quantity | undefined => (text === undefined ? undefined : shopQuantity(text, dimension, rule.id));
  const from = end(rule.from);
  const to = end(rule.to);
  const sentence = from === undefined ? `Not above ${rule.to}.` : to === undefined ? `Not below ${rule.from}.` : `${rule.from} to ${rule.to}.`;
  return { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }), basis: 'usual', sentence, sources: [rule.source] };
}

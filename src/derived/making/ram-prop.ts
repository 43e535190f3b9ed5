import { propFor } from '../../methods/ground/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, estimateWarnings, FigureReader, reckon, sized, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { centreLine, line, rectangle, type Shape } from './shape.ts';
import { possible } from './possible.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'ram-prop';
const TITLE = 'Ram prop of hardwood';

/**
 * The timber that holds the ram up while hands are under it: smallest of the regulation's table for this weight and length; as long as the
 * dies stand apart with the crank at the top, less a little room; a helve lifts its head by the throw and the lengths of its arms.
 * @returns the part; not known without rest gap and throw; cannot be beyond the table
 */
export function makeRamProp(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const mass = reader.need('ram.mass|class.ram-mass');
  const gap = reader.need('upper-die.rest-gap');
  const crank = reader.need('crank.throw');
  const helve = known.identity.family === 'helve';
  const arms = helve ? [reader.need('helve.front-length'), reader.need('helve.rear-length')] : [];
  const lever = arms.flatMap((one) => one ?? []);
  if (mass === undefined || gap === undefined || crank === undefined || lever.length < arms.length) return reader.notKnown(KIND, TITLE);
  const length = { ...reckon('length', [gap, crank, shopFigure('prop-slack'), ...lever], (rest, thrown, room, front = 1, rear = 1) => rest! + (2 * thrown! * front) / rear - room!), estimate: [gap, crank, ...lever].some((one) => one.estimate) };
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  if (length.quantity.value <= 0) return cannot('There is no room for a prop between the dies with the crank at the top: rest gap or throw is wrong.', `The room between the dies must be above nothing; above ${printQuantity(shopFigure('prop-slack').quantity, context.system)} is allowed: ${printQuantity({ ...length.quantity, value: length.quantity.value + shopNumber('prop-slack'), uncertainty: 0 }, context.system)}`);
  const choice = propFor(mass.quantity.value, length.quantity.value);
  if (choice.state !== 'known') return cannot('The regulation’s table of wood props ends before this ram: steel props and an engineer.', choice.because);
  const { prop } = choice;
  const side = chosen(prop.side, 'length', 'osha-table-o-11');
  const dimensions: MakingDimension[] = [
    sized('length', 'length, for today’s dies', length, { plus: 0, minus: shopNumber('prop-slack') }, `rest gap and twice the throw${helve ? ' by the arms of the helve' : ''}, less 1/4 in (6 mm): it goes in with the crank at the top and leaves no room to fall`),
    sized('side', 'side, square, actual size', side, { plus: shopNumber('key-thickness'), minus: 0 }, `table O-11: hardwood ${prop.name} for a hammer of up to ${printQuantity({ dimension: 'mass', value: prop.hammerMass, uncertainty: 0 }, context.system).replace(/(\d)(\d{3}) lb/, '$1,$2 lb')}, up to ${printQuantity({ dimension: 'length', value: prop.length, uncertainty: 0 }, context.system)} long`),
  ];
  const out = context.alsoMade.has('lower-die') || context.alsoMade.has('filler-plate') ? reader.find('stack.lower-net|lower-die.height') : undefined;
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: 'Sound straight-grained hardwood, dry: oak, ash, hickory or maple; no knot, no shake, no pith', hardness: 'Does not apply', mass: prop.side ** 2 * length.quantity.value * STOCK_DENSITIES.oak, dimensions,
    shape: propShape(prop.side, length.quantity.value), unknowns: [], disputes: [],
    notes: [
      'Ends sawn square within 1/32 in (1 mm); grain runs with the length.',
      'Timber sold by its rough size measures 1/2 in (12 mm) less when it is dressed, and that does not count: the side is the actual one.',
      'Hole of 1/2 in (13 mm) through the middle of one side, 1 1/2 in (40 mm) from an end, with a cord, other end through a link to the starter’s lock: it must not run with the prop in. Paint it red.',
      'Bar the crank to the top by hand, set the prop upright on the lower die, let the ram down on it.',
      'Thrown away when split, crushed or soaked with oil.',
    ],
    cautions: ['isolate', 'block-ram', 'hands-out'], sources: ['osha-table-o-11', 'common-practice'],
    warnings: ['The length rests on crank and gap, not on a rule held between the dies: bar the ram up and measure the room before sawing.', ...(out === undefined ? [] : [withoutDie(length.quantity.value, out.quantity.value, mass.quantity.value, context)]), ...estimateWarnings(dimensions)],
  }, context.system);
}

/** With the lower die out the ram has further to fall: a prop for today's dies does not reach from the seat. */
function withoutDie(length: number, die: number, mass: number, context: MakingContext): string {
  const print = (one: number): string => printQuantity({ dimension: 'length', value: one, uncertainty: 0 }, context.system);
  const choice = propFor(mass, length + die);
  const longer = choice.state === 'known' ? `a second prop of about ${print(length + die)}, ${print(choice.prop.side)} square, set on the seat` : 'steel props and an engineer';
  return `With the lower die out this prop is too short by that die, ${print(die)}: for work in the seat ${longer}, measured before it is sawn.`;
}

function propShape(side: number, length: number): Shape {
  return {
    views: [
      { name: 'front', title: 'front', marks: [...rectangle(-side / 2, 0, side, length), centreLine([0, 0], [0, length])], dimensions: [{ kind: 'straight', of: 'length', from: [side / 2, 0], to: [side / 2, length], side: 'right', row: 1 }, { kind: 'straight', of: 'side', from: [-side / 2, 0], to: [side / 2, 0], side: 'below', row: 1 }] },
      { name: 'top', title: 'top', marks: [...rectangle(-side / 2, 0, side, side), line([-side / 2, 0], [side / 2, side], 'centre'), line([-side / 2, side], [side / 2, 0], 'centre')], dimensions: [] },
    ],
  };
}

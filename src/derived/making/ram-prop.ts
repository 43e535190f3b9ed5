import { propFor } from '../../methods/ground/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { chosen, estimateWarnings, FigureReader, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import type { RamHeld } from './ram-held.ts';
import { centreLine, line, rectangle, type Shape } from './shape.ts';
import { possible } from './possible.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'ram-prop';
const TITLE = 'Ram prop of hardwood';

/**
 * The timbers that hold the ram up while hands are under it: smallest of the regulation's table for this weight and length; as long as the
 * dies stand apart with the crank at the top, less a little room; a helve lifts its head by the throw and the lengths of its arms. One more
 * for each state in which an open job has a die out, longer by the die and by what the ram was raised before.
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
  const print = (one: number): string => printQuantity({ dimension: 'length', value: one, uncertainty: 0 }, context.system);
  const length = { ...reckon('length', [gap, crank, shopFigure('prop-slack'), ...lever], (rest, thrown, room, front = 1, rear = 1) => rest! + (2 * thrown! * front) / rear - room!), estimate: [gap, crank, ...lever].some((one) => one.estimate) };
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  if (length.quantity.value <= 0) return cannot('There is no room for a prop between the dies with the crank at the top: rest gap or throw is wrong.', `The room between the dies must be above nothing; above ${printQuantity(shopFigure('prop-slack').quantity, context.system)} is allowed: ${printQuantity({ ...length.quantity, value: length.quantity.value + shopNumber('prop-slack'), uncertainty: 0 }, context.system)}`);
  const states = (context.ramHeld ?? []).map((state) => ({ state, figure: withDiesOut(length, state, reader) }));
  const longer = states.flatMap(({ state, figure }) => (figure === undefined ? [] : [{ state, figure }]));
  const unread = [...new Set(states.flatMap(({ state, figure }) => (figure === undefined ? DIES[state.out] : [])))].filter((end) => netOf(end, reader) === undefined).map((end) => unknownPlace(`${end}-die.height`));
  const longest = Math.max(length.quantity.value, ...longer.map(({ figure }) => figure.quantity.value));
  const choice = propFor(mass.quantity.value, longest);
  if (choice.state !== 'known') return cannot('The regulation’s table of wood props ends before this ram: steel props and an engineer.', choice.because);
  const { prop } = choice;
  const side = chosen(prop.side, 'length', 'osha-table-o-11');
  const cut = { plus: 0, minus: shopNumber('prop-slack') };
  const dimensions: MakingDimension[] = [
    sized('length', longer.length === 0 ? 'length, for today’s dies' : 'length, both dies in, as today', length, cut, `rest gap and twice the throw${helve ? ' by the arms of the helve' : ''}, less 1/4 in (6 mm): it goes in with the crank at the top and leaves no room to fall`),
    ...longer.map(({ state, figure }, index) => sized(`length-${index + 1}`, `length, ${OUT_WORDS[state.out]} out, ${jobWords(state.jobs)}`, figure, cut, `the first and ${DIES[state.out].map((end) => `the ${end} die of ${print(netOf(end, reader)!.quantity.value)}`).join(' and ')}${state.raised > 0 ? `, and ${print(state.raised)}, by which the ram was moved up before` : ''}: ${FROM_TO[state.out]}`)),
    sized('side', 'side, square, actual size', side, { plus: context.system === 'inch' ? shopNumber('key-thickness') : 0.02, minus: 0 }, `table O-11: hardwood ${prop.name} for a hammer of up to ${printQuantity({ dimension: 'mass', value: prop.hammerMass, uncertainty: 0 }, context.system).replace(/(\d)(\d{3}) lb/, '$1,$2 lb')}, up to ${printQuantity({ dimension: 'length', value: prop.length, uncertainty: 0 }, context.system)} long`),
  ];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: longer.length === 0 ? TITLE : 'Ram props of hardwood', quantity: 1 + longer.length, material: 'Sound straight-grained hardwood, dry: oak, ash, hickory or maple; no knot, no shake, no pith', hardness: 'Does not apply', mass: prop.side ** 2 * longest * STOCK_DENSITIES.oak, dimensions,
    shape: propShape(prop.side, length.quantity.value, longer.length > 0), unknowns: unread, disputes: [],
    notes: [
      ...(longer.length === 0 ? [] : [`${1 + longer.length} props, each to its length in the table and marked with it and with its state. Never a short one on packing that can tip: with a die out the ram falls as much further.`, ...overPocket(prop.side, longer.map(({ state }) => state), reader, context)]),
      'Ends sawn square within 1/32 in (1 mm); grain runs with the length.',
      'Timber sold by its rough size measures 1/2 in (12 mm) less when it is dressed, and that does not count: the side is the actual one.',
      'Hole of 1/2 in (13 mm) through the middle of one side, 1 1/2 in (40 mm) from an end, with a cord, other end through a link to the starter’s lock: it must not run with the prop in. Paint it red.',
      `Bar the crank to the top by hand, set the prop upright on the lower die, let the ram down on it.${longer.length === 0 ? '' : ' Before a die comes out, change to the next longer one: the die is drawn with the ram on blocks beside it, then the long prop is set.'}`,
      'Thrown away when split, crushed or soaked with oil.',
    ],
    cautions: ['isolate', 'block-ram', 'hands-out'], sources: ['osha-table-o-11', 'common-practice'],
    warnings: [
      'The length rests on crank and gap, not on a rule held between the dies: bar the ram up and measure the room before sawing.',
      ...(unread.length === 0 ? [] : ['A job takes a die out whose height was not read: for that state no length is given. Measure from floor to floor with the crank at the top, and saw a prop for it before the die is drawn.']),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

const DIES: Readonly<Record<RamHeld['out'], readonly ('lower' | 'upper')[]>> = { lower: ['lower'], upper: ['upper'], both: ['lower', 'upper'] };
const OUT_WORDS: Readonly<Record<RamHeld['out'], string>> = { lower: 'lower die', upper: 'upper die', both: 'both dies' };
const FROM_TO: Readonly<Record<RamHeld['out'], string>> = { lower: 'from the floor of the seat to the upper die', upper: 'from the lower die to the floor of the ram’s dovetail', both: 'from the floor of the seat to the floor of the ram’s dovetail' };

/** Height of a die above the floor that it stands on. */
const netOf = (end: 'lower' | 'upper', reader: FigureReader): Figure | undefined => reader.find(`stack.${end}-net|${end}-die.height`);

const jobWords = (jobs: readonly number[]): string => (jobs.length < 2 ? `job ${jobs.join('')}` : `jobs ${jobs.slice(0, -1).join(', ')} and ${jobs.at(-1)!}`);

/** The room with a die out: its height more, and as much as the ram was raised; undefined where a height was not read. */
function withDiesOut(length: Figure, state: RamHeld, reader: FigureReader): Figure | undefined {
  const dies = DIES[state.out].map((end) => netOf(end, reader));
  const heights = dies.flatMap((one) => one ?? []);
  if (heights.length < dies.length) return undefined;
  return { ...reckon('length', [length, ...heights], (room, ...high) => room! + high.reduce((sum, one) => sum + one, 0) + state.raised), estimate: [length, ...heights].some((one) => one.estimate) };
}

/** A prop that is wider than a seat or dovetail does not go in it: how it then stands. */
function overPocket(side: number, states: readonly RamHeld[], reader: FigureReader, context: MakingContext): readonly string[] {
  const print = (one: number): string => printQuantity({ dimension: 'length', value: one, uncertainty: 0 }, context.system);
  const narrow = ([['lower', 'seat.width', 'the seat'], ['upper', 'ram.dovetail-width', 'the ram’s dovetail']] as const).flatMap(([end, key, name]) => {
    const wide = reader.find(key)?.quantity.value;
    return wide !== undefined && wide < side && states.some((state) => DIES[state.out].includes(end)) ? [`${name}, ${print(wide)} wide`] : [];
  });
  return narrow.length === 0 ? [] : [`A prop of ${print(side)} does not go into ${narrow.join(', nor into ')}: lay a hard block as wide as the slot on its floor, standing over the rim, and saw the prop shorter by what the block is high. Never on one rim alone.`];
}

function propShape(side: number, length: number, several: boolean): Shape {
  return {
    views: [
      { name: 'front', title: 'front', marks: [...rectangle(-side / 2, 0, side, length), centreLine([0, 0], [0, length])], dimensions: [{ kind: 'straight', of: 'length', from: [side / 2, 0], to: [side / 2, length], side: 'right', row: 1, ...(several ? { words: 'length: see the table' } : {}) }, { kind: 'straight', of: 'side', from: [-side / 2, 0], to: [side / 2, 0], side: 'below', row: 1 }] },
      { name: 'top', title: 'top', marks: [...rectangle(-side / 2, 0, side, side), line([-side / 2, 0], [side / 2, side], 'centre'), line([-side / 2, side], [side / 2, 0], 'centre')], dimensions: [] },
    ],
  };
}

import { activeCoils, EUROPEAN_SHEAR_MODULUS, helicalRate, helicalStress, solidLength, springIndex, wahlFactor, type CoilEnds } from '../../methods/elements/index.ts';
import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { doubtWarnings, estimateWarnings, FigureReader, plusMinus, reckon, sized, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { roundPressure } from './round-pressure.ts';
import { possible } from './possible.ts';
import { centreLine, circle, line, type Mark, type Shape } from './shape.ts';
import { shopFigure } from './shop-figures.ts';
import { coilEndsOf } from '../spring/index.ts';
import { springAsSet, springTarget } from '../upkeep/index.ts';
import { easierSpring, FREE_LENGTH_TOLERANCE, wireAnswers } from './spring-choice.ts';
import { seenShortWords } from './spring-seen-short.ts';

const KIND = 'coil-spring';
const TITLE = 'Coil spring, order sheet';
const MODULUS = EUROPEAN_SHEAR_MODULUS['oil-hardened'];
/** Amplitude that unpeened spring wire stands for ever, Pa: 35 ksi. */
const ENDLESS_AMPLITUDE = 241e6;

/**
 * A coil spring to order: to the size as made where that is known, with rate, travel to solid, stress, the wire that stands it, and what
 * repeated blows ask of it.
 * @returns the part; not known without wire, inside diameter, coils and free length; cannot be where the coils already touch
 */
export function makeCoilSpring(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const size = (place: string): Figure | undefined => reader.need(`coil-spring.${place}#as-made|coil-spring.${place}`);
  const wire = size('wire');
  const inside = size('inside-diameter');
  const coils = size('coils');
  const free = size('free-length');
  if (wire === undefined || inside === undefined || coils === undefined || free === undefined) return reader.notKnown(KIND, TITLE);
  const { ends, answer } = coilEndsOf(known.looks);
  const print = (quantity: Quantity): string => printQuantity(quantity.dimension === 'pressure' ? roundPressure(quantity.value, context.system) : { ...quantity, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  if (activeCoils(coils.quantity.value, ends) < 1) return cannot('Fewer than one coil would work: count the coils again, from tip to tip.', `The coils must leave one that works; 3 and more are allowed: ${coils.quantity.value}`);
  const solid = reckon('length', [wire, coils], (d, n) => solidLength(d!, n!, ends));
  if (solid.quantity.value >= free.quantity.value) return cannot('The coils of this spring would touch with no load on it: wire, coils or length is wrong.', `The free length must be above the solid length; above ${print(solid.quantity)} is allowed: ${print(free.quantity)}`);
  const travel = reckon('length', [free, wire, coils], (long, d, n) => long! - solidLength(d!, n!, ends));
  const rate = reckon('stiffness', [wire, inside, coils], (d, hole, n) => helicalRate(MODULUS, d!, hole! + d!, activeCoils(n!, ends)));
  const stressAt = (deflection: Figure) => reckon('pressure', [wire, inside, coils, deflection], (d, hole, n, down) => stress(d!, hole!, activeCoils(n!, ends), down!));
  const keep = shopFigure('travel-kept');
  const atSolid = stressAt(travel);
  const shortest = reader.find('coil-spring.shortest-length');
  // The length to set it at is that of the setting sheet; where that is not known yet, as the old one stood.
  const ordered = { known, values, jobs: new Set(['spring.renew']), system: context.system };
  const find = (key: string): Quantity | undefined => reader.find(key)?.quantity;
  const { set } = springAsSet(ordered, find);
  const stood = reader.find('coil-spring.installed-length');
  const installed: Figure | undefined = set === undefined ? stood : { quantity: set.length, from: ['coil-spring.installed-length', 'coil-spring.shortest-length', ...free.from, ...wire.from, ...coils.from], estimate: false, sources: set.target.sources };
  const least = springTarget(ordered, find).target?.from?.value ?? free.quantity.value;
  const byTravel = reckon('length', [travel, keep], (all, share) => all! * (1 - share!));
  // Where the wire is loaded to what it stands before the last fifth, travel ends there.
  const limit = Math.min(1, (free.quantity.value - least) / byTravel.quantity.value);
  const byStress = limit < 1 - 1e-9;
  const useful = byStress ? reckon('length', [travel, keep], (all, share) => all! * (1 - share!) * limit) : byTravel;
  const dimensions: MakingDimension[] = [
    sized('wire', 'wire', wire, plusMinus(wire.quantity.value * 0.01), 'as made, or measured where it is not worn'),
    sized('inside-diameter', 'inside diameter', inside, { plus: inside.quantity.value * 0.02, minus: 0 }, 'clear of bolt and carrier; a spring closes in as it is wound'),
    sized('free-length', 'free length', free, plusMinus(free.quantity.value * FREE_LENGTH_TOLERANCE), reader.find('coil-spring.free-length#as-made') === undefined ? 'as measured: an old spring has set, the new one was longer' : 'as made'),
    sized('coils', 'coils in all, tip to tip', coils, plusMinus(0.25), 'as made'),
    sized('working-coils', 'working coils', reckon('count', [coils], (all) => activeCoils(all!, ends)), plusMinus(0), ends === 'plain' ? 'all of them: the ends are open' : 'the rest lie dead at the ends'),
    sized('outside-limit', 'outside diameter, at most', { ...reckon('length', [inside, wire], (hole, d) => 1.02 * hole! + 2.02 * d!), estimate: false }, plusMinus(0), 'bore and wire at their largest; it grows a little more as it is pressed'),
    sized('solid-length', 'solid length', { ...solid, estimate: false }, plusMinus(0), 'coils touching; follows from wire and coils'),
    sized('travel', 'travel from free to solid', travel, plusMinus(0), 'free length less solid length'),
    sized('greatest-travel', 'greatest travel in use', { ...useful, estimate: travel.estimate }, plusMinus(0), byStress ? 'beyond this even the strongest of the wires is loaded over what it stands' : 'a fifth of the travel is kept, so that it never goes solid'),
    sized('rate', 'rate', rate, plusMinus(rate.quantity.value * 0.1), 'shear modulus x wire to the fourth / (8 x mean diameter cubed x working coils); one in ten is a commercial tolerance'),
    sized('stress-solid', 'stress if it ever goes solid', atSolid, plusMinus(0), 'with Wahl’s factor'),
    ...(installed === undefined ? [] : [
      sized('installed-length', `installed length${set === undefined ? '' : ', or more'}`, installed, plusMinus(0), set === undefined ? 'as the old one stood; how short it runs is not read yet, and the setting sheet waits for it' : 'as the setting sheet has it: what it may run down to, and what it runs shorter than it stands'),
      sized('preload', 'load at the installed length', reckon('force', [rate, free, installed], (k, long, at) => k! * (long! - at!)), plusMinus(rate.quantity.value * 0.1 * Math.max(0, free.quantity.value - installed.quantity.value)), 'rate times what the nut takes up'),
    ]),
  ];
  const answers = wireAnswers(wire.quantity.value);
  const enough = answers.find((one) => one.permissible >= atSolid.quantity.value);
  const inUse = stressAt(useful);
  const easier = enough === answers[0] ? undefined : easierSpring(inside.quantity.value, rate.quantity.value, travel.quantity.value, free.quantity.value, ends, context.system === 'metric');
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1,
    material: `${capital((enough ?? answers.at(-1))?.words ?? 'alloy spring steel')}, quenched and tempered, shot-peened, set once solid by the maker`, hardness: 'About 45 to 50 HRC, by the spring maker',
    mass: (Math.PI / 4) * wire.quantity.value ** 2 * Math.PI * (inside.quantity.value + wire.quantity.value) * coils.quantity.value * STOCK_DENSITIES.steel,
    dimensions, shape: springShape(wire.quantity.value, inside.quantity.value, coils.quantity.value, free.quantity.value, ends), unknowns: [], disputes: [],
    notes: [
      `Ends ${answer === '' ? 'closed and ground flat; nobody looked at the old ones' : answer.replaceAll('-', ' ')}. Either hand unless springs nest.${squareWords(ends, free.quantity.value, context.system)}`,
      `Works up to ${print(useful.quantity)} of travel, stress then ${print(inUse.quantity)}.`,
      `Solid it would see ${print(atSolid.quantity)}; of this size ${answers.map((one) => `${one.words.replace(' spring steel', '')} stands ${print(pressure(one.older))} by the older table${one.newer === undefined ? '' : ` and ${print(pressure(one.newer))} by the newer`}`).join(', ')}. ${answers.some((one) => one.newer !== undefined) ? 'The tables do not agree; chosen by the lower, and the wire maker’s own sheet decides.' : 'The newer table is not printed for wire this thick; the wire maker’s own sheet decides.'}`,
      fatigueNote(installed, set?.least ?? shortest?.quantity, set === undefined ? 'the shortest length seen' : 'the shortest allowed', free, (down) => stress(wire.quantity.value, inside.quantity.value, activeCoils(coils.quantity.value, ends), down), useful.quantity.value, print),
      ...(easier === undefined ? [] : [`Same rate and bore in plain oil-tempered wire that may go solid: wire ${print(length(easier.wire))}, ${easier.totalCoils} coils, free ${print(length(easier.freeLength))}, outside ${print(length(easier.outsideDiameter))}. Only where box and bolt have room for it.`]),
    ],
    cautions: ['spring-unload', 'stand-aside', 'isolate'], sources: ['en-13906-1', 'bhandari-springs', 'spring-wire-strength', 'zimmerli', 'spring-tolerances'],
    warnings: [
      ...(enough === undefined ? ['If it ever goes solid the stress is over what any of these wires is meant for: it must never go solid, and that is set with the nut and the throw.'] : []),
      ...(shortest !== undefined && shortest.quantity.value < least ? [`Running it was seen as short as ${print(shortest.quantity)}: that is beyond the greatest travel in use. Find out why before a new one is fitted. ${seenShortWords({ wire: wire.quantity.value, inside: inside.quantity.value, coils: coils.quantity.value, free: free.quantity.value, ends, rate: rate.quantity.value, least, keep: keep.quantity.value, ...(set === undefined ? {} : { set }) }, shortest.quantity.value, reader, context.system)}`] : []),
      ...doubtWarnings(dimensions.slice(0, 3), 'inch', KIND), ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

const stress = (wire: number, inside: number, active: number, down: number): number =>
  helicalStress(helicalRate(MODULUS, wire, inside + wire, active) * down, inside + wire, wire, wahlFactor(springIndex(inside + wire, wire)));
const length = (value: number): Quantity => ({ dimension: 'length', value, uncertainty: 0 });
const pressure = (value: number): Quantity => ({ dimension: 'pressure', value, uncertainty: 0 });
/** How square the ends are to stand: 3 degrees is usual for ground ends, from memory. */
const squareWords = (ends: CoilEnds, free: number, system: MakingContext['system']): string =>
  ends === 'cold-ground' || ends === 'plain-ground' ? ` Ends square to the axis within 3 degrees: stood on a plate beside a square, no coil stands off by more than ${printQuantity(length(free * Math.tan(Math.PI / 60)), system, 'down')}.` : ' Ends that are not ground are never square: seats with a step, or have them ground.';
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Half the swing of stress between the installed and the shortest length, against what wire stands for ever. */
function fatigueNote(installed: Figure | undefined, shortest: Quantity | undefined, shortestWords: string, free: Figure, stressAt: (down: number) => number, useful: number, print: (quantity: Quantity) => string): string {
  if (installed === undefined) return 'Fatigue: not known until the installed length is measured; the spring sees every blow, 18,000 in an hour at 300 a minute.';
  const most = shortest === undefined ? useful : free.quantity.value - shortest.value;
  const least = Math.max(0, free.quantity.value - installed.quantity.value);
  const half = Math.max(0, (stressAt(most) - stressAt(least)) / 2);
  const to = shortest === undefined ? 'the greatest travel in use' : shortestWords;
  return `Fatigue: from the installed length down to ${to} the stress swings by ${print(pressure(half))} to each side; wire that is not peened stands ${print(pressure(ENDLESS_AMPLITUDE))} for ever. ${half > ENDLESS_AMPLITUDE ? 'It will break one day: a guard stays in front, and a spare is kept.' : 'That is enough while there is no pit and no clash.'}`;
}

/** The spring cut open: sections of the wire on both sides, and the coils behind them. */
function springShape(wire: number, inside: number, coils: number, free: number, ends: CoilEnds): Shape {
  const r = wire / 2;
  const mean = (inside + wire) / 2;
  const turns = Math.max(2, Math.round(coils * 2));
  const marks: Mark[] = [];
  const closed = ends === 'cold-ground' || ends === 'cold-unground' ? 2 : 0;
  const heights = Array.from({ length: turns + 1 }, (_, half) => coilHeight(half / 2, turns / 2, wire, free, closed));
  heights.forEach((y, half) => {
    const side = half % 2 === 0 ? -1 : 1;
    marks.push(circle([side * mean, y], r));
    const next = heights[half + 1];
    if (next !== undefined && side === -1) marks.push(line([-mean, y + r], [mean, next + r]), line([-mean, y - r], [mean, next - r]));
  });
  marks.push(line([-mean - r, 0], [mean + r, 0]), line([-mean - r, free], [mean + r, free]), centreLine([0, 0], [0, free]));
  return {
    views: [{
      name: 'front', title: 'cut open', marks,
      dimensions: [
        { kind: 'straight', of: 'free-length', from: [mean + r, 0], to: [mean + r, free], side: 'right', row: 1 },
        { kind: 'straight', of: 'inside-diameter', from: [-mean + r, heights[2] ?? 0], to: [mean - r, heights[2] ?? 0], side: 'below', row: 1, sign: 'Ø' },
        { kind: 'leader', of: 'wire', at: [-mean - r * Math.SQRT1_2, (heights[turns - (turns % 2) - 2] ?? free / 2) + r * Math.SQRT1_2], toward: [-2, 2], sign: 'Ø' },
        { kind: 'leader', of: 'coils', at: [-mean - r, heights[2] ?? 0], toward: [-2.4, 1] },
      ],
    }],
  };
}

/** Height of the wire's centre after a number of turns: closed at the ends, even between. */
function coilHeight(turn: number, turns: number, wire: number, free: number, closed: number): number {
  const r = wire / 2;
  if (closed === 0) return r + ((free - wire) * turn) / turns;
  if (turn <= 1) return r + (wire * turn) * 0.95;
  if (turn >= turns - 1) return free - r - wire * (turns - turn) * 0.95;
  return r + wire * 0.95 + ((free - wire - 1.9 * wire) * (turn - 1)) / (turns - 2);
}

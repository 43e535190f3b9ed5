import { capacityInputOf, capacityOf, steadyBar, type Capacity, type Ranged } from '../../derived/capacity/index.ts';
import type { PrintSystem, Value } from '../../derived/index.ts';
import { CRUSHER_METALS } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Block } from '../report/block.ts';
import { keyWords } from '../work/key-words.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import { inSystem } from '../sentences/in-system.ts';
import { assumptionTable } from './assumption-table.ts';
import { reductionGraph } from './reduction-graph.ts';
import { missingOf, type OutlookGround, type SheetParts } from './sheet-parts.ts';
import { numberOf, shownOutcome, shownPlain, shownRange, shownRough } from './shown.ts';

/** Bars that stand in the table, as stock is sold, m. */
const BARS: Readonly<Record<PrintSystem, readonly number[]>> = { inch: [0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4].map((side) => side * 0.0254), metric: [0.012, 0.016, 0.02, 0.025, 0.03, 0.04, 0.05, 0.065, 0.08, 0.1] };
/** Draws for each bar: intervals to about a tenth of their width. */
const DRAWS = 200;
const READ: readonly (readonly [key: string, why: string])[] = [
  ['running.test-bar-thickness', 'a strike test on a hot bar reads the energy back from the steel itself, and tests every other figure here'],
  ['ram.mass', 'the energy grows with it'], ['running.rate', 'the energy grows with its square'], ['crank.throw', 'the energy grows with its square'],
  ['upper-die.face-width|upper-die.width', 'the narrower die sets how much steel a blow moves'], ['lower-die.face-width|lower-die.width', 'the narrower die sets how much steel a blow moves'], ['anvil.mass', 'it sets how much of the blow stays in the work'],
];

/** One bar of the table and of the graph. */
export interface BarRow {
  readonly size: number;
  readonly answer: Capacity;
}

/** What the hammer forges: largest bar, what a blow takes off bars of several sizes, and how far that can be trusted. */
export function capacitySheet(ground: OutlookGround): SheetParts {
  const { picture, outlook } = ground;
  const { system } = picture;
  const { values } = outlook;
  const ledger = { family: picture.known.identity.family, values: new Map(Object.entries(values)) };
  const input = capacityInputOf(ledger, 0.0254);
  const largest = values['capacity.largest-bar'];
  const inch = 'state' in input ? undefined : capacityOf({ ...input, draws: DRAWS }, picture.provenance.seed);
  const barRows = (): readonly BarRow[] => ('state' in input ? [] : BARS[system].flatMap((size) => {
    const answer = capacityOf({ ...input, bar: { ...input.bar, size }, draws: DRAWS }, picture.provenance.seed);
    return answer.state === 'known' && answer.reductionHot.state === 'known' ? [{ size, answer }] : [];
  }));
  const capacity = inch?.state === 'known' ? inch : undefined;
  const missing = missingOf(picture, READ.map(([key]) => key));
  return {
    answer: answerOf(ground, capacity),
    measureFirst: READ.flatMap(([key, why]) => missing.filter((one) => key.split('|')[0] === one).map((one) => onceItMayRun(picture, [one], `${keyWords(one)}: ${why}.`))),
    body: () => {
      const rows = barRows();
      return [
        ...(rows.length < 2 ? [] : graphBlocks(ground, rows)),
        ...(rows.length === 0 ? [] : [tableOf(rows, system)]),
        ...(capacity === undefined ? [] : blowBlocks(ground, capacity)),
        ...strikeBlocks(ground),
      ];
    },
    assumed: [`Mild steel of 0.2 % carbon at bright orange (${formatQuantity({ dimension: 'temperature', value: 1343, uncertainty: 30 }, { system, doubt: false })}), struck between flat dies; tool steels and stainless take two to three times the work (from memory).`],
    ...(capacity === undefined ? {} : { assumedTable: assumptionTable(capacity.assumed, system) }),
    doubt: [
      ...(capacity?.notes ?? []),
      `Largest bar is the square from which a full blow still takes ${shownPlain(capacity?.leastReduction ?? 0.006, 'ratio', 'metric', { unit: 'percent' })} of the thickness; that share is chosen so that usual hammers come out at the bars that the trade names for their class. By the plain rule of the class it is ${shownOutcome(values['capacity.largest-bar-by-class'], system)}.`,
      'Energy of the blow comes from the motion of this hammer as simulated, within the doubt of its readings; the model was held against no real hammer. Here the brackets hold 95 of a hundred of its likenesses, on the motion sheet nine in ten.',
      ...(largest?.warning === undefined ? [] : [largest.warning]),
    ],
    cautions: ['no-cold-blow', 'least-thickness', 'tongs', 'eyes', 'hearing'],
    defers: 'The limits on the card come before these figures, and so do local rules for forging machines. Start small, and stop when the sound or the blow changes.',
    sources: ['hot-flow-stress', 'cold-flow-stress', 'rigid-body-mechanics', 'own-model', 'asm-forging-hammers', 'common-practice', 'from-memory'],
  };
}

function answerOf({ picture, outlook: { values } }: OutlookGround, capacity: Capacity | undefined): SheetParts['answer'] {
  const { duty, system } = picture;
  const largest = values['capacity.largest-bar'];
  const [byWork, byClass] = ['capacity.largest-bar-by-work', 'capacity.largest-bar-by-class'].map((key) => shownOutcome(values[key], system));
  const missing = missingOf(picture, READ.map(([key]) => key).filter((key) => key !== 'running.test-bar-thickness' && key !== 'anvil.mass'));
  const estimate = missing.length > 0 || largest?.outcome.state !== 'known';
  const steady = steadyBar(values, duty.limits, system);
  const side = (size: number): string => `${shownPlain(size, 'length', system)} square`;
  const ready = duty.verdict !== 'stand-down' && duty.verdict !== 'not-known-yet';
  const held = duty.limits.filter((limit) => ['greatest-bar', 'greatest-work-thickness', 'least-work-thickness', 'greatest-tread', 'light-work-only', 'flat-dies-only'].includes(limit.kind)).map((limit) => inSystem(limit.sentence, system));
  const does = capacity === undefined ? [] : [`A full blow takes ${shownRange(capacity.reductionHot, 'ratio', system, 'percent')} off the thickness of a ${system === 'inch' ? '1 in' : '25.4 mm'} square bar, and one heat holds about ${capacity.blowsPerHeat.state === 'known' ? `${Math.round(capacity.blowsPerHeat.low)} to ${Math.round(capacity.blowsPerHeat.high)}` : 'as many as are wanted'} full blows.`];
  return {
    kind: 'answer', estimate,
    words: steady === undefined ? 'Largest bar: not known yet' : !ready ? `None today. Once it may run: ${side(steady.within)}` : steady.within < steady.cured ? `Largest bar for steady work today: ${side(steady.within)}` : `Largest bar for steady work: ${side(steady.within)}`,
    sentence: [...(steady === undefined || steady.within === steady.cured ? [] : [`With everything cured that limits it: ${side(steady.cured)}.`]), ...blowWords(values, system), ...does, ...(held.length === 0 ? [] : [`By its limits: ${held.join(' ')}`])].join(' '),
    rests: largest?.outcome.state === 'known' ? `${estimate ? 'It rests on figures that nobody read on this hammer' : 'From ram, rate, throw and dies as read, through the simulated motion of this hammer'}: ${byWork} by what the blow does, ${byClass} by the rule of its class; the lesser of them${largest.outcome.state === 'known' ? `, ${unrounded(largest.outcome.quantity.value, system)}` : ''}, brought down to a side that is sold (${system === 'inch' ? 'eighths of an inch, quarters from 2 in' : 'whole millimetres, fives from 20 mm, tens from 50 mm'}).` : 'Too little was read on this hammer to work it out.',
  };
}

/** The blow on which the bar rests, with its doubt, where half or twice of it is within that. */
function blowWords(values: OutlookGround['outlook']['values'], system: PrintSystem): readonly string[] {
  const blow = values['capacity.blow-energy']?.outcome;
  const bounds = blow?.state === 'known' ? blow.quantity.interval : undefined;
  if (blow?.state !== 'known' || bounds === undefined || bounds[1] < WIDE * Math.max(bounds[0], Number.MIN_VALUE)) return [];
  return [`These bars rest on a blow of ${shownOutcome(values['capacity.blow-energy'], system)}, which nobody measured: begin well below them.`];
}

/** A blow that may be so many times as hard at one end of its doubt as at the other is no ground for a size by itself. */
const WIDE = 4;

/** A side cut, never raised, behind the thousandth of an inch or the tenth of a millimetre, so that whoever rounds it down himself gets the bar of the answer. */
function unrounded(size: number, system: PrintSystem): string {
  const [unit, digits, name] = system === 'inch' ? [0.0254, 3, 'in'] as const : [0.001, 1, 'mm'] as const;
  return `${(Math.floor((size / unit) * 10 ** digits + 1e-3) / 10 ** digits).toFixed(digits)} ${name} before rounding`;
}

function graphBlocks({ outlook: { values }, picture: { system, duty }, width }: OutlookGround, rows: readonly BarRow[]): readonly Block[] {
  const bar = values['capacity.largest-bar-by-work']?.outcome;
  const steady = steadyBar(values, duty.limits, system);
  const die = [numberOf(values, 'upper-die.face-width') ?? numberOf(values, 'upper-die.width'), numberOf(values, 'lower-die.face-width') ?? numberOf(values, 'lower-die.width')].filter((one) => one !== undefined);
  const drawn = reductionGraph(rows.map(({ size, answer }) => ({ size, hot: answer.reductionHot, last: answer.reductionAtFinish })), { least: rows[0]!.answer.leastReduction, ...(bar?.state !== 'known' ? {} : { largestWords: formatQuantity(bar.quantity, { system }) }), ...(steady === undefined ? {} : { bar: steady.within }), ...(die.length === 0 ? {} : { die: Math.min(...die) }), system, width: width ?? 'sheet' });
  return [
    { kind: 'heading', level: 2, text: 'What a full blow takes off' },
    { kind: 'figure', svg: drawn.svg, words: drawn.words, tallest: 60, caption: 'Share of the thickness by one full blow against the side of a square bar, both scales by powers. Hatched: 95 of a hundred, bright orange. Dashed: the last blow before forging stops. Red at the lower edge: the bar of the answer above.' },
  ];
}

const share = (ranged: Ranged, system: PrintSystem): string => (ranged.state === 'known' ? shownRange(ranged, 'ratio', system, 'percent') : 'no figure');
const count = (ranged: Ranged): string => (ranged.state === 'known' ? `${Math.round(ranged.value)} (${Math.round(ranged.low)} to ${Math.round(ranged.high)})` : 'no end by cooling');

function tableOf(rows: readonly BarRow[], system: PrintSystem): Block {
  return {
    kind: 'table', caption: 'Square bars of mild steel; figures in brackets hold 95 of a hundred. The last column is the chance that a full blow still moves the bar as steady work wants.',
    dense: true, columns: ['Bar', 'By a blow, bright orange', 'By the last blow', 'Blows in a heat', 'Time of a heat', 'Moves it'],
    rows: rows.map(({ size, answer }) => ({
      cells: [shownPlain(size, 'length', system), share(answer.reductionHot, system), share(answer.reductionAtFinish, system), count(answer.blowsPerHeat), answer.heatTime.state === 'known' ? shownRough(answer.heatTime.value, 'time', system) : 'no end by cooling', answer.chanceThatItMoves === undefined ? 'no figure' : `${Math.round(100 * answer.chanceThatItMoves)} %`],
    })),
  };
}

function blowBlocks({ outlook: { values }, picture: { system } }: OutlookGround, capacity: Capacity): readonly Block[] {
  const { force, coolingBetweenBlows } = capacity;
  return [
    { kind: 'heading', level: 2, text: 'The blow behind it' },
    { kind: 'facts', rows: [
      ['Energy of a full blow', shownOutcome(values['capacity.blow-energy'], system)],
      ['Into the work', `${shownRange(capacity.efficiency, 'ratio', system, 'percent')}; anvil to ram ${shownOutcome(values['capacity.anvil-ratio'], system)}`],
      ['Energy into the work', shownRange(capacity.energyIntoWork, 'energy', system)],
      ['Greatest force', `${shownRange(force.upset, 'force', system)} as an upset, ${shownRange(force.drawing, 'force', system)} where it is drawn out`],
      ['Power against the motor', shownOutcome(values['capacity.blow-power-share'], system)],
      ['Cools between two blows', `${kelvins(coolingBetweenBlows.byAir)} by air, ${kelvins(coolingBetweenBlows.byDies)} by the dies; the blow itself warms it by ${kelvins(coolingBetweenBlows.byWork)}`],
    ] },
    { kind: 'table', caption: `Two published laws of hot steel side by side, at the best estimates, on a ${system === 'inch' ? '1 in' : '25.4 mm'} square bar`, dense: true, columns: ['Law', 'Stress', 'By a blow', 'Largest bar', 'How far it was read'], rows: capacity.byLaw.map((law) => ({
      cells: [law.law, law.blow.state === 'known' ? shownRough(law.blow.stress, 'pressure', system) : `no figure on this bar: ${shortNumbers(law.blow.because)}`, law.blow.state === 'known' ? shownPlain(law.blow.share, 'ratio', system, { unit: 'percent', resolution: 0.001 }) : '', law.largestBar.state === 'known' ? shownPlain(law.largestBar.size, 'length', system, { resolution: system === 'inch' ? 0.0254 / 8 : 0.001 }) : `no figure: ${shortNumbers(law.largestBar.because)}`, law.standing],
    })) },
  ];
}

/** Numbers inside a reason, cut to what a reader wants of them. */
const shortNumbers = (text: string): string => text.replaceAll(/\d+\.\d{3,}/gu, (one) => Number(one).toPrecision(3));

/** A difference of temperature is said in kelvin, which is a degree Celsius; a Fahrenheit degree is five ninths of it. */
const kelvins = (ranged: Ranged): string => (ranged.state === 'known' ? `${ranged.value.toFixed(1)} K` : 'no figure');

function strikeBlocks({ outlook: { values }, picture: { system } }: OutlookGround): readonly Block[] {
  const test = values['capacity.strike-test-energy'];
  const done = test?.outcome.state === 'known';
  const crushers = CRUSHER_METALS.flatMap(({ id, title, standing }) => {
    const read = values[`capacity.${id}-crusher-energy`];
    return read === undefined || read.outcome.state === 'not-known' ? [] : [[`Energy by a crusher of ${title}`, `${shownOutcome(read, system)}; its flow: ${inSystem(standing, system)}`] as const];
  });
  return [
    { kind: 'heading', level: 2, text: 'Strike test' },
    done
      ? { kind: 'facts', rows: [['Energy by the test', shownOutcome(test, system)], ['Against the estimate', shownOutcome(values['capacity.strike-test-ratio'], system)], ['What that says', ratioWords(values['capacity.strike-test-ratio'])]] }
      : { kind: 'paragraph', text: `Not made yet. Five full blows on ${system === 'inch' ? '1 in square mild steel, bright orange, 2 in' : '25 mm square mild steel, bright orange, 50 mm'} of it under flat dies; thickness at the four corners, length under the dies and the colour written down. The program reads the energy of the blow back from it.` },
    ...(crushers.length > 0 ? [{ kind: 'facts', rows: crushers } as const] : [{ kind: 'paragraph', text: 'Without a fire: one full blow on a round of annealed copper stood on end, cold, so high that the dies never come near each other. Diameter, height before and height after.' } as const]),
  ];
}

/** Whether the steel and the model agree within what both are known to. */
function ratioWords(ratio: Value | undefined): string {
  if (ratio?.outcome.state !== 'known') return '';
  const { value, uncertainty } = ratio.outcome.quantity;
  return Math.abs(value - 1) <= 2 * uncertainty ? 'They agree within their doubt.' : (ratio.words ?? '');
}

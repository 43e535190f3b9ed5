import type { Estimate } from '../../methods/chance/index.ts';
import { firstKnown, knownNumber, put, workOut, type Ledger } from '../ledger.ts';
import { withPositiveInterval, type Dimension } from '../../methods/quantity/index.ts';
import type { Outcome, Value } from '../value.ts';
import { LEAST_REDUCTION } from './assumptions.ts';
import type { CapacityInput } from './capacity-input.ts';
import { capacityOf, type CapacityAnswer } from './capacity-of.ts';
import type { Ranged, SkewEstimate } from './ensemble.ts';
import { workOutCrushers } from './crusher.ts';
import { heatOfTestBar } from './heat-colours.ts';
import { strikeTestEnergy, type StrikeTestAnswer } from './strike-test.ts';
import { estimatesOf, putRanged } from './value-by-chance.ts';

const INCH = 0.0254;
/** Formula of what comes from the motion; by it a reader of values knows which of the two a figure is. */
export const OF_MOTION = 'motion of this hammer, simulated';
const MILD = 0.002;
/** The usual test: one inch square, two inches of it under flat dies, five full blows. */
const TEST = { side: INCH, bite: 2 * INCH, blows: 5 } as const;
/** Draws of a strike test, the same on every paper, so that one test reads back as one figure: enough for an interval to a tenth of its width. */
export const STRIKE_DRAWS = 400;
/** How far the length under the dies may be out, m, as a standard uncertainty. */
const BITE_DOUBT = 0.003;

const RAM = 'ram.mass|class.ram-mass';
const ANVIL = 'capacity.anvil-ratio|class.anvil-ratio';
const RATE = 'running.rate|drive.rate|class.working-rate';
const REBOUND = 'practice.restitution-hot';
const UPPER = 'upper-die.face-width|upper-die.width';
const LOWER = 'lower-die.face-width|lower-die.width';
const INPUTS = ['capacity.blow-energy', RAM, ANVIL, RATE, REBOUND, UPPER, LOWER];
const SOURCES = ['hot-flow-stress', 'rigid-body-mechanics', 'from-memory', 'own-model'];

/** What the values of a picture take for a bar, so that hammers can be set beside one another. */
const BAR_WORDS = '1 in square mild steel (0.2 % carbon), bright orange (1070 °C), flat dies.';

/** A figure from the motion. SI. */
export type MotionEstimate = SkewEstimate;

export interface CapacitySettings {
  readonly seed: number;
  /** 200 where left out: enough for intervals to a tenth of their width, and quick enough to ask again at every entry */
  readonly draws?: number;
  /** J of a full blow from the motion of this hammer; else the ledger's estimate */
  readonly blowEnergy?: MotionEstimate;
  /** m/s of the ram as the dies meet, from the motion of this hammer; else the ledger's estimate by the whip */
  readonly impactSpeed?: MotionEstimate;
  /** K of the test bar at its first blow, by the colour that was seen; bright orange where left out */
  readonly testBarHeat?: Estimate;
}

/**
 * What the blow does to hot steel: reduction, blows in a heat, largest bar, and the strike test read back as energy. The largest bar by the
 * work takes the place of the plain rule of the class where it is the lesser, and ram, rate, throw and dies were read on this hammer; else
 * the rule stands: the lesser of the two is what a paper may promise. Both are always there side by side. To be called after `workOutBlow`.
 */
export function workOutCapacity(ledger: Ledger, settings: CapacitySettings): void {
  if (settings.impactSpeed !== undefined) putOfMotion(ledger, { key: 'capacity.impact-speed', title: 'impact speed of the ram', dimension: 'velocity' }, settings.impactSpeed);
  if (settings.blowEnergy !== undefined) putOfMotion(ledger, { key: 'capacity.blow-energy', title: 'energy of a full blow', dimension: 'energy' }, settings.blowEnergy);
  const answer = answerOf(ledger, settings);
  const figure = (of: (capacity: Extract<CapacityAnswer, { state: 'known' }>) => Ranged): Ranged | Exclude<Outcome, { state: 'known' }> => (answer.state === 'known' ? of(answer) : answer);
  putRanged(ledger, {
    key: 'capacity.reduction-per-blow', title: 'taken off the thickness by one full blow', dimension: 'ratio', formula: 'flow stress x volume x (strain + friction) = energy into the work, solved for the reduction; stress between two published laws',
    sources: SOURCES, inputs: INPUTS, words: BAR_WORDS,
  }, figure((one) => one.reductionHot));
  putRanged(ledger, {
    key: 'capacity.blows-per-heat', title: 'full blows in one heat', dimension: 'count', formula: '(time from fire to 850 °C by radiation, air, dies and the heat of the work - time to the first blow) x share of striking x rate',
    sources: ['from-memory', 'common-practice'], inputs: INPUTS, words: BAR_WORDS,
  }, figure((one) => one.blowsPerHeat));
  const narrow = answer.state === 'known' && answer.largestBar.state === 'known' && answer.largestBar.value > narrower(ledger);
  const byWork = putRanged(ledger, {
    key: 'capacity.largest-bar-by-work', title: 'largest bar for steady work, by what the blow does', dimension: 'length', formula: `side of the square bar from which a full blow takes ${100 * LEAST_REDUCTION} % of its thickness`,
    sources: SOURCES, inputs: INPUTS, words: `Mild steel, bright orange. ${100 * LEAST_REDUCTION} % a blow is chosen so that usual hammers come out at the bars that the trade names for their class.`,
    ...(narrow ? { warning: 'Thicker than the narrower die is wide: it dents the skin of such a bar and leaves its middle.' } : {}),
  }, figure((one) => one.largestBar));
  const read = ['ram.mass', 'running.rate|drive.rate', 'crank.throw', UPPER, LOWER].every((keys) => firstKnown(ledger, keys).value?.outcome.state === 'known');
  const byClass = knownNumber(ledger, 'capacity.largest-bar-by-class');
  if (read && byWork.outcome.state === 'known' && (byClass === undefined || byWork.outcome.quantity.value < byClass)) {
    put(ledger, { ...byWork, key: 'capacity.largest-bar', title: 'largest bar for steady work', from: ['capacity.largest-bar-by-work', 'capacity.largest-bar-by-class'] });
  }
  workOut(ledger, {
    positive: true, key: 'capacity.blow-power-share', title: 'power that full blows take against the motor', dimension: 'ratio', formula: 'energy of a full blow x rate / motor power',
    sources: ['rigid-body-mechanics'], inputs: ['capacity.blow-energy', RATE, 'motor.power'], work: (energy, rate, power) => (energy! * rate!) / power!,
    words: 'Above 1 the motor cannot keep up full blows: the rate sinks, and with it the blow.',
  });
  workOutStrikeTest(ledger, settings);
  workOutCrushers(ledger, settings.seed, settings.draws ?? 200);
}

/** Width of the narrower die, m. */
const narrower = (ledger: Ledger): number => Math.min(knownNumber(ledger, UPPER) ?? Number.POSITIVE_INFINITY, knownNumber(ledger, LOWER) ?? Number.POSITIVE_INFINITY);

/** A figure of the blow from the motion of this very hammer takes the place of the estimate by the whip. */
function putOfMotion(ledger: Ledger, of: Pick<Value, 'key' | 'title'> & { readonly dimension: Dimension }, { value, uncertainty, interval }: MotionEstimate): void {
  const { dimension, ...named } = of;
  put(ledger, {
    ...named, standing: 'worked-out', rests: 'assumed', from: [RAM, RATE, 'crank.throw'].map((keys) => firstKnown(ledger, keys).key), formula: OF_MOTION, sources: ['own-model'], evidence: [],
    outcome: { state: 'known', quantity: interval === undefined ? withPositiveInterval({ dimension, value, uncertainty }) : { dimension, value, uncertainty, interval } },
  });
}

function answerOf(ledger: Ledger, settings: CapacitySettings): Extract<CapacityAnswer, { state: 'known' }> | Exclude<Outcome, { state: 'known' }> {
  const input = capacityInputOf(ledger, INCH);
  if ('state' in input) return input;
  const answer = capacityOf({ ...input, draws: settings.draws ?? 200 }, settings.seed);
  return answer.state === 'known' ? answer : { state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') };
}

/**
 * What `capacityOf` is asked for a square bar of mild steel, bright orange, under this hammer; or what is missing. After `workOutCapacity` the energy is that of its motion.
 * @param size side of the bar, m
 */
export function capacityInputOf(ledger: Ledger, size: number): CapacityInput | Exclude<Outcome, { state: 'known' }> {
  const estimates = estimatesOf(ledger, { blowEnergy: 'capacity.blow-energy', ramMass: RAM, anvilRatio: ANVIL, rate: RATE, restitution: REBOUND, upper: UPPER, lower: LOWER });
  if (!estimates.ok) return estimates.outcome;
  const { upper, lower, ...hammer } = estimates.of;
  return { ...hammer, bar: { section: 'square', size, carbon: MILD }, temperature: heatOfTestBar(), dieWidth: upper.value < lower.value ? upper : lower };
}

const CORNERS = ['front-left', 'front-right', 'rear-left', 'rear-right'].map((at) => `running.test-bar-thickness@${at}`);

function workOutStrikeTest(ledger: Ledger, settings: CapacitySettings): void {
  const read = ['running.test-bar-thickness', ...CORNERS].filter((key) => ledger.values.get(key)?.outcome.state === 'known');
  const recipe = {
    key: 'capacity.strike-test-energy', title: 'energy of a full blow, read back from the strike test', dimension: 'energy', sources: SOURCES, inputs: [...(read.length === 0 ? ['running.test-bar-thickness'] : read), RAM, ANVIL, RATE, REBOUND],
    formula: 'sum over the blows of flow stress x volume x (strain + friction), the bar cooling at the dies / blows / share that goes into the work',
    words: 'Mild steel; bright orange, 1 in square, 2 in of it under flat dies and five full blows where nothing else was written down. Had only 1 in lain under the dies, the energy would be about half: record the length.',
  } as const;
  const estimates = estimatesOf(ledger, { ramMass: RAM, anvilRatio: ANVIL, rate: RATE, restitution: REBOUND });
  if (read.length === 0) putRanged(ledger, recipe, { state: 'not-known', missing: ['running.test-bar-thickness'] });
  else if (!estimates.ok) putRanged(ledger, recipe, estimates.outcome);
  else putRanged(ledger, recipe, outcomeOf(strikeTestEnergy({ ...testAsMade(ledger), thickness: meanOf(ledger, read), temperature: settings.testBarHeat ?? heatOfTestBar(), carbon: MILD, ...estimates.of }, settings.seed, settings.draws ?? STRIKE_DRAWS)));
  workOut(ledger, {
    positive: true, key: 'capacity.strike-test-ratio', title: 'strike test against the estimate of the blow', dimension: 'ratio', formula: 'energy from the strike test / energy of a full blow', sources: ['own-model', 'hot-flow-stress'],
    inputs: ['capacity.strike-test-energy', 'capacity.blow-energy'], work: (test, estimate) => test! / estimate!,
    words: 'Far from 1, either the test was not as said (length under the dies, heat, number of blows) or the estimate of the impact speed is wrong for this hammer.',
  });
}

/** Side, length under the dies and blows as written down; the usual test where they were not. */
function testAsMade(ledger: Ledger): { readonly side: number; readonly bite: Estimate; readonly blows: number } {
  const known = (key: string): Estimate | undefined => {
    const outcome = ledger.values.get(key)?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  return {
    side: known('running.test-bar-side')?.value ?? TEST.side, bite: known('running.test-bar-length') ?? { value: TEST.bite, uncertainty: BITE_DOUBT },
    blows: Math.round(known('running.test-bar-blows')?.value ?? TEST.blows),
  };
}

const outcomeOf = (answer: StrikeTestAnswer): Ranged | Exclude<Outcome, { state: 'known' }> =>
  answer.state === 'known' ? answer.blowEnergy : { state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') };

/** Mean of the corners read. Tool and scatter of the corners both count; the corners' scatter is mostly dies out of parallel. */
function meanOf(ledger: Ledger, keys: readonly string[]): Estimate {
  const read = keys.flatMap((key) => {
    const outcome = ledger.values.get(key)?.outcome;
    return outcome?.state === 'known' ? [outcome.quantity] : [];
  });
  const value = read.reduce((sum, one) => sum + one.value, 0) / read.length;
  const tool = Math.max(...read.map((one) => one.uncertainty));
  const scatter = read.length < 2 ? 0 : Math.sqrt(read.reduce((sum, one) => sum + (one.value - value) ** 2, 0) / (read.length * (read.length - 1)));
  return { value, uncertainty: Math.hypot(tool, scatter) };
}

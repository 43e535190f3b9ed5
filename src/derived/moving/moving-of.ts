import type { Estimate } from '../../methods/chance/index.ts';
import { cautionsFor } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { InputProblem, Ranged } from '../capacity/index.ts';
import type { PrintSystem } from '../print-system.ts';
import { bearings, floorAnswer, type Bearing, type FloorAnswer } from './floor.ts';
import { GRAVITY, GRAVITY_BASIS, standingOf } from './gravity.ts';
import { leastLean, type Stood } from './least-lean.ts';
import { movingProblems, type MovingInput } from './moving-input.ts';
import { doorSentences, liftPoints, slingAdvice, type Advice } from './advice.ts';

/** One thing that is lifted. */
export interface Piece {
  readonly words: string;
  readonly mass: Estimate;
}

export interface Moving {
  readonly state: 'known';
  readonly pieces: readonly Piece[];
  /** as it stands whole; or why not */
  readonly whole: Stood;
  /** without its anvil, where that parts */
  readonly body?: Stood;
  /** rad, least lean at which whole or body goes over */
  readonly leastLean?: number;
  /** Of them, as it stands whole. */
  readonly wholeLean?: number;
  /** N in each leg of a two-legged sling at 60° from level, with a quarter added for the start of the lift */
  readonly legTension: Ranged;
  /** N to keep it rolling on pipes on a sound level floor */
  readonly push: { readonly least: number; readonly most: number };
  readonly rigger: { readonly wanted: boolean; readonly sentence: string };
  readonly lift: readonly Advice[];
  readonly advice: readonly Advice[];
  readonly bearings: readonly Bearing[];
  readonly floor: FloorAnswer;
  readonly door: readonly string[];
  readonly basis: string;
  readonly notKnown: readonly string[];
  /** ids of cautions */
  readonly cautions: readonly string[];
}

export type MovingAnswer = Moving | { readonly state: 'refused'; readonly problems: readonly InputProblem[] };

/** 2,000 lb: above it a rigger does the lift (read on a public page; practice, not law). */
export const RIGGER_MASS = 907.18474;
const roundMass = (mass: number, system: PrintSystem): string => formatQuantity({ dimension: 'mass', value: mass, uncertainty: mass / 8 }, { system, doubt: false });
const SLING_ANGLE = Math.PI / 3;
const START_OF_LIFT = 1.25;
/** Rolling on pipes over a sound floor, share of the weight (from memory). */
const ROLLING = { least: 0.02, most: 0.06 } as const;

/**
 * What it takes to move a hammer: weights, how it stands, what a sling and a floor feel, and where it goes over. It helps to talk with a
 * rigger and does not stand in for one.
 * @param seed whole number @param system units of the sentences
 */
export function movingOf(input: MovingInput, seed: number, system: PrintSystem = 'inch'): MovingAnswer {
  const problems = movingProblems(input);
  if (problems.length > 0) return { state: 'refused', problems };
  const parts = input.anvilKind === 'separate';
  const stand = (machine: Estimate, anvil: Estimate): Stood => {
    const found = standingOf({ ...input, columnHeight: input.family === 'helve' ? input.overallHeight : input.shaftHeight, machine, anvil, ram: input.ramMass }, seed);
    return typeof found === 'string' ? { state: 'outside-validity', because: found } : found;
  };
  const body: Estimate = { value: input.mass.value - input.anvilMass.value, uncertainty: Math.hypot(input.mass.uncertainty, input.anvilMass.uncertainty) };
  const heaviest = input.mass.value + 2 * input.mass.uncertainty;
  const tension = (mass: number): number => (START_OF_LIFT * mass * GRAVITY) / (2 * Math.sin(SLING_ANGLE));
  const whole = stand(input.mass, input.anvilMass);
  const bare = parts && body.value > 0 ? stand(body, { value: 0, uncertainty: 0 }) : undefined;
  const wholeLean = leastLean([whole]);
  const lean = leastLean(bare === undefined ? [whole] : [whole, bare]);
  return {
    state: 'known',
    pieces: parts && body.value > 0
      ? [{ words: 'body without its anvil', mass: body }, { words: 'anvil', mass: input.anvilMass }]
      : [{ words: input.anvilKind === 'not-known' ? 'whole machine; nobody looked whether the anvil parts from it' : 'whole machine', mass: input.mass }],
    whole, ...(bare === undefined ? {} : { body: bare }), ...(lean === undefined ? {} : { leastLean: lean }), ...(wholeLean === undefined ? {} : { wholeLean }),
    legTension: { state: 'known', value: tension(input.mass.value), low: tension(Math.max(0, input.mass.value - 2 * input.mass.uncertainty)), high: tension(heaviest), uncertainty: tension(input.mass.uncertainty), outside: 0 },
    push: { least: ROLLING.least * input.mass.value * GRAVITY, most: ROLLING.most * heaviest * GRAVITY },
    rigger: heaviest > RIGGER_MASS
      ? { wanted: true, sentence: `It may weigh ${roundMass(heaviest, system)}: above ${roundMass(RIGGER_MASS, system)} a professional rigger does the lift.` }
      : { wanted: false, sentence: `${input.weighed ? 'Weighed, and within' : 'By its class within'} ${roundMass(RIGGER_MASS, system)}${input.weighed ? '' : ', and nobody weighed it: a hoist rated for twice that, or a rigger'}: still two people, a rated hoist, and nobody under it or beside its fall.` },
    lift: liftPoints(input.family, parts), advice: slingAdvice(input, whole, lean, system), bearings: bearings(heaviest, input.baseLength, input.baseWidth),
    floor: floorAnswer(heaviest, input.baseLength, input.baseWidth, input.floor), door: doorSentences(input, system), basis: GRAVITY_BASIS,
    notKnown: [
      ...(input.weighed ? [] : ['its true weight: the class gives a first guess; a crane scale or a weighbridge tells']),
      ...(input.anvilKind === 'not-known' ? ['whether the anvil parts from the body'] : []),
      ...input.assumedLengths.map((name) => `${name}: taken in proportion to the class`),
      ...(input.door === undefined ? ['door width and height'] : []), ...(input.floor === undefined ? ['what the floor carries'] : []),
      'motor, bracket and treadle that stick out beyond the base',
    ],
    cautions: cautionsFor(['top-heavy', 'isolate', 'block-ram', 'spring-unload', 'two-people'], input.family),
  };
}

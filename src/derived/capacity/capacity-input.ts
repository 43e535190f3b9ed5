import type { Estimate } from '../../methods/chance/index.ts';
import type { Bar } from './bar.ts';
import type { SkewEstimate } from './ensemble.ts';
import { forgingRange } from './heat-colours.ts';

/** What is asked: which bar, how hot, under which hammer. SI; an estimate is a value with its standard uncertainty. */
export interface CapacityInput {
  readonly bar: Bar;
  /** K at the first blow; `heatColour` gives it from a colour */
  readonly temperature: Estimate;
  /** K where forging stops; usual for the carbon where left out */
  readonly finish?: number;
  /** m of bar under the dies, along it: the narrower die's width across the bar's way */
  readonly dieWidth: Estimate;
  /** J of a full blow, from the survey's estimate or from the motion of this hammer */
  readonly blowEnergy: SkewEstimate;
  /** kg; with the energy it gives the speed of the blow */
  readonly ramMass: Estimate;
  /** anvil over ram */
  readonly anvilRatio: Estimate;
  /** rebound over impact speed, 0 to below 1 */
  readonly restitution: Estimate;
  /** blows a second at full tread */
  readonly rate: Estimate;
  /** share of the thickness that a blow must take off the largest bar; `LEAST_REDUCTION` where left out */
  readonly leastReduction?: number;
  /** 2000 where left out; at least 100 */
  readonly draws?: number;
}

/** Bad input: which value, what is wrong and what would be right. */
export interface InputProblem {
  readonly field: string;
  /** what is wrong; what is allowed: the value */
  readonly sentence: string;
}

type Row = readonly [field: string, value: number | undefined, least: number, most: number, unit: string];

/** What a number lies outside of, one sentence each. @param rows a value left out is not checked */
export function outsideProblems(rows: readonly Row[]): readonly InputProblem[] {
  return rows.flatMap(([field, value, least, most, unit]) =>
    value === undefined || (value >= least && value <= most) ? [] : [{ field, sentence: `${field} cannot be so; ${least} to ${most}${unit === '' ? '' : ` ${unit}`} is allowed: ${value}` }]);
}

/** The doubt of an estimate: not negative, and not so large that the value says nothing. */
export const doubtRow = (field: string, one: Estimate, share = 1): Row => [`${field}.uncertainty`, one.uncertainty, 0, Math.abs(one.value) * share, ''];

/** Everything wrong with an input; empty where it can be reckoned. */
export function capacityProblems(input: CapacityInput): readonly InputProblem[] {
  const { bar } = input;
  const estimates: readonly (readonly [string, Estimate, number, number, string])[] = [
    ['temperature', input.temperature, 673, 1673, 'K'], ['dieWidth', input.dieWidth, 0.003, 0.6, 'm'], ['blowEnergy', input.blowEnergy, 0.5, 1e6, 'J'], ['ramMass', input.ramMass, 0.5, 3000, 'kg'],
    ['anvilRatio', input.anvilRatio, 0.5, 1000, ''], ['restitution', input.restitution, 0, 0.95, ''], ['rate', input.rate, 0.1, 20, 'blows a second'],
  ];
  const problems = outsideProblems([
    ['bar.size', bar.size, 0.003, 0.6, 'm'], ['bar.width', bar.width, 0.003, 1, 'm'], ['bar.carbon', bar.carbon, 0, 0.02, ''], ['finish', input.finish, 673, 1673, 'K'],
    ['leastReduction', input.leastReduction, 1e-4, 0.3, ''], ['draws', input.draws, 100, 1e6, ''],
    ...estimates.map(([field, one, least, most, unit]): Row => [field, one.value, least, most, unit]),
    ...estimates.map(([field, one]): Row => doubtRow(field, one)),
  ]);
  const said = (field: string, sentence: string): readonly InputProblem[] => [{ field, sentence }];
  return [
    ...problems,
    ...(bar.section === 'flat' && bar.width === undefined ? said('bar.width', 'a flat bar needs its width; 0.003 to 1 m is allowed: none given') : []),
    ...(bar.section !== 'flat' && bar.width !== undefined ? said('bar.width', `a ${bar.section} bar has no width of its own; none is allowed: ${bar.width}`) : []),
    ...(input.draws !== undefined && !Number.isInteger(input.draws) ? said('draws', `draws are counted; a whole number from 100 is allowed: ${input.draws}`) : []),
    ...(finishOf(input) >= input.temperature.value ? said('finish', `forging stops before it begins; below ${input.temperature.value} K is allowed: ${finishOf(input)}`) : []),
  ];
}

/** K where forging stops. */
export const finishOf = (input: CapacityInput): number => input.finish ?? forgingRange(input.bar.carbon).finish;

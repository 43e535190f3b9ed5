import type { Distribution } from '../../methods/chance/index.ts';
import { converterCapacitance, converterIdlerPower, type DisputedRange } from '../../methods/power/index.ts';
import { ensemble, positive, type InputProblem, type Ranged } from '../capacity/index.ts';
import { reckonedCurrent, tableCurrent, type CurrentRange, type TableCurrent } from './current.ts';
import { powerProblems, type PowerInput } from './power-input.ts';
import { wiringCautions, type WiringCaution } from './wiring-cautions.ts';

export interface Converter {
  /** W of idler: rules conflict, each is shown */
  readonly flywheelStart: DisputedRange;
  readonly hardStart: DisputedRange;
  /** idler over motor; absent where its power is not known */
  readonly share?: number;
  readonly sentence: string;
  /** F, for an idler as large as the least of the rules, at 230 V and 60 Hz; settled by reading the voltages */
  readonly capacitors: { readonly selfStart: DisputedRange; readonly start: DisputedRange; readonly balance: DisputedRange };
}

export type ConverterAnswer =
  | ({ readonly state: 'known' } & Converter)
  | { readonly state: 'does-not-apply'; readonly because: string }
  | { readonly state: 'not-known'; readonly missing: readonly string[] };

export interface Power {
  readonly state: 'known';
  readonly table: TableCurrent;
  readonly reckoned?: CurrentRange;
  /** greatest leg running over the full-load current of the plate, or of the table */
  readonly running?: { readonly current: number; readonly share: number; readonly against: 'plate' | 'table'; readonly sentence: string };
  /** motor over what the class usually has */
  readonly motorShare?: number;
  /** motor over what the belt carries */
  readonly beltShare?: number;
  readonly converter: ConverterAnswer;
  /** s to reach speed: from inertia and the torque that such motors give; or what is missing */
  readonly startTime: Ranged | { readonly state: 'not-known'; readonly missing: readonly string[] };
  readonly startSentence?: string;
  readonly cautions: readonly WiringCaution[];
  readonly notKnown: readonly string[];
}

export type PowerAnswer = Power | { readonly state: 'refused'; readonly problems: readonly InputProblem[] };

/** Mean accelerating torque over rated torque while it starts, load and belt drag taken off (from memory). */
const STARTING: Distribution = { kind: 'triangular', least: 0.9, likely: 1.5, most: 2.3 };
const SLOW_START = 5;

/**
 * Motor, supply and drive: currents for the electrician, converter, start, belt, and what to beware of.
 * It prepares a talk with a licensed person; the local code governs.
 * @param seed whole number
 */
export function powerOf(input: PowerInput, seed: number, draws = 500): PowerAnswer {
  const problems = powerProblems(input);
  if (problems.length > 0) return { state: 'refused', problems };
  const { power, usualPower, beltPower } = input;
  const table = tableCurrent(input);
  const reckoned = reckonedCurrent(input);
  const running = runningOf(input, table);
  const startTime = startTimeOf(input, seed, draws);
  return {
    state: 'known', table, ...(reckoned === undefined ? {} : { reckoned }), ...(running === undefined ? {} : { running }),
    ...(power === undefined || usualPower === undefined ? {} : { motorShare: power / usualPower.value }), ...(power === undefined || beltPower === undefined ? {} : { beltShare: power / beltPower }),
    converter: converterOf(input), startTime, ...startWords(input, startTime), cautions: wiringCautions(input),
    notKnown: [...(power === undefined ? ['motor power'] : []), ...(input.voltage === undefined ? ['motor voltage'] : []), ...(input.phase === 'not-known' ? ['phases of the supply'] : []), ...(input.converter === 'not-known' ? ['whether a converter is fitted'] : []), ...(input.runningCurrents.length === 0 ? ['current running'] : []), 'length of the cable run and its drop of voltage'],
  };
}

function runningOf(input: PowerInput, table: TableCurrent): Power['running'] {
  const greatest = Math.max(...input.runningCurrents, Number.NEGATIVE_INFINITY);
  const full = input.plateCurrent ?? (table.state === 'known' ? table.current : undefined);
  if (!Number.isFinite(greatest) || full === undefined) return undefined;
  const share = greatest / full;
  const against = input.plateCurrent === undefined ? 'table' : 'plate';
  return { current: greatest, share, against, sentence: share > 1 ? `It draws ${Math.round(100 * share)} % of its full-load current: overloaded; something drags, the voltage is low, or the motor is too small.` : `It draws ${Math.round(100 * share)} % of its full-load current.` };
}

function converterOf(input: PowerInput): ConverterAnswer {
  if (input.phase === 'single' || input.phase === 'three' || input.phase === 'direct-current') return { state: 'does-not-apply', because: input.phase === 'single' ? 'a single-phase motor needs no converter' : input.phase === 'three' ? 'three phases come with the supply' : 'a direct-current motor has its own supply' };
  if (input.phase === 'not-known' || input.power === undefined) return { state: 'not-known', missing: [...(input.phase === 'not-known' ? ['motor.phase'] : []), ...(input.power === undefined ? ['motor.power'] : [])] };
  const flywheelStart = converterIdlerPower(input.power, 'flywheel');
  const share = input.converterPower === undefined ? undefined : input.converterPower / input.power;
  const kind = input.converter === 'static' ? ' A static converter gives about two thirds of the motor’s power (common practice).' : input.converter === 'electronic' ? ' An electronic drive is sized by current and brings the wheel up slowly; idler rules are not for it.' : '';
  return {
    state: 'known', flywheelStart, hardStart: converterIdlerPower(input.power, 'hard'), ...(share === undefined ? {} : { share }),
    sentence: `${share === undefined ? 'The idler’s power was not read.' : share >= flywheelStart.least / input.power - 1e-9 ? 'The idler is as large as the least of the rules for a flywheel start, or larger.' : 'The idler is smaller than any rule for a flywheel start asks.'}${kind}`,
    capacitors: { selfStart: converterCapacitance(flywheelStart.least, 'self-start'), start: converterCapacitance(flywheelStart.least, 'start'), balance: converterCapacitance(flywheelStart.least, 'balance') },
  };
}

function startTimeOf(input: PowerInput, seed: number, draws: number): Power['startTime'] {
  const { power, inertia, crankSpeed } = input;
  if (power === undefined || inertia === undefined || crankSpeed === undefined) return { state: 'not-known', missing: [...(power === undefined ? ['motor.power'] : []), ...(inertia === undefined ? ['inertia of wheel and motor'] : []), ...(crankSpeed === undefined ? ['running.rate'] : [])] };
  return ensemble({ inertia: positive(inertia), torque: STARTING }, { seed, stream: 'motor-start', draws }, (x) => ({ time: (x.inertia * crankSpeed ** 2) / (x.torque * power) })).of('time', 'the inertia given is not one');
}

function startWords(input: PowerInput, reckoned: Power['startTime']): { readonly startSentence?: string } {
  if (input.startTime === undefined) return {};
  const read = `It took ${input.startTime.toFixed(0)} s to reach speed`;
  if (reckoned.state === 'known' && input.startTime > reckoned.high) return { startSentence: `${read}, longer than inertia and motor explain: low voltage, a drag, or a weak start.` };
  return { startSentence: input.startTime > SLOW_START ? `${read}: slow; a motor that starts long heats, and its overload may trip.` : `${read}.` };
}

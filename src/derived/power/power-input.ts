import type { Estimate } from '../../methods/chance/index.ts';
import { doubtRow, outsideProblems, type InputProblem } from '../capacity/index.ts';
import type { Known } from '../survey/index.ts';
import type { Value } from '../value.ts';

export type Phase = 'single' | 'three' | 'three-from-converter' | 'direct-current' | 'not-known';
export type ConverterKind = 'none' | 'rotary' | 'static' | 'electronic' | 'not-known';

/** Motor, supply and drive as read. SI; what was not read is left out. */
export interface PowerInput {
  readonly phase: Phase;
  /** W, volt, ampere from the plate */
  readonly power?: number;
  readonly voltage?: number;
  readonly plateCurrent?: number;
  /** A in each leg, running */
  readonly runningCurrents: readonly number[];
  readonly converter: ConverterKind;
  /** W, rated power of the idler */
  readonly converterPower?: number;
  /** W usual for the class */
  readonly usualPower?: Estimate;
  /** W that the belt carries, by the leather rule */
  readonly beltPower?: number;
  /** s, read */
  readonly startTime?: number;
  /** kg m² of everything that the motor brings up to speed, referred to the crank; and the crank's speed, rad/s */
  readonly inertia?: Estimate;
  readonly crankSpeed?: number;
  readonly isolation?: string;
  readonly liveParts?: string;
  readonly noVolt?: string;
  readonly overload?: string;
}

/** Everything wrong with an input. */
export function powerProblems(input: PowerInput): readonly InputProblem[] {
  return outsideProblems([
    ['power', input.power, 50, 75_000, 'W'], ['voltage', input.voltage, 90, 1000, 'V'], ['plateCurrent', input.plateCurrent, 0.2, 300, 'A'], ['converterPower', input.converterPower, 50, 100_000, 'W'], ['beltPower', input.beltPower, 1, 1e6, 'W'],
    ['startTime', input.startTime, 0, 600, 's'], ['inertia', input.inertia?.value, 1e-3, 1e5, 'kg m²'], ['crankSpeed', input.crankSpeed, 0.1, 200, 'rad/s'],
    ...input.runningCurrents.map((current, i) => [`runningCurrents.${i}`, current, 0, 500, 'A'] as const), ...(input.inertia === undefined ? [] : [doubtRow('inertia', input.inertia)]),
  ]);
}

const PHASES: readonly Phase[] = ['single', 'three', 'three-from-converter', 'direct-current'];
const CONVERTERS: readonly ConverterKind[] = ['none', 'rotary', 'static', 'electronic'];

/**
 * What the power sheet needs from a picture's values.
 * @param motion inertia at the crank and its speed, where the motion of this hammer was set up
 */
export function powerInputOf(values: Readonly<Record<string, Value>>, known: Known, motion?: { readonly inertia: Estimate; readonly crankSpeed: number }): PowerInput {
  const number = (key: string): number | undefined => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const given = <Name extends string>(name: Name, value: number | undefined): { readonly [key in Name]?: number } => (value === undefined ? {} : ({ [name]: value } as { readonly [key in Name]: number }));
  const look = (id: string): string | undefined => known.looks[id]?.answer;
  const said = <Name extends string>(name: Name, id: string): { readonly [key in Name]?: string } => {
    const answer = look(id);
    return answer === undefined ? {} : ({ [name]: answer } as { readonly [key in Name]: string });
  };
  const usual = values['class.motor-power']?.outcome;
  return {
    phase: PHASES.find((one) => one === look('motor.phase')) ?? 'not-known', converter: CONVERTERS.find((one) => one === look('phase-converter.fitted')) ?? 'not-known',
    runningCurrents: ['motor.running-current', 'motor.running-current@a', 'motor.running-current@b', 'motor.running-current@c'].flatMap((key) => number(key) ?? []),
    ...given('power', number('motor.power')), ...given('voltage', number('motor.voltage')), ...given('plateCurrent', number('motor.current')), ...given('converterPower', number('phase-converter.power')),
    ...given('beltPower', number('drive.belt-power')), ...given('startTime', number('running.motor-start-time')), ...(usual?.state === 'known' ? { usualPower: usual.quantity } : {}), ...motion,
    ...said('isolation', 'starter.isolation'), ...said('liveParts', 'starter.live-parts'), ...said('noVolt', 'starter.no-volt'), ...said('overload', 'starter.overload'),
  };
}

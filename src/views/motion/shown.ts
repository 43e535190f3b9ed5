import type { PrintSystem } from '../../derived/index.ts';
import { formatQuantity, quantity, readQuantity, type Dimension } from '../../methods/quantity/index.ts';

/** SI size of one step, written as the shop writes it. */
function step(text: string, dimension: Dimension): number {
  const reading = readQuantity(text, { dimension });
  if (!reading.ok) throw new Error(`a step must be a quantity: ${text}`);
  return reading.quantity.value;
}

const SIXTY_FOURTH = step('1/64 in', 'length');
const THOU = step('1 thou', 'length');
const FOOT_POUND = step('1 ft-lbf', 'energy');
const TEN_POUNDS = step('10 lbf', 'force');
const TENTH_FOOT = step('0.1 ft/s', 'velocity');
const TENTH_HORSE = step('0.1 hp', 'power');

/** A length as one would set it: to a thirty-second, a sixteenth from two inches, or in thou, or to a tenth of a millimetre. */
export function shownLength(metres: number, system: PrintSystem): string {
  if (system === 'metric') return print(metres, 'length', system, Math.abs(metres) < 0.01 ? 0.0001 : 0.0005);
  return Math.abs(metres) < 0.0012 ? print(metres, 'length', system, THOU) : print(metres, 'length', system, SIXTY_FOURTH * (Math.abs(metres) > 0.05 ? 4 : 2));
}

export const shownEnergy = (joules: number, system: PrintSystem): string => print(joules, 'energy', system, joules < 20 ? (system === 'inch' ? FOOT_POUND / 10 : 0.1) : system === 'inch' ? FOOT_POUND : 1);
export const shownForce = (newtons: number, system: PrintSystem): string => print(newtons, 'force', system, system === 'inch' ? TEN_POUNDS : Math.abs(newtons) >= 10_000 ? 100 : 10);
export const shownSpeed = (metresPerSecond: number, system: PrintSystem): string => print(metresPerSecond, 'velocity', system, system === 'inch' ? TENTH_FOOT : 0.1);
export const shownPower = (watts: number, system: PrintSystem): string => print(watts, 'power', system, system === 'inch' ? TENTH_HORSE : 100);
/** Blows or turns a minute, from a second. */
export const shownRate = (perSecond: number): string => `${Math.round(perSecond * 60)} a minute`;
export const shownAngle = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`;
export const shownShare = (share: number): string => `${share < 0.1 ? Math.round(share * 1000) / 10 : Math.round(share * 100)} %`;
export const shownDelay = (seconds: number): string => `${Math.round(Math.abs(seconds) * 1000)} ms`;

function print(value: number, dimension: Dimension, system: PrintSystem, resolution: number): string {
  return formatQuantity(quantity(value, dimension), { system, doubt: false, resolution });
}

import type { PrintSystem } from '../../derived/index.ts';
import { formatQuantity, quantity, type Dimension } from '../../methods/quantity/index.ts';

const SIXTY_FOURTH = 0.0254 / 64;
const FOOT_POUND = 1.3558179483314;
const POUND_FORCE = 4.4482216152605;

/** A length as one would set it: to a thirty-second or in thou, or to a tenth of a millimetre. */
export function shownLength(metres: number, system: PrintSystem): string {
  if (system === 'metric') return print(metres, 'length', system, Math.abs(metres) < 0.01 ? 0.0001 : 0.0005);
  return Math.abs(metres) < 0.0012 ? print(metres, 'length', system, 0.0000254) : print(metres, 'length', system, SIXTY_FOURTH * (Math.abs(metres) > 0.05 ? 2 : 1));
}

export const shownEnergy = (joules: number, system: PrintSystem): string => print(joules, 'energy', system, joules < 20 ? (system === 'inch' ? FOOT_POUND / 10 : 0.1) : system === 'inch' ? FOOT_POUND : 1);
export const shownForce = (newtons: number, system: PrintSystem): string => print(newtons, 'force', system, system === 'inch' ? POUND_FORCE * 10 : Math.abs(newtons) >= 10_000 ? 100 : 10);
export const shownSpeed = (metresPerSecond: number, system: PrintSystem): string => print(metresPerSecond, 'velocity', system, system === 'inch' ? 0.03048 : 0.1);
export const shownPower = (watts: number, system: PrintSystem): string => print(watts, 'power', system, system === 'inch' ? 74.569987 : 100);
/** Blows or turns a minute, from a second. */
export const shownRate = (perSecond: number): string => `${Math.round(perSecond * 60)} a minute`;
export const shownAngle = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`;
export const shownShare = (share: number): string => `${share < 0.1 ? Math.round(share * 1000) / 10 : Math.round(share * 100)} %`;
export const shownDelay = (seconds: number): string => `${Math.round(Math.abs(seconds) * 1000)} ms`;

function print(value: number, dimension: Dimension, system: PrintSystem, resolution: number): string {
  return formatQuantity(quantity(value, dimension), { system, doubt: false, resolution });
}

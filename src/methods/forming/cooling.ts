import { integrate } from '../integrate/index.ts';
import { findRoot } from '../numerics/index.ts';

/** Stefan and Boltzmann's constant, W/(m² K⁴) (SI 2019, exact to the digits given). */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** A piece that is as warm inside as outside (thin or slow enough: `biotNumber` below 0.1). SI. */
export interface Body {
  /** volume over surface, m: a quarter of the side of a square bar, a quarter of the diameter of a round one */
  readonly thickness: number;
  readonly density: number;
  /** J/(kg K) */
  readonly heatCapacity: number;
  /** 0 to 1; oxidised steel about 0.8 (from memory) */
  readonly emissivity: number;
}

/** What takes heat from it, or gives it. Temperatures in K. */
export interface Surroundings {
  readonly air: number;
  /** what it sees: walls, or a furnace */
  readonly walls: number;
  /** W/(m² K); still air 5 to 15 (from memory) */
  readonly film: number;
  /** a cold die or anvil that it lies on */
  readonly contact?: {
    /** share of the surface that touches, 0 to 1; it does not radiate there */
    readonly share: number;
    /** W/(m² K); depends much on pressure and scale, so it has to be given */
    readonly coefficient: number;
    readonly temperature: number;
  };
}

/** Heat radiated by a surface, W/m². @param temperature K */
export const emissivePower = (temperature: number, emissivity: number): number => emissivity * STEFAN_BOLTZMANN * temperature ** 4;

/** Heat that leaves the surface at a temperature, W/m² averaged over it; negative where it is being heated. */
export function heatLeaving(temperature: number, body: Body, around: Surroundings): number {
  const touching = around.contact?.share ?? 0;
  const free = around.film * (temperature - around.air) + emissivePower(temperature, body.emissivity) - emissivePower(around.walls, body.emissivity);
  const touched = around.contact === undefined ? 0 : around.contact.coefficient * (temperature - around.contact.temperature);
  return (1 - touching) * free + touching * touched;
}

/** How unevenly a piece cools: film times half-thickness over conductivity. Below 0.1 it may be taken as one temperature. @param coefficient W/(m² K), radiation included */
export const biotNumber = (coefficient: number, thickness: number, conductivity: number): number => (coefficient * thickness) / conductivity;

/** Coefficient that stands for radiation at a temperature, W/(m² K). */
export const radiationCoefficient = (temperature: number, walls: number, emissivity: number): number => emissivity * STEFAN_BOLTZMANN * (temperature + walls) * (temperature ** 2 + walls ** 2);

/** Temperature at which as much heat comes as goes, K: between the coldest and the hottest of the surroundings. */
export function balanceTemperature(body: Body, around: Surroundings): number {
  const all = [around.air, around.walls, ...(around.contact === undefined ? [] : [around.contact.temperature])];
  const least = Math.min(...all);
  const most = Math.max(...all);
  if (least === most) return least;
  const root = findRoot((temperature) => heatLeaving(temperature, body, around), least, most);
  if (root.code !== 'converged') throw new Error(`No balance between ${least} K and ${most} K: ${root.code}`);
  return root.x;
}

export type Cooled =
  | { readonly state: 'known'; readonly time: number }
  /** the temperature lies at or beyond the balance, or on its other side */
  | { readonly state: 'never'; readonly balance: number };

/**
 * Time from one temperature to another, s, cooling or heating.
 * @param from K @param to K; the same temperature takes no time
 */
export function timeBetween(from: number, to: number, body: Body, around: Surroundings): Cooled {
  if (from === to) return { state: 'known', time: 0 };
  const balance = balanceTemperature(body, around);
  if ((from - balance) * (to - balance) <= 0 || Math.abs(to - balance) > Math.abs(from - balance)) return { state: 'never', balance };
  const storage = body.density * body.heatCapacity * body.thickness;
  // Taken over ln|T - balance|, in which the integrand stays smooth however close the balance is.
  const sign = Math.sign(from - balance);
  const integrand = (x: number): number => {
    const away = sign * Math.exp(x);
    return (storage * away) / heatLeaving(balance + away, body, around);
  };
  return { state: 'known', time: simpson(integrand, Math.log(Math.abs(to - balance)), Math.log(Math.abs(from - balance))) };
}

/** Simpson's rule, halved until two halvings agree to 1e-11. */
function simpson(f: (x: number) => number, low: number, high: number): number {
  let before = Number.NaN;
  for (let panels = 16; panels <= 65536; panels *= 2) {
    const step = (high - low) / panels;
    let sum = f(low) + f(high);
    for (let i = 1; i < panels; i++) sum += (i % 2 === 0 ? 2 : 4) * f(low + i * step);
    const value = (sum * step) / 3;
    if (Math.abs(value - before) <= 1e-11 * Math.abs(value)) return value;
    before = value;
  }
  return before;
}

/** Temperature after a time, K. @param time s, not negative */
export function temperatureAfter(time: number, from: number, body: Body, around: Surroundings): number {
  if (!(time >= 0)) throw new Error(`A time of cooling must not be negative: ${time}`);
  if (time === 0) return from;
  const storage = body.density * body.heatCapacity * body.thickness;
  const solution = integrate(
    { slopes: (state, slopes) => void (slopes[0] = -heatLeaving(state[0]!, body, around) / storage), state: [from], from: 0, to: time },
    { tolerance: { relative: 1e-10, absolute: 1e-8 }, keep: false },
  );
  if (solution.code !== 'reached-end') throw new Error(`The cooling could not be followed: ${solution.code} at ${solution.time} s of ${time} s`);
  return solution.state[0]!;
}

/** Time of cooling by radiation alone into cold surroundings, s, in closed form: ρ c (V/A)/(3 ε σ) (1/T³ - 1/T0³). @param from K @param to K, below it */
export const radiationOnlyTime = (from: number, to: number, body: Body): number =>
  ((body.density * body.heatCapacity * body.thickness) / (3 * body.emissivity * STEFAN_BOLTZMANN)) * (to ** -3 - from ** -3);

import { heatLeaving, timeBetween, type Body, type Surroundings } from '../../methods/forming/index.ts';
import { coolingThickness, girth, sectionOf, type Bar } from './bar.ts';
import { HOT_DENSITY, SHOP_TEMPERATURE, WORK_INTO_HEAT } from './assumptions.ts';

/** How a heat goes. SI; see the assumptions for what each usually is. */
export interface Heat {
  readonly bar: Bar;
  /** K, out of the fire and where forging stops */
  readonly from: number;
  readonly to: number;
  readonly bite: number;
  /** blows a second while it strikes */
  readonly rate: number;
  /** J of each blow that goes into the work */
  readonly energy: number;
  readonly emissivity: number;
  readonly film: number;
  readonly heatCapacity: number;
  readonly pressedContact: number;
  readonly contactTime: number;
  readonly lyingContact: number;
  readonly dieTemperature: number;
  readonly striking: number;
  readonly firstBlow: number;
  readonly hotLength: number;
}

export interface HeatParts {
  /** K/s at the start of the heat; positive cools */
  readonly byAir: number;
  readonly byDies: number;
  /** K/s that the blows give back */
  readonly byWork: number;
}

const bodyOf = (heat: Heat): Body => ({ thickness: coolingThickness(heat.bar), density: HOT_DENSITY, heatCapacity: heat.heatCapacity, emissivity: heat.emissivity });

/** Means over the hot end and over the time of the heat: how much of its surface the dies cover, how hard they draw heat, and what the work puts back. */
function meansOf(heat: Heat): { readonly share: number; readonly coefficient: number; readonly flux: number } {
  const surface = girth(heat.bar) * Math.max(heat.hotLength * heat.bar.size, heat.bite);
  const share = Math.min(0.5, (2 * heat.bite * sectionOf(heat.bar).width) / surface) * heat.striking;
  // Both faces share the contact under a blow; only the lower one the lying between blows.
  const coefficient = heat.pressedContact * Math.min(1, heat.contactTime * heat.rate) + heat.lyingContact / 2;
  return { share, coefficient, flux: (WORK_INTO_HEAT * heat.energy * heat.rate * heat.striking) / surface };
}

const inAir = (heat: Heat): Surroundings => ({ air: SHOP_TEMPERATURE, walls: SHOP_TEMPERATURE, film: heat.film });

/** Rates of cooling and heating as the heat begins. */
export function heatParts(heat: Heat): HeatParts {
  const { share, coefficient, flux } = meansOf(heat);
  const storage = HOT_DENSITY * heat.heatCapacity * coolingThickness(heat.bar);
  return {
    byAir: ((1 - share) * heatLeaving(heat.from, bodyOf(heat), inAir(heat))) / storage,
    byDies: (share * coefficient * (heat.from - heat.dieTemperature)) / storage,
    byWork: flux / storage,
  };
}

/** Pieces of the sum over temperature; with 24 it agrees with the exact time within 1e-5 where the quick sum is used. */
const PIECES = 24;

/** Time from the fire to the stop, s: NaN where the blows keep the bar hotter than the stop. */
export function heatTime(heat: Heat): number {
  const { share, coefficient, flux } = meansOf(heat);
  // A steady flow of heat into the bar is the same as dies that are that much hotter.
  const contact = { share, coefficient, temperature: heat.dieTemperature + flux / (share * coefficient) };
  const around = { ...inAir(heat), contact };
  const body = bodyOf(heat);
  const least = heatLeaving(heat.to, body, around);
  if (!(heat.from > heat.to)) return 0;
  if (!(least > 0)) return Number.NaN;
  if (least < 0.15 * heatLeaving(heat.from, body, around)) {
    const cooled = timeBetween(heat.from, heat.to, body, around);
    return cooled.state === 'known' ? cooled.time : Number.NaN;
  }
  // Far from its balance the bar cools so evenly that Simpson's rule over temperature is enough.
  const step = (heat.from - heat.to) / PIECES;
  let sum = 0;
  for (let i = 0; i <= PIECES; i++) sum += (i === 0 || i === PIECES ? 1 : i % 2 === 1 ? 4 : 2) / heatLeaving(heat.to + i * step, body, around);
  return (HOT_DENSITY * heat.heatCapacity * body.thickness * sum * step) / 3;
}

/** Blows between the first one and the stop, for a heat of that time; 0 where the bar is cold before the first blow, NaN where it stays hot. @param time s */
export const blowsOfHeat = (heat: Heat, time: number): number => (Number.isNaN(time) ? time : Math.max(0, time - heat.firstBlow) * heat.striking * heat.rate);

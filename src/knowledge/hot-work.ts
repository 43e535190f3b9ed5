/** A figure that the sums need and that nobody measures at a hammer. */
export interface Assumption {
  readonly id: string;
  readonly title: string;
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  /** SI unit, empty for a bare number */
  readonly unit: string;
  readonly standing: string;
}

const MEMORY = 'from memory';
const PRACTICE = 'common practice, no source';

/** What the reckoning of hot work takes as given, each with its range. Every one of them goes into the intervals. */
export const ASSUMPTIONS = {
  friction: { id: 'friction', title: 'friction between scaled steel and a dry die', least: 0.2, likely: 0.3, most: 0.45, unit: '', standing: MEMORY },
  held: { id: 'held', title: 'strain that the steel still holds from the blows before', least: 0.03, likely: 0.1, most: 0.2, unit: '', standing: MEMORY },
  emissivity: { id: 'emissivity', title: 'emissivity of scaled steel', least: 0.75, likely: 0.8, most: 0.85, unit: '', standing: MEMORY },
  film: { id: 'film', title: 'film coefficient of still air', least: 5, likely: 10, most: 15, unit: 'W/(m² K)', standing: MEMORY },
  heatCapacity: { id: 'heatCapacity', title: 'heat capacity of hot steel', least: 600, likely: 650, most: 750, unit: 'J/(kg K)', standing: MEMORY },
  pressedContact: { id: 'pressedContact', title: 'contact coefficient under a blow', least: 5e3, likely: 1e4, most: 2e4, unit: 'W/(m² K)', standing: MEMORY },
  contactTime: { id: 'contactTime', title: 'time that a blow keeps both dies on the work', least: 0.001, likely: 0.004, most: 0.012, unit: 's', standing: MEMORY },
  lyingContact: { id: 'lyingContact', title: 'contact coefficient of a bar that lies on the lower die', least: 300, likely: 800, most: 1500, unit: 'W/(m² K)', standing: MEMORY },
  dieTemperature: { id: 'dieTemperature', title: 'temperature of the die faces', least: 293, likely: 373, most: 523, unit: 'K', standing: PRACTICE },
  striking: { id: 'striking', title: 'share of a heat in which the hammer strikes', least: 0.25, likely: 0.45, most: 0.7, unit: '', standing: PRACTICE },
  firstBlow: { id: 'firstBlow', title: 'time from the fire to the first blow', least: 1.5, likely: 3, most: 6, unit: 's', standing: PRACTICE },
  hotLength: { id: 'hotLength', title: 'length of the hot end over its thickness', least: 4, likely: 6, most: 10, unit: '', standing: PRACTICE },
} as const satisfies Readonly<Record<string, Assumption>>;

export type AssumptionName = keyof typeof ASSUMPTIONS;

/** Doubt of a law of flow stress against its own tests: two thirds of them within this factor (from memory; some 10 %). */
export const LAW_SCATTER = 1.08;

/** kg/m³ of hot steel (from memory; 7850 cold). */
export const HOT_DENSITY = 7600;

/** Share of the work of a blow that turns into heat in the bar (from memory). */
export const WORK_INTO_HEAT = 0.9;

/** Air and walls of a shop, K. */
export const SHOP_TEMPERATURE = 293;

/**
 * Least share of its thickness that a full blow must take off the largest bar for steady work. Chosen here: with it the sums give, for
 * usual hammers of all classes, bars within the ranges that the trade names for steady work, so it says in figures what the trade means.
 */
export const LEAST_REDUCTION = 0.006;

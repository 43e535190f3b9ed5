import { RAM_CLASSES } from '../../knowledge/index.ts';
import type { Estimate } from '../../methods/chance/index.ts';
import { interpolate } from '../../methods/numerics/index.ts';
import { readQuantity } from '../../methods/quantity/index.ts';

const kilograms = (pounds: number): number => {
  const reading = readQuantity(`${pounds} lb`, { dimension: 'mass', field: 'class table' });
  if (!reading.ok) throw new Error(`knowledge: the table of classes cannot be read: ${reading.problem.message}: ${pounds} lb`);
  return reading.quantity.value;
};

/** Doubt of a class weight as a share of it (one standard uncertainty): makes differ, and motor, block and dies may be counted or not. */
const LEAST_DOUBT = 0.12;

/**
 * Weight of the whole machine usual for a ram class, kg (common practice, part of it read on public pages). Outside the table it grows
 * in proportion to the ram.
 * @param ramMass nominal ram mass, kg, positive
 */
export function machineMassOfClass(ramMass: number): Estimate {
  const rams = RAM_CLASSES.map((row) => kilograms(row.ramPounds));
  const least = RAM_CLASSES.map((row) => kilograms(row.machinePounds[0]));
  const most = RAM_CLASSES.map((row) => kilograms(row.machinePounds[1]));
  const within = Math.min(rams[rams.length - 1]!, Math.max(rams[0]!, ramMass));
  const low = interpolate(rams, least, within) * (ramMass / within);
  const high = interpolate(rams, most, within) * (ramMass / within);
  const value = (low + high) / 2;
  return { value, uncertainty: Math.max((high - low) / 4, LEAST_DOUBT * value) };
}

import type { Picture } from '../../src/derived/index.ts';
import { picture } from '../../src/derived/index.ts';
import type { Making, MakingDimension, PartToMake } from '../../src/derived/making/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import type { LogOf } from '../cases/log-of.ts';

export const INCH = 0.0254;

/** The picture of an invented hammer on a fixed day. */
export function pictureOf(log: LogOf, system: 'inch' | 'metric' = 'inch'): Picture {
  const found = picture(log.entries, knowledge, '2026-06-03T00:00:00Z', 1, system);
  if (found === undefined) throw new Error('the log enrols no hammer');
  return found;
}

/** A part that was made, or the reason why not as a failure. */
export function made(part: Making | undefined): PartToMake {
  if (part?.state !== 'to-make') throw new Error(`not made: ${JSON.stringify(part)}`);
  return part;
}

export function dimension(part: PartToMake, name: string): MakingDimension {
  const found = part.dimensions.find((one) => one.name === name);
  if (found === undefined) throw new Error(`${part.id} has no ${name}; it has ${part.dimensions.map((one) => one.name).join(', ')}`);
  return found;
}

export const inches = (part: PartToMake, name: string): number => dimension(part, name).quantity.value / INCH;
export const millimetres = (part: PartToMake, name: string): number => dimension(part, name).quantity.value * 1000;

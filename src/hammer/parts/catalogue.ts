import type { LinkageFamily, Look, MeasuringPlace, Part } from '../vocabulary.ts';
import { CASTINGS } from './castings.ts';
import { DIES_AND_SEAT } from './dies-and-seat.ts';
import { DRIVE } from './drive.ts';
import { GROUND_AND_GUARDS } from './ground-and-guards.ts';
import { RAM_AND_LINKAGE } from './ram-and-linkage.ts';
import { RUNNING } from './running.ts';
import { SHAFT_AND_CLUTCH } from './shaft-and-clutch.ts';

/** Every part that the program knows, in the order in which a careful survey visits them. */
export const PARTS: readonly Part[] = [
  ...CASTINGS, ...DIES_AND_SEAT, ...RAM_AND_LINKAGE, ...SHAFT_AND_CLUTCH, ...DRIVE, ...GROUND_AND_GUARDS, ...RUNNING,
];

/** A measuring place with the part that it belongs to. */
export interface PlaceOnPart {
  readonly part: Part;
  readonly place: MeasuringPlace;
}

/** A look with the part that it belongs to. */
export interface LookOnPart {
  readonly part: Part;
  readonly look: Look;
}

const PARTS_BY_ID: ReadonlyMap<string, Part> = new Map(PARTS.map((part) => [part.id, part]));
const PLACES_BY_ID: ReadonlyMap<string, PlaceOnPart> = new Map(PARTS.flatMap((part) => part.places.map((place) => [place.id, { part, place }])));
const LOOKS_BY_ID: ReadonlyMap<string, LookOnPart> = new Map(PARTS.flatMap((part) => part.looks.map((look) => [look.id, { part, look }])));

/** Returns the part with that id (`upper-die`), or undefined where there is none. */
export const partOf = (id: string): Part | undefined => PARTS_BY_ID.get(id);

/** Returns the measuring place with that id (`upper-die.height`, without `@` or `#`) and its part, or undefined where there is none. */
export const placeOf = (id: string): PlaceOnPart | undefined => PLACES_BY_ID.get(id);

/** Returns the look with that id (`frame.crack`, without `@`) and its part, or undefined where there is none. */
export const lookOf = (id: string): LookOnPart | undefined => LOOKS_BY_ID.get(id);

/** Whether only a running hammer answers it: any look or place of the trial, and those of other parts that are seen at work. */
export function needsRun(id: string): boolean {
  const found = lookOf(id) ?? placeOf(id);
  return found !== undefined && (found.part.group === 'running' || ('look' in found ? found.look : found.place).whileRunning === true);
}

/**
 * Returns the parts that a hammer of the family has, each with only the places and looks that apply to the family.
 * A place or look without families of its own applies to all families of its part.
 */
export const partsFor = (family: LinkageFamily): readonly Part[] =>
  PARTS.filter((part) => part.families.includes(family)).map((part) => ({
    ...part,
    places: part.places.filter((place) => place.families === undefined || place.families.includes(family)),
    looks: part.looks.filter((look) => look.families === undefined || look.families.includes(family)),
  }));

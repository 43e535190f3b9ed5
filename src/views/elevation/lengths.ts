import { defaultGeometry, GEOMETRY_PLACES, type GeometryName } from '../../hammer/index.ts';
import type { Picture } from '../../derived/index.ts';

/** Lengths for a drawing, m, and which of them somebody read. */
export interface Lengths {
  readonly of: (name: GeometryName) => number;
  /** Reading or as-made value of a place, or the fallback. */
  readonly place: (key: string, fallback: number) => number;
  readonly read: ReadonlySet<GeometryName>;
}

/** Readings replace the class proportions wherever they were taken. */
export function lengthsOf(picture: Picture): Lengths {
  const { family, ramClass } = picture.known.identity;
  const assumed = defaultGeometry(family, Math.min(500, Math.max(5, ramClass.quantity.value)));
  const read = new Set<GeometryName>();
  const number = (key: string): number | undefined => {
    const places = [key, ...Object.keys(picture.values).filter((one) => one.startsWith(`${key}@`) && !one.includes('#')).sort()];
    for (const place of places) {
      const outcome = picture.values[place]?.outcome;
      if (outcome?.state === 'known') return outcome.quantity.value;
    }
    return undefined;
  };
  const lengths = new Map<GeometryName, number>();
  for (const [name, length] of Object.entries(assumed) as [GeometryName, number][]) {
    const place = GEOMETRY_PLACES[name];
    const reading = place === undefined ? undefined : number(place);
    if (reading !== undefined && reading > 0) {
      read.add(name);
      lengths.set(name, reading);
    } else {
      lengths.set(name, length);
    }
  }
  return {
    read,
    of: (name) => {
      const length = lengths.get(name);
      if (length === undefined) throw new Error(`a ${family} has no length called ${name}`);
      return length;
    },
    place: (key, fallback) => number(key) ?? number(`${key}#as-made`) ?? fallback,
  };
}

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { picture, type Picture } from '../../src/derived/index.ts';
import { GEOMETRY_PLACES, LINKAGE_FAMILIES, partsFor, placeOf, type LinkageFamily } from '../../src/hammer/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { elevation, type ElevationOptions } from '../../src/views/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { INVENTED } from './invented-pictures.ts';

const ALL: readonly ElevationOptions[] = [
  {}, { view: 'front' }, { view: 'side' }, { view: 'front', balloons: false, lettering: 'phone', touch: true }, { view: 'side', balloons: false, lettering: 'phone' }, { view: 'front', lettering: 'none' },
];
const BROKEN = /NaN|undefined|Infinity|null/;

function drawn(picture: Picture): readonly string[] {
  return ALL.map((options) => {
    const svg = elevation(picture, options);
    expect(svg).not.toMatch(BROKEN);
    expect(svg).toMatch(/^<svg [^>]*viewBox="[-\d.]+ [-\d.]+ [\d.]+ [\d.]+"/);
    return svg;
  });
}
function pictureOf(log: LogOf): Picture {
  const found = picture(log.entries, knowledge, '2026-12-31T00:00:00Z', 1);
  if (found === undefined) throw new Error('the case enrols no hammer');
  return found;
}

test('drawing twice draws the same', () => {
  for (const found of INVENTED.values()) expect(drawn(found)).toEqual(drawn(found));
});

describe.each(LINKAGE_FAMILIES)('%s', (family: LinkageFamily) => {
  test.each(['12 lb', '50 lb', '500 lb', '1000 lb'])('a hammer of which nothing is known is drawn, not checked all over, and says that it is assumed: %s', (ram) => {
    const found = pictureOf(new LogOf(ram, family));
    for (const svg of drawn(found)) expect(svg).not.toMatch(/class="part (sound|watch|limited|stand-down)"/);
    expect(elevation(found)).toContain('No length of this drawing was read');
  });

  test('every part drawn is a part of the family, and has its balloon', () => {
    const svg = elevation(pictureOf(new LogOf('50 lb', family)));
    const ids = partsFor(family).map((part) => part.id);
    const parts = new Set([...svg.matchAll(/class="part [a-z-]+" data-part="([a-z-]+)"/g)].map((match) => match[1] ?? ''));
    const ballooned = new Set([...svg.matchAll(/class="balloon [a-z-]+" data-part="([a-z-]+)"/g)].map((match) => match[1] ?? ''));
    expect([...parts].filter((part) => !ids.includes(part))).toEqual([]);
    expect(ballooned).toEqual(parts);
  });

  test('absurd readings that a form still takes draw something', () => {
    const tall = new LogOf('50 lb', family).read('lower-die.height', '11 in').read('upper-die.height', '11 in').read('lower-die.width', '11 in').read('upper-die.rest-gap', '0 in').made('lower-die.height', '1 in').read('seat.sunk', '1 in');
    drawn(pictureOf(tall));
  });

  test('any lengths within what the places allow are drawn with finite coordinates', () => {
    const places = [...new Set([...Object.values(GEOMETRY_PLACES), 'lower-die.height', 'upper-die.height', 'seat.sunk', 'filler-plate.thickness', 'coil-spring.wire', 'bow-spring.leaf-thickness', 'bow-spring.leaves', 'coil-spring.coils'])].flatMap((id) => {
      const found = placeOf(id);
      return found === undefined || !found.part.families.includes(family) ? [] : [found.place];
    });
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(places.length - 1), fc.double({ min: 0, max: 1, noNaN: true })), { maxLength: 20 }), (readings) => {
        const log = new LogOf('50 lb', family);
        for (const [index, share] of readings) {
          const place = places[index];
          if (place === undefined) continue;
          const [least, most] = place.plausible;
          const value = least + (most - least) * share;
          log.put('reading', { place: place.id, quantity: { dimension: place.dimension, value: place.dimension === 'count' ? Math.round(value) : value, uncertainty: 0 }, asWritten: String(value), standing: 'measured', ...(place.at[0] === undefined ? {} : { at: place.at[0] }) });
        }
        drawn(pictureOf(log));
      }),
      { numRuns: 40, seed: 7 },
    );
  });
});

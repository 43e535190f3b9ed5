import { describe, expect, it } from 'vitest';
import { canRead } from '../../src/methods/quantity/index.ts';
import { aboutPart, LINKAGE_FAMILIES, PARTS, lookOf, partOf, partsFor, placeOf } from '../../src/hammer/index.ts';

/** Component rows: 1 to 51, the removal of keys after row 6 and the pouring recipe after row 24. */
const ROWS = [...Array.from({ length: 51 }, (_, index) => index + 1), 6.5, 24.5];

/** Places without which the sums cannot be done. */
const WANTED_PLACES = [
  ...['upper-die', 'lower-die'].flatMap((die) => ['height', 'width', 'length', 'hollow'].map((one) => `${die}.${one}`)),
  'upper-die.rest-gap', 'seat.sunk', 'seat.dish', 'seat.width', 'seat.length', 'seat.depth', 'filler-plate.thickness', 'ram.mass', 'ram.wear-step',
  'ram-guide.play-fore-aft', 'ram-guide.play-side', 'ram-guide.linkage-clearance', 'ram-guide.retraction',
  'connecting-rod.length', 'connecting-rod.thread-engagement', 'connecting-rod.thread-diameter', 'connecting-rod.thread-left', 'connecting-rod.play', 'connecting-rod.thread-pitch',
  'crank.throw', 'crank.pin-diameter', 'crank.pin-play', 'crank.pin-out-of-round',
  'coil-spring.free-length', 'coil-spring.installed-length', 'coil-spring.wire', 'coil-spring.inside-diameter', 'coil-spring.coils', 'coil-spring.shortest-length', 'coil-spring.pit-depth',
  'spring-bolt.thread-left', 'spring-bolt.thread-pitch', 'toggle-pins.play', 'toggle-links.play', 'toggle-arms.length', 'toggle-arms.upper-length', 'crosshead.play',
  'main-shaft.diameter', 'main-shaft.out-of-round', 'main-shaft.taper', 'main-shaft.end-float', 'main-shaft.run-out', 'main-bearings.clearance', 'bearing-caps.shims',
  'clutch-pulley.play', 'clutch-facing.thickness', 'clutch-facing.proud', 'pulley.diameter', 'pulley.face',
  'motor.pulley', 'motor.power', 'motor.speed', 'motor.voltage', 'motor.current', 'motor.leg-voltage', 'belt.width', 'belt.thickness', 'belt.centre-distance', 'phase-converter.power',
  'running.rate', 'running.release-strokes', 'running.release-time', 'running.noise', 'running.bearing-temperature',
  'anvil.mass', 'hold-down-bolts.diameter', 'base.rock', 'base.level', 'foundation.thickness', 'foundation.length', 'foundation.width',
  'bow-spring.leaf-thickness', 'bow-spring.leaf-width', 'bow-spring.leaves', 'bow-spring.span', 'bow-spring.strap-length', 'bow-spring.pivot-play',
  'helve.front-length', 'helve.rear-length', 'helve.cushion-length', 'helve.pivot-play', 'helve.cushion-set',
];

const places = PARTS.flatMap((part) => part.places);
const looks = PARTS.flatMap((part) => part.looks);

describe('parts of a hammer', () => {
  it('each say where they sit and what would make them dangerous', () => {
    for (const { id } of PARTS) for (const words of Object.values(aboutPart(id))) expect(words, id).toMatch(/^[A-Z].{5,}\.$/s);
    expect(() => aboutPart('gearbox')).toThrow('no such part: gearbox');
  });

  it('cover every row of the component list and no other', () => {
    const covered = new Set(PARTS.flatMap((part) => part.rows));
    expect(ROWS.filter((row) => !covered.has(row))).toEqual([]);
    expect([...covered].filter((row) => !ROWS.includes(row))).toEqual([]);
  });

  it('have ids of their own, each place and look under its part', () => {
    const ids = [...PARTS.map((part) => part.id), ...places.map((place) => place.id), ...looks.map((look) => look.id)];
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    for (const part of PARTS) {
      for (const { id } of [...part.places, ...part.looks]) expect(id).toMatch(new RegExp(`^${part.id}\\.[a-z]+(-[a-z]+)*$`));
    }
  });

  it('have every place that the sums need', () => {
    expect(WANTED_PLACES.filter((id) => placeOf(id) === undefined)).toEqual([]);
  });

  it('have bounds in order, a tool and a way of doing it at every place', () => {
    for (const place of places) {
      expect(place.plausible[0], place.id).toBeLessThan(place.plausible[1]);
      expect(place.plausible[0], place.id).toBeGreaterThanOrEqual(0);
      expect(place.tools.length, place.id).toBeGreaterThan(0);
      expect(place.tools.filter((tool) => !canRead(tool, place.dimension)), place.id).toEqual([]);
      expect(place.how, place.id).toMatch(/^[A-Z].{5,}\.$/);
      expect(new Set(place.at).size, place.id).toBe(place.at.length);
    }
  });

  it('have at least two answers to every look, and say how to look', () => {
    for (const look of looks) {
      expect(look.answers.length, look.id).toBeGreaterThanOrEqual(2);
      expect(new Set(look.answers.map((answer) => answer.id)).size, look.id).toBe(look.answers.length);
      expect(look.question, look.id).toMatch(/\?$/);
      expect(look.how, look.id).toMatch(/^[A-Z].{8,}\.$/);
    }
  });

  it('belong to their families: a helve has no toggles, a toggle hammer no bow', () => {
    const idsOf = (family: (typeof LINKAGE_FAMILIES)[number]) => partsFor(family).map((part) => part.id);
    expect(idsOf('helve')).not.toContain('toggle-arms');
    expect(idsOf('helve')).not.toContain('ram-guide');
    expect(idsOf('coil-and-toggle')).not.toContain('bow-spring');
    expect(idsOf('bow-spring')).toContain('ram-guide');
    expect(partsFor('helve').find((part) => part.id === 'running')?.looks.map((look) => look.id)).not.toContain('running.click');
    for (const family of LINKAGE_FAMILIES) expect(new Set(partsFor(family).map((part) => part.group)).size).toBe(7);
  });

  it('are found by id, and what is not there is undefined', () => {
    expect(partOf('keys')?.rows).toEqual([6]);
    expect(placeOf('upper-die.height')?.place.plausible).toEqual([0.005, 0.4]);
    expect(lookOf('seat.iron')?.part.id).toBe('seat');
    expect([partOf('wings'), placeOf('upper-die.wings'), lookOf('frame.wings')]).toEqual([undefined, undefined, undefined]);
  });
});

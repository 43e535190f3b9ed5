import fc from 'fast-check';
import { LogOf } from '../cases/log-of.ts';

const inch = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true }).map((value) => `${value.toFixed(3)} in`);

/** Readings for the parts, each there or not; most fit together, some do not. */
export const readings = fc.record({
  'upper-die.height': inch(0.5, 6), 'lower-die.height': inch(0.5, 6), 'upper-die.width': inch(0.5, 6), 'upper-die.length': inch(1, 10), 'lower-die.width': inch(0.5, 5), 'lower-die.length': inch(1, 10), 'lower-die.face-width': inch(0.5, 6),
  'seat.width': inch(1, 8), 'seat.length': inch(1, 10), 'seat.depth': inch(0.1, 2), 'seat.sunk': inch(0, 0.6), 'keys.thickness@lower': inch(0.1, 0.8), 'keys.taper@lower': inch(0.03, 1), 'keys.thickness@upper': inch(0.1, 0.8),
  'dovetail.flank-angle@lower': fc.integer({ min: 0, max: 40 }).map((value) => `${value} deg`), 'dovetail.flank-angle@upper': fc.integer({ min: 0, max: 40 }).map((value) => `${value} deg`),
  'upper-die.rest-gap': inch(0, 4), 'crank.throw': inch(0.5, 6), 'crank.pin-diameter': inch(0.4, 6), 'toggle-pins.diameter@upper-left': inch(0.3, 4), 'toggle-pins.play@upper-left': inch(0, 0.1),
  'coil-spring.wire': inch(0.1, 1.5), 'coil-spring.inside-diameter': inch(0.3, 6), 'coil-spring.coils': fc.integer({ min: 3, max: 20 }).map(String), 'coil-spring.free-length': inch(2, 20), 'coil-spring.installed-length': inch(1, 15),
  'ram-guide.play-side@top': inch(0, 0.2), 'ram-guide.play-side@bottom': inch(0, 0.2), 'guide-shims.thickness@left': inch(0, 0.3), 'guide-shims.thickness@right': inch(0, 0.3), 'ram-guide.height': inch(2, 20),
  'motor.speed': fc.integer({ min: 600, max: 3500 }).map((value) => `${value} rpm`), 'motor.pulley': inch(1, 8), 'pulley.diameter': inch(6, 40), 'pulley.face': inch(1, 10), 'belt.width': inch(0.5, 8), 'belt.thickness': inch(0.1, 0.5), 'belt.centre-distance': inch(10, 200),
  'crank.pin-shank': inch(0.4, 6), 'crank.pin-play': inch(0, 0.05), 'crank.plate-thickness': inch(0.3, 6), 'crank.pin-length': inch(0.5, 8), 'crank.pin-collar': inch(0.5, 8), 'crank.pin-thread': inch(0.3, 3), 'crank.pin-thread-pitch': inch(0.02, 0.3), 'connecting-rod.eye-width': inch(0.5, 8), 'connecting-rod.eye-outside': inch(0.5, 12),
  'crosshead.pin-diameter': inch(0.3, 5), 'crosshead.eye-width': inch(0.5, 8), 'crosshead.eye-outside': inch(0.5, 12), 'clutch-pulley.shaft-diameter': inch(0.6, 8), 'clutch-pulley.hub-length': inch(0.5, 12), 'clutch-pulley.hub-outside': inch(1, 20),
  'toggle-pins.length@upper-left': inch(0.5, 10), 'toggle-pins.length@lower-right': inch(0.5, 10), 'toggle-pins.eye-width@upper-left': inch(0.3, 6), 'toggle-pins.eye-outside@upper-left': inch(0.5, 8), 'motor.shaft-diameter': inch(0.4, 3), 'motor.key-width': inch(0.1, 1), 'motor.shaft-length': inch(1, 8),
  'guide-shims.width': inch(0.3, 6), 'guide-shims.holes': fc.integer({ min: 0, max: 6 }).map(String), 'guide-shims.hole-diameter': inch(0.2, 2), 'guide-shims.hole-pitch': inch(0.5, 8), 'hold-down-bolts.diameter': inch(0.3, 2), 'hold-down-bolts.spacing@along': inch(4, 70), 'hold-down-bolts.spacing@across': inch(4, 40),
  'ram.dovetail-depth': inch(0.1, 3), 'ram.dovetail-width': inch(0.5, 8), 'ram.dovetail-length': inch(1, 10), 'keys.height@upper': inch(0.2, 3), 'drive-line.countershaft-driven': inch(3, 30), 'drive-line.countershaft-diameter': inch(0.6, 4), 'drive-line.motor-belt-width': inch(0.5, 8),
  'frame.base-length': inch(15, 80), 'frame.base-width': inch(8, 50),
}, { requiredKeys: [] });

export type Readings = typeof readings extends fc.Arbitrary<infer Value> ? Value : never;

/** A log with these readings, dies 3 in as made. */
export function logWith(given: Readings, kind: 'countershaft' | 'motor-flat-belt' = 'motor-flat-belt'): LogOf {
  const log = new LogOf('50 lb', 'coil-and-toggle').made('upper-die.height', '3 in').made('lower-die.height', '3 in').look('ram-guide.kind', 'gibs').look('drive-line.kind', kind).look('keys.taper-flank@lower', 'die').look('keys.side@lower', 'left').look('keys.taper-flank@upper', 'die');
  for (const [key, text] of Object.entries(given)) if (text !== undefined) log.read(key, text);
  return log;
}

/** Readings of a bow, each there or not. */
export const bowReadings = fc.record({
  'bow-spring.leaf-thickness': inch(0.1, 1), 'bow-spring.leaf-width': inch(0.6, 6), 'bow-spring.span': inch(8, 60), 'bow-spring.camber': inch(0, 20), 'bow-spring.deflection': inch(0.1, 6), 'bow-spring.new-leaf-length': inch(4, 90), 'bow-spring.centre-hole': inch(0, 1.2),
  'bow-spring.pin-diameter@left': inch(0.3, 4), 'bow-spring.pin-diameter@middle': inch(0.3, 4), 'bow-spring.eye-bore@left': inch(0.3, 5), 'bow-spring.eye-bore@right': inch(0.3, 5), 'bow-spring.eye-width@left': inch(0.4, 8), 'bow-spring.eye-width@middle': inch(0.4, 8), 'bow-spring.eye-outside@middle': inch(0.5, 8),
}, { requiredKeys: [] });

/** A bow hammer with these readings. */
export function bowWith(given: typeof bowReadings extends fc.Arbitrary<infer Value> ? Value : never, leaf: 'main' | 'plain'): LogOf {
  const log = new LogOf('65 lb', 'bow-spring').look('bow-spring.new-leaf', leaf);
  for (const [key, text] of Object.entries(given)) if (text !== undefined) log.read(key, text);
  return log;
}

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
  'frame.base-length': inch(15, 80), 'frame.base-width': inch(8, 50),
}, { requiredKeys: [] });

export type Readings = typeof readings extends fc.Arbitrary<infer Value> ? Value : never;

/** A log with these readings, dies 3 in as made. */
export function logWith(given: Readings): LogOf {
  const log = new LogOf('50 lb', 'coil-and-toggle').made('upper-die.height', '3 in').made('lower-die.height', '3 in').look('ram-guide.kind', 'gibs');
  for (const [key, text] of Object.entries(given)) if (text !== undefined) log.read(key, text);
  return log;
}

import type { Grade } from './criterion.ts';

/** A finding that forbids asking more of the hammer than it gives today. */
export interface LoadBearer {
  readonly criterion: string;
  /** Holds at this grade and worse. */
  readonly from: Exclude<Grade, 'sound'>;
}

const limited = (...ids: readonly string[]): readonly LoadBearer[] => ids.map((criterion) => ({ criterion, from: 'limited' }));

/**
 * What carries more where a setting asks for more speed or a longer throw: load on motor, belt and linkage grows with the square
 * of the speed and more. None is raised while one of these is limited or stands the hammer down. Common practice, no source.
 */
export const LOAD_BEARERS: readonly LoadBearer[] = [
  ...limited('motor.share', 'motor.temperature', 'motor.start', 'converter.size', 'belt.power', 'belt.state', 'belt.runs', 'drive.slip', 'drive.rate'),
  ...limited('frame.crack', 'guide.ears', 'ram.crack', 'toggles.crack', 'links.crack', 'crosshead.crack', 'crank.crack', 'crank.pin-tight', 'crank.pin-play', 'pulley.crack', 'pins.held', 'pins.play-sum', 'rod.thread', 'rod.straight', 'rod.play', 'caps.bolts'),
  ...limited('spring.crack', 'spring.travel-left', 'spring.clash', 'spring.set', 'spring.pits', 'spring-bolt.state', 'bow.crack', 'bow.clip', 'bow.straps', 'bow.pivot-play', 'helve.crack', 'helve.head-bolts', 'helve.cushions', 'helve.cushion-set', 'helve.pivot-play'),
  ...limited('keys.secure', 'bolts.state', 'running.bearing-temperature', 'journals.clearance'),
  // A leaf that is bent further than it stands is bent further still by more speed.
  { criterion: 'bow.stress', from: 'watch' },
];

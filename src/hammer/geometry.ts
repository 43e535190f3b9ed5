import type { LinkageFamily } from './vocabulary.ts';

/** Lengths that an elevation needs. Heights are above the floor. */
export type GeometryName =
  | 'overall-height' | 'base-length' | 'base-width' | 'base-thickness' | 'column-depth' | 'throat-depth'
  | 'seat-height' | 'seat-width' | 'seat-length' | 'die-height' | 'die-width' | 'die-length' | 'rest-gap'
  | 'ram-width' | 'ram-height' | 'guide-bottom' | 'guide-top'
  | 'shaft-height' | 'shaft-diameter' | 'crank-plate-diameter' | 'throw' | 'rod-length'
  | 'pulley-diameter' | 'pulley-face' | 'motor-pulley-diameter' | 'treadle-height'
  | 'linkage-height' | 'arm-length' | 'link-length' | 'spring-length' | 'spring-diameter'
  | 'bow-span' | 'bow-height' | 'bow-thickness'
  | 'pivot-height' | 'helve-front' | 'helve-rear' | 'helve-depth';

/** Default geometry, m; a name that the family does not have is absent. */
export type Geometry = Readonly<Partial<Record<GeometryName, number>>>;

/** Printed beside every drawing that uses a default. */
export const GEOMETRY_NOTE = 'assumed: common practice, no source; proportions of our own, scaled from the 50 lb class';

/** The reading that replaces a default length, where one is taken. */
export const GEOMETRY_PLACES: Readonly<Partial<Record<GeometryName, string>>> = {
  'overall-height': 'frame.height', 'base-length': 'frame.base-length', 'base-width': 'frame.base-width', 'throat-depth': 'frame.throat',
  'seat-height': 'frame.seat-height', 'seat-width': 'seat.width', 'seat-length': 'seat.length', 'rest-gap': 'upper-die.rest-gap',
  'die-width': 'lower-die.width', 'die-length': 'lower-die.length', 'ram-width': 'ram.width', 'ram-height': 'ram.height',
  'shaft-height': 'main-shaft.height', 'shaft-diameter': 'main-shaft.diameter', 'crank-plate-diameter': 'crank.plate-diameter', throw: 'crank.throw',
  'rod-length': 'connecting-rod.length', 'pulley-diameter': 'pulley.diameter', 'pulley-face': 'pulley.face', 'motor-pulley-diameter': 'motor.pulley',
  'arm-length': 'toggle-arms.length', 'link-length': 'toggle-links.length', 'spring-length': 'coil-spring.installed-length',
  'bow-span': 'bow-spring.span', 'bow-height': 'bow-spring.camber', 'helve-front': 'helve.front-length', 'helve-rear': 'helve.rear-length', 'helve-depth': 'helve.depth',
};

/** Ram mass of the class from which all is scaled: 50 lb. */
const REFERENCE_MASS = 22.679_618_5;

/** The seat keeps near working height whatever the class: it grows far slower than the rest. */
const SEAT_EXPONENT = 0.12;

/** Lengths of a 50 lb class hammer, m. Names ending in a height are measured from the seat floor here and lifted onto it below. */
const COMMON: Geometry = {
  'base-width': 0.55, 'base-thickness': 0.08, 'seat-width': 0.076, 'seat-length': 0.127, 'die-height': 0.076, 'die-width': 0.06, 'die-length': 0.115,
  'rest-gap': 0.025, throw: 0.05, 'crank-plate-diameter': 0.2, 'shaft-diameter': 0.051, 'pulley-diameter': 0.36, 'pulley-face': 0.09,
  'motor-pulley-diameter': 0.066, 'treadle-height': 0.12,
};

const ABOVE_SEAT: readonly GeometryName[] = ['overall-height', 'guide-bottom', 'guide-top', 'linkage-height', 'shaft-height', 'pivot-height'];

const FAMILIES: Readonly<Record<LinkageFamily, Geometry>> = {
  'coil-and-toggle': {
    'overall-height': 1, 'base-length': 0.95, 'column-depth': 0.24, 'throat-depth': 0.19, 'ram-width': 0.11, 'ram-height': 0.22, 'guide-bottom': 0.23, 'guide-top': 0.38,
    'linkage-height': 0.49, 'shaft-height': 0.88, 'rod-length': 0.34, 'arm-length': 0.15, 'link-length': 0.1, 'spring-length': 0.13, 'spring-diameter': 0.076,
  },
  'bow-spring': {
    'overall-height': 1.05, 'base-length': 1, 'column-depth': 0.26, 'throat-depth': 0.22, 'ram-width': 0.11, 'ram-height': 0.26, 'guide-bottom': 0.23, 'guide-top': 0.42,
    'linkage-height': 0.56, 'shaft-height': 0.92, 'rod-length': 0.31, 'bow-span': 0.56, 'bow-height': 0.11, 'bow-thickness': 0.045,
  },
  helve: {
    'overall-height': 0.72, 'base-length': 1.85, 'column-depth': 0.3, 'throat-depth': 0.6, 'ram-width': 0.12, 'ram-height': 0.16,
    'shaft-height': -0.2, 'rod-length': 0.42, 'pivot-height': 0.26, 'helve-front': 0.95, 'helve-rear': 0.5, 'helve-depth': 0.13,
  },
};

const SEAT_HEIGHT = 0.6;

/**
 * Default lengths of a hammer, for drawing what nobody measured yet. Every one of them is an assumption (`GEOMETRY_NOTE`).
 * Lengths grow with the cube root of the ram mass, as alike castings do; the seat height grows far slower.
 * @param family linkage family
 * @param ramMass nominal ram mass, kg, 5 to 500; outside it throws, since no class of the program lies there
 * @returns lengths in m by name; heights are above the floor. Common practice, no source; proportions of our own.
 */
export function defaultGeometry(family: LinkageFamily, ramMass: number): Geometry {
  if (!(ramMass >= 5 && ramMass <= 500)) throw new Error(`default geometry is for rams of 5 to 500 kg; asked for: ${ramMass} kg`);
  const ratio = ramMass / REFERENCE_MASS;
  const scale = Math.cbrt(ratio);
  const seat = SEAT_HEIGHT * Math.pow(ratio, SEAT_EXPONENT);
  const scaled = Object.entries({ ...COMMON, ...FAMILIES[family] }).map(([name, length]): [string, number] => [
    name, length * scale + (ABOVE_SEAT.includes(name as GeometryName) ? seat : 0),
  ]);
  return { 'seat-height': seat, ...Object.fromEntries(scaled) };
}

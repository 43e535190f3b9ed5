/**
 * What a quantity measures. The SI unit that a value of each is kept in stands in `SI_UNIT`.
 */
export type Dimension =
  | 'length' | 'area' | 'volume' | 'mass' | 'force' | 'pressure' | 'stiffness' | 'angle' | 'rotation' | 'velocity'
  | 'time' | 'power' | 'energy' | 'torque' | 'temperature' | 'voltage' | 'current' | 'frequency' | 'ratio' | 'count'
  | 'hardness' | 'level' | 'taper' | 'viscosity' | 'density' | 'inertia';

/**
 * The unit that a value of each dimension is kept in.
 * Rotation is kept in turns a second, not in radians: the trade counts turns and blows, and a blow is a turn.
 * Viscosity is the dynamic one. Hardness is the Rockwell C number: scales of hardness do not convert exactly.
 */
export const SI_UNIT: Readonly<Record<Dimension, string>> = {
  length: 'm', area: 'm²', volume: 'm³', mass: 'kg', force: 'N', pressure: 'Pa', stiffness: 'N/m', angle: 'rad', rotation: '1/s (turns)',
  velocity: 'm/s', time: 's', power: 'W', energy: 'J', torque: 'N·m', temperature: 'K', voltage: 'V', current: 'A', frequency: 'Hz',
  ratio: '1', count: '1', hardness: 'HRC', level: 'dB', taper: 'm/m', viscosity: 'Pa·s', density: 'kg/m³', inertia: 'kg·m²',
};

/** Each dimension in the words of a sentence: "4 lb is a mass, not a length". */
export const DIMENSION_WORDS: Readonly<Record<Dimension, string>> = {
  length: 'a length', area: 'an area', volume: 'a volume', mass: 'a weight', force: 'a force', pressure: 'a pressure or stress',
  stiffness: 'a spring rate', angle: 'an angle', rotation: 'a speed of turning', velocity: 'a speed', time: 'a time', power: 'a power',
  energy: 'an energy', torque: 'a torque', temperature: 'a temperature', voltage: 'a voltage', current: 'a current',
  frequency: 'a frequency', ratio: 'a ratio', count: 'a count', hardness: 'a hardness', level: 'a sound level', taper: 'a taper',
  viscosity: 'a viscosity', density: 'a density', inertia: 'a moment of inertia',
};

/** Every dimension, for a reader that must check a name. */
export const DIMENSIONS = Object.keys(SI_UNIT) as readonly Dimension[];

import type { Dimension } from './dimension.ts';

/** A way of getting a number, and how far it can be trusted. */
export interface Tool {
  readonly us: string;
  readonly uk: string;
  /** Half-width of the 95 % interval of one careful reading, SI, for each dimension that it can read. 0: as good as what was written. */
  readonly expandedUncertainty: Readonly<Partial<Record<Dimension, number>>>;
  /** The same as a share of the value, where it grows with the value; the greater of the two holds. */
  readonly expandedShare?: Readonly<Partial<Record<Dimension, number>>>;
  /** Smallest division of the usual tool, SI; absent where it has no scale. */
  readonly division?: number;
  readonly note: string;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';
const INCH = 0.0254;
const THOU = INCH / 1000;
const POUND = 0.45359237;
const POUND_FORCE = POUND * 9.80665;
const DEGREE = Math.PI / 180;
const PER_MINUTE = 1 / 60;

type Figures = Tool['expandedUncertainty'];
const tool = (us: string, uk: string, expandedUncertainty: Figures, note: string, division?: number, expandedShare?: Figures): Tool =>
  ({ us, uk, expandedUncertainty, note, source: PRACTICE, ...(division === undefined ? {} : { division }), ...(expandedShare === undefined ? {} : { expandedShare }) });
/** What is worked out from lengths: the density and the shape are most of the doubt of a weight. */
const WORKED_OUT: Figures = { area: 0.03, volume: 0.06, mass: 0.1 };

const heightGauge = tool('vernier height gage', 'vernier height gauge', { length: 3 * THOU }, 'From a flat surface; the surface is most of the doubt.', THOU);
const threadPitch = tool('thread pitch gage', 'thread pitch gauge', { length: 5 * THOU, count: 0, frequency: 0 }, 'Names the pitch or does not fit; the doubt is of a pitch read between leaves.');
const scale = tool('scale', 'scale', { mass: 1 * POUND, force: 1 * POUND_FORCE }, 'A platform or shop scale of unknown age: one per cent.', POUND, { mass: 0.01, force: 0.01 });
const stopwatch = tool('stopwatch', 'stopwatch', { time: 0.4, rotation: 2 * PER_MINUTE, frequency: 2 * PER_MINUTE }, 'Start and stop by thumb; a rate counted over 30 seconds.', 0.01);
const voltmeter = tool('multimeter', 'multimeter', { voltage: 0.5, current: 0.2 }, 'One per cent and a few digits.', 0.1, { voltage: 0.01, current: 0.02 });
const record = tool('earlier record', 'earlier record', {}, 'A sheet or a book; as good as what was written.');

const ALL = {
  rule: tool('steel rule', 'steel rule', { length: INCH / 32 }, 'Two ends read by eye in a dark shop; a weight is worked out from the size.', INCH / 64, WORKED_OUT),
  tape: tool('tape measure', 'tape measure', { length: INCH / 16 }, 'Hook play and sag to about 10 ft; a weight is worked out from the size.', INCH / 16, WORKED_OUT),
  caliper: tool('caliper', 'calliper', { length: 3 * THOU }, 'Worn and dirty faces, not a clean bench.', THOU, { area: 0.01, volume: 0.03, mass: 0.05 }),
  'vernier-height-gauge': heightGauge,
  'height-gauge': heightGauge,
  'depth-gauge': tool('depth gage', 'depth gauge', { length: 4 * THOU }, 'From a machined rim.', THOU),
  micrometer: tool('micrometer', 'micrometer', { length: 0.5 * THOU }, 'Zero checked the same day.', 0.1 * THOU),
  feeler: tool('feeler gage', 'feeler gauge', { length: 1 * THOU }, 'The leaf that goes and the leaf that does not.', THOU),
  'dial-indicator': tool('dial indicator', 'dial test indicator', { length: 1 * THOU }, 'Magnetic base on rough iron; whole swing read both ways.', THOU),
  'plastic-thread-gauge': tool('plastic-thread gage', 'plastic-thread gauge', { length: 0.5 * THOU }, 'Crushed width against the printed scale, a drop of oil on soft metal.', 0.5 * THOU),
  'telescoping-gauge': tool('telescoping gage', 'telescopic gauge', { length: 2 * THOU }, 'Feel of the hand, then a micrometer over it.'),
  'radius-gauge': tool('radius gage', 'radius gauge', { length: INCH / 64 }, 'The nearest leaf that shows no light.', INCH / 64),
  straightedge: tool('straightedge', 'straight edge', { length: 2 * THOU }, 'With feelers below it.'),
  protractor: tool('protractor', 'protractor', { angle: 0.5 * DEGREE }, 'Held to a cast or filed face.', DEGREE),
  level: tool('machinist level', 'engineer’s level', { taper: 0.0002, angle: 0.0002, length: 2 * THOU, ratio: 0.0002 }, 'A 0.005 in per foot vial, turned end for end; a length is the packing under a level one foot long.', 0.0004),
  'spring-scale': tool('spring scale', 'spring balance', { mass: 1 * POUND, force: 1 * POUND_FORCE }, 'Two per cent of the load.', 0.5 * POUND, { mass: 0.02, force: 0.02 }),
  'bathroom-scale': tool('bathroom scale', 'bathroom scales', { mass: 3 * POUND, force: 3 * POUND_FORCE }, 'Level floor, load in the middle.', POUND, { mass: 0.02, force: 0.02 }),
  scale,
  tachometer: tool('tachometer', 'tachometer', { rotation: 2 * PER_MINUTE, frequency: 2 * PER_MINUTE, velocity: 0.02 }, 'Belt speed unsteady by more than the meter.', PER_MINUTE),
  'counted-blows': tool('counted blows', 'counted blows', { rotation: 4 * PER_MINUTE, frequency: 4 * PER_MINUTE, count: 1 }, 'One blow in the half minute either way, with both ends.'),
  clock: tool('clock', 'clock', { time: 2, rotation: 6 * PER_MINUTE, frequency: 6 * PER_MINUTE }, 'Second hand across the shop.', 1),
  stopwatch,
  ear: tool('by ear', 'by ear', { rotation: 15 * PER_MINUTE, frequency: 15 * PER_MINUTE, time: 1, count: 1, level: 10 }, 'A practised ear.'),
  eye: tool('by eye', 'by eye', { length: INCH / 8, angle: 5 * DEGREE, ratio: 0.1, count: 0, area: 0.0006, taper: 0.01 }, 'A practised eye at arm’s length; a whole count is taken as exact.'),
  hand: tool('by hand', 'by hand', { temperature: 10, mass: 5 * POUND, force: 5 * POUND_FORCE, time: 2 }, 'Bearable for five seconds is about 60 °C; a heft is a guess.'),
  plate: tool('rating plate', 'rating plate', { power: 0, voltage: 0, current: 0, rotation: 0, frequency: 0, mass: 0, length: 0, temperature: 0, torque: 0, force: 0, pressure: 0, ratio: 0, count: 0, time: 0 }, 'As printed; what stands on it is a rating, not a reading.'),
  'clamp-meter': tool('clamp meter', 'clamp meter', { current: 0.1, voltage: 1 }, 'Three per cent of the current.', 0.1, { current: 0.03, voltage: 0.02 }),
  voltmeter, multimeter: voltmeter,
  'file-test': tool('file test', 'file test', { hardness: 6 }, 'Skates or bites, against files of known hardness.'),
  'portable-hardness': tool('portable hardness tester', 'portable hardness tester', { hardness: 3 }, 'Rebound on ground steel, five strikes.', 0.1),
  thermometer: tool('touch thermometer', 'contact thermometer', { temperature: 2 }, 'Contact or infrared on dull paint.', 0.1),
  'sound-level-meter': tool('sound level meter', 'sound level meter', { level: 2 }, 'A class 2 meter or a checked telephone; impulses fool the cheap ones.', 0.1),
  'thread-pitch': threadPitch, 'thread-gauge': threadPitch,
  recording: tool('sound recording', 'sound recording', { time: 0.005, rotation: 0.5 * PER_MINUTE, frequency: 0.5 * PER_MINUTE, count: 0, level: 6 }, 'Counted from the file; an uncalibrated microphone gives level poorly.'),
  camera: tool('photograph or film', 'photograph or film', { length: INCH / 16, time: 0.05, count: 0, angle: 2 * DEGREE, rotation: 1 * PER_MINUTE, frequency: 1 * PER_MINUTE, ratio: 0.05 }, 'A rule in the picture, square to the lens.'),
  record,
} as const satisfies Record<string, Tool>;

export type ToolName = keyof typeof ALL;

/** Every way of getting a number that the program knows. */
export const TOOLS: Readonly<Record<ToolName, Tool>> = ALL;

/** True where the tool can give a number of that dimension; a share or a count worked out from its readings is always allowed, and a record may hold anything. */
export const canRead = (name: ToolName, dimension: Dimension): boolean =>
  name === 'record' || dimension === 'ratio' || dimension === 'count' || reads(TOOLS[name], dimension);

/** Names of the tools that have a figure for the dimension. */
export const toolsFor = (dimension: Dimension): readonly ToolName[] => (Object.keys(TOOLS) as ToolName[]).filter((name) => reads(TOOLS[name], dimension));

/**
 * Returns the half-width of the 95 % interval of one careful reading with the tool, SI; 0 where it is as good as what was written.
 * @param value the reading, SI
 */
export const toolHalfWidth = (name: ToolName, dimension: Dimension, value: number): number =>
  Math.max(TOOLS[name].expandedUncertainty[dimension] ?? 0, (TOOLS[name].expandedShare?.[dimension] ?? 0) * Math.abs(value));

const reads = (one: Tool, dimension: Dimension): boolean => one.expandedUncertainty[dimension] !== undefined || one.expandedShare?.[dimension] !== undefined;

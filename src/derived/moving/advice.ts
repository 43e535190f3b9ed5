import type { LinkageFamily } from '../../hammer/index.ts';
import { formatQuantity, quantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';
import type { MovingInput } from './moving-input.ts';
import type { Stood } from './least-lean.ts';

/** One sentence of advice and where it comes from. */
export interface Advice {
  readonly sentence: string;
  /** id of a source in knowledge */
  readonly source: string;
}

const PRACTICE = 'common-practice';
const PAGE = 'page-safety';
/** m: skid of 4 by 4 in timber and a pipe of 1 1/4 in below it */
const SKID_AND_ROLLER = 0.089 + 0.042;
/** m to keep at each side of a door */
const ELBOW = 0.05;

const length = (metres: number, system: PrintSystem): string => formatQuantity(quantity(metres, 'length'), { system, doubt: false, resolution: system === 'inch' ? 0.0127 : 0.01 });
const degrees = (angle: number): string => `${Math.floor((angle * 180) / Math.PI)}°`;

/** Where a hammer of the family is taken hold of. @param parts whether the anvil comes off on its own */
export function liftPoints(family: LinkageFamily, parts: boolean): readonly Advice[] {
  const common: readonly Advice[] = [
    { sentence: 'Never by the ram, guide, linkage, spring, shaft, wheel or treadle: the column and the base carry, nothing else.', source: PRACTICE },
    { sentence: 'Bolted down to a platform wider than its base it cannot roll over; then the platform is lifted.', source: PAGE },
  ];
  const byFamily: Readonly<Record<LinkageFamily, readonly Advice[]>> = {
    'coil-and-toggle': [{ sentence: 'A sling goes low through the throat round the column, and a tie round the top of the column keeps it upright; edges padded.', source: PAGE }],
    'bow-spring': [
      { sentence: 'A sling goes low through the throat round the column, and a tie round the top keeps it upright; edges padded.', source: PAGE },
      { sentence: 'The bow comes off first: it sticks out, and a strap laid over it breaks a leaf.', source: PRACTICE },
    ],
    helve: [
      { sentence: 'The helve, its cushions and the head come off first; the frame is then slung at both ends of the bed.', source: PRACTICE },
      { sentence: 'The bed is long: two points well apart, or it swings end over end.', source: PRACTICE },
    ],
  };
  return [...(parts ? [{ sentence: 'The anvil comes out and travels on its own: left in, its mass is blamed for many broken bodies.', source: 'page-other-families' }] : []), ...byFamily[family], ...common];
}

/** What slings, rollers and slopes ask for, with the figures of this machine. */
export function slingAdvice(input: MovingInput, whole: Stood, least: number | undefined, system: PrintSystem): readonly Advice[] {
  const standing = 'state' in whole ? undefined : whole;
  const height = standing?.gravityHeight.state === 'known' ? standing.gravityHeight : undefined;
  return [
    ...(height === undefined || input.family === 'helve' ? [] : [{
      sentence: height.high > input.seatHeight
        ? `The centre of gravity may lie as high as ${length(height.high, system)}, above the seat at ${length(input.seatHeight, system)}: a sling in the throat alone may let it roll over. Tie the top.`
        : `The centre of gravity lies at ${length(height.low, system)} to ${length(height.high, system)}, below the seat: a sling in the throat lifts from above it. Tie the top all the same.`,
      source: 'derived',
    }]),
    { sentence: 'Legs of a sling no flatter than 45° from level: at 60° each of two legs carries 0.58 of the weight, at 45° 0.71, at 30° all of it.', source: 'rigid-body-mechanics' },
    { sentence: 'Every strap, shackle and hoist carries a rating that can be read, above the weight with its doubt; lift a finger’s breadth, stop, look, then go on.', source: PRACTICE },
    { sentence: 'Three pipes of 1 1/4 in and a pry bar roll it over a sound floor; a second person watches, nobody stands where it would fall.', source: PAGE },
    ...(least === undefined ? [] : [{ sentence: `It goes over at a lean of ${degrees(least)} or more by this estimate: keep every slope, jack and skid below ${degrees(least / 3)}, a third of it, and lower it a little on each side in turn.`, source: 'derived' }]),
    { sentence: 'On a trailer: low, long side along the road, chained four ways at base and column, ram blocked, and whatever springs let off.', source: PRACTICE },
  ];
}

/** Whether it goes through a door that was measured. */
export function doorSentences(input: MovingInput, system: PrintSystem): readonly string[] {
  const { door } = input;
  if (door === undefined) return ['The door was not measured.'];
  const narrow = Math.min(input.baseLength, input.baseWidth);
  const wide = narrow + 2 * ELBOW;
  const tall = input.overallHeight + SKID_AND_ROLLER;
  return [
    wide <= door.width
      ? `Its base goes through the door with ${length(door.width - narrow, system)} to spare; wheel, motor and treadle may stick out further.`
      : `Its base is too wide for the door; ${length(wide, system)} with room for the hands is wanted: ${length(door.width, system)}.`,
    tall <= door.height
      ? `Its height on skid and rollers goes through with ${length(door.height - tall, system)} to spare.`
      : `On skid and rollers it is too tall for the door; ${length(tall, system)} is wanted: ${length(door.height, system)}. It is not laid over to pass: shaft and wheel come off, or another way in is found.`,
  ];
}

import { printQuantity, type Picture } from '../../derived/index.ts';
import type { Making, PartToMake } from '../../derived/making/index.ts';
import { formatQuantity, type Quantity } from '../../methods/quantity/index.ts';

const SUPPLY: Readonly<Record<string, string>> = { single: 'single phase', three: 'three-phase', 'three-from-converter': 'three-phase, from the converter', 'direct-current': 'direct current' };

const valueOf = ({ values }: Picture, key: string): Quantity | undefined => {
  const outcome = values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity : undefined;
};
const rpm = (speed: Quantity): string => formatQuantity({ ...speed, uncertainty: 0 }, { unit: 'rpm', resolution: 1 / 60, doubt: false });

/** What a motor is ordered by besides its power: speed and supply of the one that is there, and the pulley on which the rate of the hammer hangs. */
export function motorSizes(picture: Picture, makings: readonly Making[]): string {
  const [speed, voltage, pulley] = ['motor.speed', 'motor.voltage', 'motor.pulley'].map((key) => valueOf(picture, key));
  const supply = SUPPLY[picture.known.looks['motor.phase']?.answer ?? ''];
  const plate = [speed === undefined ? undefined : rpm(speed), voltage === undefined ? undefined : printQuantity(voltage, picture.system), supply].filter((words) => words !== undefined);
  const unread = [speed === undefined ? ['speed'] : [], voltage === undefined ? ['voltage'] : [], supply === undefined ? ['phases'] : []].flat();
  const read = plate.length === 0 ? '' : `: ${plate.join(', ')}, as the old one has it`;
  const first = unread.length === 0 ? '' : `${read === '' ? ': ' : '; '}first read ${unread.join(', ')} off the plate of the old one`;
  return `${read}${first}${speed === undefined || pulley === undefined ? '' : pulleyWords(picture, pulley, speed, makings)}`;
}

function pulleyWords(picture: Picture, pulley: Quantity, speed: Quantity, makings: readonly Making[]): string {
  const size = printQuantity(pulley, picture.system);
  const width = makings.flatMap((one) => (one.state === 'to-make' && one.kind === 'belt' ? one.dimensions.filter((size) => size.name === 'width') : []))[0]?.quantity;
  const face = width === undefined ? '' : `, its face wider than the belt of ${printQuantity({ ...width, uncertainty: 0 }, picture.system)}`;
  return `; with a pulley of ${size} where the belt runs, bored and keyed to its shaft${face}. A motor of another speed wants one of ${size} x ${rpm(speed)} / its own speed, or the hammer runs at another rate`;
}

/** What a belt is ordered by, from its drawing; and what to read first where it is wider than the old one. */
export function beltSizes(picture: Picture, belt: PartToMake): string {
  const size = (name: string): string | undefined => {
    const found = belt.dimensions.find((one) => one.name === name);
    return found === undefined ? undefined : printQuantity({ ...found.quantity, uncertainty: 0 }, picture.system);
  };
  const [width, thick, cut, least] = [size('width'), size('thickness'), size('cut-length'), size('length')];
  const long = cut !== undefined ? `${cut} long to cut` : least === undefined ? undefined : `${least} round both pulleys, and more for the way over the idler, which the tape says`;
  const old = valueOf(picture, 'belt.width');
  const wider = belt.dimensions.some((one) => one.name === 'width' && old !== undefined && one.quantity.value > old.value + 1e-9);
  const idler = picture.known.looks['belt-idler.fitted']?.answer === 'yes';
  const faces = wider ? `wider than the old one, so first measure the face of the motor’s pulley${idler ? ' and that of the idler' : ''}, which nobody has read: each is wider than its belt` : undefined;
  return [[belt.material.charAt(0).toLowerCase() + belt.material.slice(1), ...(width === undefined ? [] : [`${width} wide`]), ...(thick === undefined ? [] : [`${thick} thick`]), ...(long === undefined ? [] : [long])].join(', '), ...(faces === undefined ? [] : [faces])].join('; ');
}

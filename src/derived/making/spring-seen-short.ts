import { EUROPEAN_SHEAR_MODULUS, activeCoils, helicalRate, type CoilEnds } from '../../methods/elements/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { FigureReader } from './figure.ts';
import { easierSpring } from './spring-choice.ts';

/** The new spring, SI. */
interface NewSpring {
  readonly free: number;
  readonly solid: number;
  readonly inside: number;
  readonly rate: number;
  readonly ends: CoilEnds;
  /** Share of the travel that is kept. */
  readonly keep: number;
}

/**
 * What follows from a spring that was seen shorter, running, than a new one may be: how short the new one is likely to come, why it
 * is ordered all the same, and what would serve where it comes too short. The old one's reading is carried over twice, as the same
 * force and as the same energy from the installed length; the truth lies about there.
 * @param shortest length seen, m
 */
export function seenShortWords(spring: NewSpring, shortest: number, reader: FigureReader, system: PrintSystem): string {
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system, 'down');
  const allowed = spring.free - (1 - spring.keep) * (spring.free - spring.solid);
  const come = carriedOver(spring, shortest, reader);
  const least = come === undefined ? shortest : Math.min(come.force, come.energy);
  const why = come === undefined
    ? 'It is ordered as made all the same, since nothing else is known to fit its bolt and its carrier.'
    : `That was the old one, which has set ${printQuantity({ dimension: 'length', value: come.set, uncertainty: 0 }, system)}: under the same force the new one comes to ${print(come.force)}, taking up the same energy to ${print(come.energy)}. ${least >= allowed ? 'Both are long enough, which is why it is ordered as made.' : 'That is near enough to order it as made and try it.'}`;
  const wanted = (spring.free - Math.min(least, allowed)) / (1 - spring.keep);
  const other = easierSpring(spring.inside, spring.rate, Math.max(wanted, spring.free - spring.solid), spring.free, spring.ends, system === 'metric');
  const serve = other === undefined
    ? 'no stocked wire gives more travel at this rate in a quarter more length: less throw or less speed, then'
    : `this would serve: same rate and bore, wire ${printQuantity({ dimension: 'length', value: other.wire, uncertainty: 0 }, system)}, ${Math.round(other.totalCoils * 4) / 4} coils, free ${print(other.freeLength)}, outside ${print(other.outsideDiameter)}, if bolt, carrier and box have room for it; else less throw or less speed`;
  return `${why} Film the new one at full tread with a rule beside it: it may come no shorter than ${printQuantity({ dimension: 'length', value: allowed, uncertainty: 0 }, system, 'up')}. Where it comes shorter, ${serve}.`;
}

/** Lengths to which what the old spring bore takes the new one, and how much the old one has set; undefined where that was not read. */
function carriedOver({ free, inside, rate, ends }: NewSpring, shortest: number, reader: FigureReader): { readonly force: number; readonly energy: number; readonly set: number } | undefined {
  const read = (place: string): number | undefined => reader.find(`coil-spring.${place}`)?.quantity.value;
  const [freeNow, installed, wire, coils] = [read('free-length'), read('installed-length'), read('wire'), read('coils')];
  if (freeNow === undefined || installed === undefined || freeNow >= free || freeNow <= shortest || installed <= shortest) return undefined;
  const bore = read('inside-diameter') ?? inside;
  const old = wire === undefined || coils === undefined || activeCoils(coils, ends) < 1 ? rate : helicalRate(EUROPEAN_SHEAR_MODULUS['oil-hardened'], wire, bore + wire, activeCoils(coils, ends));
  const [down, at] = [freeNow - shortest, Math.max(0, freeNow - installed)];
  const energy = (old / 2) * (down ** 2 - at ** 2);
  return { force: free - (old * down) / rate, energy: free - Math.sqrt(Math.max(0, free - installed) ** 2 + (2 * energy) / rate), set: free - freeNow };
}

import { EUROPEAN_SHEAR_MODULUS, activeCoils, helicalRate } from '../../methods/elements/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import { springLoad, type SpringAsSet } from '../upkeep/index.ts';
import type { FigureReader } from './figure.ts';
import { servingSpring, travelWanted, type SpringDemand, type SpringSizes } from './spring-choice.ts';

/** The new spring as drawn, SI. */
export interface DrawnSpring extends SpringSizes {
  readonly rate: number;
  /** Shortest that it may run down to, m: that of the setting sheet. */
  readonly least: number;
  /** Share of the travel that is kept. */
  readonly keep: number;
  /** As the setting sheet wants it, where that is known. */
  readonly set?: SpringAsSet;
}

/**
 * What follows from a spring that was seen shorter, running, than a new one may be: how short the new one is likely to come, why it
 * is ordered all the same, and what would serve where it comes too short. The old one's reading is carried over twice, as the same
 * force and as the same energy from the installed length; the truth lies about there.
 * @param shortest length seen, m
 */
export function seenShortWords(spring: DrawnSpring, shortest: number, reader: FigureReader, system: PrintSystem): string {
  const figure = (value: number, rounding: 'up' | 'down' | 'nearest'): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system, rounding);
  const down = (value: number): string => figure(value, 'down');
  const come = carriedOver(spring, shortest, reader);
  const demand = come?.demand ?? asSeen(spring, shortest, reader);
  const wanted = travelWanted(spring.rate, demand);
  // Where nothing tells the old one from the new, what was seen is what is to be looked for.
  const short = spring.free - wanted < spring.least;
  const slacker = come === undefined || spring.set?.load === undefined ? undefined : spring.free - travelWanted(spring.rate, { ...demand, load: spring.set.load.value, force: 0 });
  const begin = slacker === undefined || !short ? '' : ` Set at ${figure(spring.set!.length.value, 'nearest')}, as the setting sheet has it, it comes to about ${down(slacker)}: begin there.`;
  const why = come === undefined
    ? 'It is ordered as made all the same, since nothing else is known to fit its bolt and its carrier.'
    : `That was the old one, which has set ${figure(come.set, 'nearest')}: under the same force the new one comes to ${down(spring.free - demand.force / spring.rate)}, with the nut as it stands taking up the same energy to ${down(spring.free - travelWanted(spring.rate, { ...demand, force: 0 }))}. ${short ? 'That is likely too short.' : 'Both are long enough, which is why it is ordered as made.'}${begin}`;
  const film = `Film the new one at full tread with a rule beside it: it may come no shorter than ${figure(spring.least, 'up')}.`;
  return `${why} ${film} Where it comes shorter, ${short ? servesWords(spring, demand, system) : 'less throw or less speed'}.`;
}

/** What would serve in its place, or that nothing does. */
function servesWords(spring: DrawnSpring, demand: SpringDemand, system: PrintSystem): string {
  const figure = (value: number, rounding: 'up' | 'down' | 'nearest'): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system, rounding);
  const other = servingSpring(spring, demand, spring.keep, system === 'metric');
  if (other === undefined) return 'no stocked wire gives more travel at this rate in a quarter more length: less throw or less speed, then';
  const same = other.wire === spring.wire && other.coils === spring.coils;
  const wound = same ? `same wire, coils and bore, wound longer: free ${figure(other.free, 'nearest')}` : `same bore, nearly the same rate: wire ${figure(other.wire, 'nearest')}, ${other.coils} coils, free ${figure(other.free, 'nearest')}, outside ${figure(other.inside + 2 * other.wire, 'up')}`;
  const stands = demand.load > 0 ? `Set at the same load of ${springLoad(demand.load, system)} it stands ${figure(other.set, 'nearest')} long, where the drawn one stands ${figure(spring.free - demand.load / spring.rate, 'nearest')}; it` : 'It';
  return `this would serve: ${wound}. ${stands} comes to ${figure(other.free - other.wanted, 'down')} and may come to ${figure(other.least, 'up')}. Box, bolt and carrier must have room for it; else less throw or less speed`;
}

/** What the old spring bore, and how much it has set; undefined where that was not read. */
function carriedOver({ free, inside, rate, ends }: DrawnSpring, shortest: number, reader: FigureReader): { readonly demand: SpringDemand; readonly set: number } | undefined {
  const read = (place: string): number | undefined => reader.find(`coil-spring.${place}`)?.quantity.value;
  const [freeNow, installed, wire, coils] = [read('free-length'), read('installed-length'), read('wire'), read('coils')];
  if (freeNow === undefined || installed === undefined || freeNow >= free || freeNow <= shortest || installed <= shortest) return undefined;
  const bore = read('inside-diameter') ?? inside;
  const old = wire === undefined || coils === undefined || activeCoils(coils, ends) < 1 ? rate : helicalRate(EUROPEAN_SHEAR_MODULUS['oil-hardened'], wire, bore + wire, activeCoils(coils, ends));
  const [down, at] = [freeNow - shortest, Math.max(0, freeNow - installed)];
  // The nut stays where it is: the new one, longer when free, bears more there.
  return { demand: { load: rate * Math.max(0, free - installed), force: old * down, energy: (old / 2) * (down ** 2 - at ** 2) }, set: free - freeNow };
}

/** Where the old one cannot be told from the new: the new one itself, taken down as far as was seen. */
function asSeen({ free, rate }: DrawnSpring, shortest: number, reader: FigureReader): SpringDemand {
  const installed = reader.find('coil-spring.installed-length')?.quantity.value ?? free;
  const [down, at] = [free - shortest, Math.min(free - shortest, Math.max(0, free - installed))];
  return { load: rate * at, force: rate * down, energy: (rate / 2) * (down ** 2 - at ** 2) };
}

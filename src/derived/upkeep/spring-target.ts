import { activeCoils, EUROPEAN_SHEAR_MODULUS, helicalRate, helicalStress, permissibleSolidStress, solidLength, springIndex, wahlFactor, wireStrengthSides, type CoilEnds, type WireKind } from '../../methods/elements/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import { coilEndsOf } from '../spring/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { SettingInputs, SettingTarget, Targeted } from './setting-line.ts';

/** Spring travel that is kept before the coils touch; common practice. */
const TRAVEL_KEPT = 0.2;
const POUND = 4.4482216152605;
const RENEWED = 'spring.renew';
/** The order sheet names a wire that stands going solid, and this one where none does; an old spring is taken as plain wire. */
const ORDERED_AT_BEST: WireKind = 'chrome-silicon';
const NEW_SPRING = ['coil-spring.free-length', 'coil-spring.wire', 'coil-spring.coils'] as const;

/**
 * How short the spring may be at the shortest, running: with the spring that there will be once the open jobs are done. The new
 * one is as made, as its order sheet has it; a fifth of its travel is kept, and more where its wire would be loaded beyond what it stands.
 */
export function springTarget({ known: hammer, jobs, system = 'inch' }: SettingInputs, known: (key: string) => Quantity | undefined): Targeted {
  const renewed = jobs?.has(RENEWED) ?? false;
  const size = sizeOf(jobs, known);
  const [free, wire, coils] = [size('free-length'), size('wire'), size('coils')];
  const { ends } = coilEndsOf(hammer.looks);
  if (free === undefined || wire === undefined || coils === undefined) return { missing: [...NEW_SPRING] };
  const solid = solidLength(wire.value, coils.value, ends);
  const travel = free.value - solid;
  if (!(travel > 0) || activeCoils(coils.value, ends) < 1) return { missing: [...NEW_SPRING] };
  const share = stressShareAtSolid(wire.value, size('inside-diameter')?.value, coils.value, travel, ends, renewed ? ORDERED_AT_BEST : 'oil-tempered');
  const byTravel = solid + TRAVEL_KEPT * travel;
  const byStress = share === undefined || share <= 1 ? solid : free.value - travel / share;
  // Free length counts a fifth, the coils four fifths; wire and number of coils make the solid length.
  const uncertainty = Math.hypot(TRAVEL_KEPT * free.uncertainty, (1 - TRAVEL_KEPT) * (solid / wire.value) * wire.uncertainty, (1 - TRAVEL_KEPT) * wire.value * coils.uncertainty);
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system);
  const which = byStress > byTravel ? 'shorter than this its wire is loaded beyond what it stands by the lower of two tables.' : 'a fifth of the travel is kept before the coils touch.';
  const asMade = known('coil-spring.free-length#as-made') !== undefined;
  const newOne = renewed ? ` Reckoned with the new spring${asMade ? ', as its order sheet has it' : ', of which only the old one’s sizes are known: read it when it is there'}: free ${print(free.value)}, solid ${print(solid)}. What was found belongs to the old one.` : '';
  return {
    target: {
      from: { dimension: 'length', value: Math.max(byTravel, byStress), uncertainty }, basis: 'worked-out', ...(renewed ? { anew: true as const } : {}),
      sentence: `Arms close to level, and never shorter running than this: ${which}${newOne}`, sources: ['en-13906-1', 'common-practice'],
    },
    missing: [],
  };
}

/** The spring as it is to stand, ram hanging. */
export interface SpringAsSet {
  /** Least length as set, m, with its doubt. */
  readonly length: Quantity;
  /** What the spring bears at that length, N; absent without the inside diameter, or where it would stand slack. */
  readonly load?: Quantity;
  /** What it may run down to from there, m. */
  readonly least: Quantity;
  readonly target: SettingTarget;
}

/**
 * How long the spring is to stand as set, ram hanging: the least that it may run down to, and as much more as it was seen to run shorter
 * than it stood. A start for the spanner; the film says what it runs down to. Setting sheet and order sheet both print this one.
 * @returns with the readings that are missing, and nothing set, where one is
 */
export function springAsSet(inputs: SettingInputs, known: (key: string) => Quantity | undefined): { readonly set?: SpringAsSet; readonly missing: readonly string[] } {
  const { target, missing } = springTarget(inputs, known);
  const [stood, ran] = [known('coil-spring.installed-length'), known('coil-spring.shortest-length')];
  if (target?.from === undefined || stood === undefined || ran === undefined) return { missing: [...missing, ...(stood === undefined ? ['coil-spring.installed-length'] : []), ...(ran === undefined ? ['coil-spring.shortest-length'] : [])] };
  const swing = stood.value - ran.value;
  const system = inputs.system ?? 'inch';
  const print = (value: number, rounding: 'up' | 'nearest' = 'nearest'): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system, rounding);
  const length = { ...target.from, value: target.from.value + swing, uncertainty: Math.hypot(target.from.uncertainty, stood.uncertainty, ran.uncertainty) };
  const load = loadAt(inputs, known, length.value);
  const bears = load === undefined ? '' : ` Standing ${print(length.value)} long it bears ${springLoad(load.value, system)}.`;
  return {
    set: {
      length, least: target.from, ...(load === undefined ? {} : { load }),
      target: {
        from: length, basis: 'worked-out', ...(target.anew === undefined ? {} : { anew: target.anew }), sources: ['common-practice', 'own-model'],
        sentence: `${print(target.from.value, 'up')} is the shortest that it may run down to, and ${print(swing)} is what it ran shorter than it stood. Start there, and once it may run again film it.${bears}${target.anew === true ? ' A spring that ran shorter than that was overloaded: find out first why it was drawn so tight, or the new one goes the same way.' : ''}`,
      },
    },
    missing: [],
  };
}

/** The line of the setting sheet. */
export function springSetTarget(inputs: SettingInputs, known: (key: string) => Quantity | undefined): Targeted {
  const { set, missing } = springAsSet(inputs, known);
  return set === undefined ? { missing } : { target: set.target, missing };
}

/** A load of a spring for a sentence: whole pounds or newtons; its rate is never known finer. */
export const springLoad = (load: number, system: PrintSystem): string => {
  const step = system === 'inch' ? POUND : 1;
  return printQuantity({ dimension: 'force', value: Math.round(load / step) * step, uncertainty: 0 }, system);
};

/** What the spring that there will be bears at a length, N. */
function loadAt({ known: hammer, jobs }: SettingInputs, known: (key: string) => Quantity | undefined, length: number): Quantity | undefined {
  const size = sizeOf(jobs, known);
  const [free, wire, coils, inside] = [size('free-length'), size('wire'), size('coils'), size('inside-diameter')];
  if (free === undefined || wire === undefined || coils === undefined || inside === undefined || length >= free.value) return undefined;
  const rate = helicalRate(EUROPEAN_SHEAR_MODULUS['oil-hardened'], wire.value, inside.value + wire.value, activeCoils(coils.value, coilEndsOf(hammer.looks).ends));
  return { dimension: 'force', value: rate * (free.value - length), uncertainty: 0 };
}

/** A size of the spring that there will be: as made where it is renewed. */
const sizeOf = (jobs: SettingInputs['jobs'], known: (key: string) => Quantity | undefined) => (place: string): Quantity | undefined =>
  (jobs?.has(RENEWED) === true ? known(`coil-spring.${place}#as-made`) : undefined) ?? known(`coil-spring.${place}`);

/** Stress with the coils touching over what this wire stands by the lower table; undefined without the inside diameter. */
function stressShareAtSolid(wire: number, inside: number | undefined, coils: number, travel: number, ends: CoilEnds, kind: WireKind): number | undefined {
  if (inside === undefined) return undefined;
  const mean = inside + wire;
  const load = helicalRate(EUROPEAN_SHEAR_MODULUS['oil-hardened'], wire, mean, activeCoils(coils, ends)) * travel;
  return helicalStress(load, mean, wire, wahlFactor(springIndex(mean, wire))) / permissibleSolidStress(wireStrengthSides(kind, wire).lower);
}

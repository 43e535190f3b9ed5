import type { Quantity } from '../../methods/quantity/index.ts';
import type { Known } from '../survey/index.ts';
import { workOutStack } from './die-stack.ts';

export type DieEnd = 'upper' | 'lower';
/** Looks a value up; undefined where it is not known. */
export type Lookup = (key: string) => Quantity | undefined;

/** The plate under the lower die, and the job that fits it. */
const PLATE_JOB = 'seat.fit-filler-plate';
/** The job that grinds both faces: a die that stays loses its hollow at the least, and the new one makes that good too. */
export const GRIND_JOB = 'dies.grind-pair';

/** Jobs that change how far the dies stand apart, or how the ram hangs, by an amount that no reading gives; what each changes. */
const UNRECKONED: Readonly<Record<string, string>> = {
  'sow-block.put-back': 'the sow block', 'sow-block.re-true': 'the sow block', 'bow.replace-leaf': 'the new leaf', 'bow.renew-spring': 'the new bow', 'bow.renew-straps': 'the new straps',
  'helve.renew': 'the new helve', 'helve.renew-cushions': 'the new cushions', 'helve.bush-pivot': 'the bushed pivot', 'rod.renew': 'the new rod', 'links.renew': 'the links', 'arms.renew': 'the new arms', 'spring.renew': 'the new spring',
};
/** Jobs that cut the seat floor; a filler plate gives back what they take. */
const CUTS: readonly string[] = ['seat.mill', 'seat.grind-with-plate-jig'];

/** Looks up the readings of a hammer and what follows from them for its stack. */
export function stackLookup(known: Known): Lookup {
  const ledger = { family: known.identity.family, values: new Map(Object.entries(known.values)) };
  workOutStack(ledger);
  return (key) => {
    const outcome = ledger.values.get(key)?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
}

/** How the open jobs change the stack of dies, seat and plate. */
export interface StackAfter {
  /** How much nearer to one another the faces stand once all of it is done, m; below 0 where they stand further apart. */
  readonly rise: Quantity;
  /** The rise by the plate alone, under the die that is there now. */
  readonly byPlate: Quantity;
  /** Jobs that change it by a known amount, those that bring the faces nearer marked. */
  readonly changing: readonly { readonly job: string; readonly nearer: boolean }[];
  /** What changes it besides, by an amount that no reading gives. */
  readonly unreckoned: readonly string[];
}

/** Height of a die once the open jobs are done, above the true base of its seat; undefined where a height is not known. */
export function heightAfter(end: DieEnd, known: Lookup, jobs: ReadonlySet<string>): Quantity | undefined {
  const other: DieEnd = end === 'upper' ? 'lower' : 'upper';
  if (!jobs.has(`dies.new-${end}`)) return groundDown(end, known, jobs);
  const made = known(`${end}-die.height#as-made`);
  if (made === undefined || jobs.has(`dies.new-${other}`)) return made;
  const both = known(`${other}-die.height#as-made`);
  const rest = groundDown(other, known, jobs);
  return both === undefined || rest === undefined ? undefined : { ...made, value: made.value + both.value - rest.value, uncertainty: Math.hypot(made.uncertainty, both.uncertainty, rest.uncertainty) };
}

/** Net height of a die that stays, on the plate that an open job puts under the lower one. */
export function standing(end: DieEnd, known: Lookup, jobs: ReadonlySet<string>): Quantity | undefined {
  const net = known(`stack.${end}-net`);
  const plate = end === 'lower' && jobs.has(PLATE_JOB) ? known('stack.filler-plate') : undefined;
  return net === undefined || plate === undefined ? net : { ...net, value: net.value + plate.value, uncertainty: Math.hypot(net.uncertainty, plate.uncertainty) };
}

/** Height of a die that stays, once its face is ground where an open job grinds it: less its hollow, as far as that was read. */
function groundDown(end: DieEnd, known: Lookup, jobs: ReadonlySet<string>): Quantity | undefined {
  const stays = standing(end, known, jobs);
  const hollow = jobs.has(GRIND_JOB) ? known(`${end}-die.hollow`) : undefined;
  return stays === undefined || hollow === undefined ? stays : { ...stays, value: stays.value - hollow.value, uncertainty: Math.hypot(stays.uncertainty, hollow.uncertainty) };
}

/**
 * What the open jobs make of the stack, with the linkage left as it stands.
 * @param jobs ids of the jobs that are still to be done
 */
export function stackAfter(known: Lookup, jobs: ReadonlySet<string>): StackAfter {
  const rises: Quantity[] = [];
  const changing: { readonly job: string; readonly nearer: boolean }[] = [];
  const unreckoned = [...jobs].flatMap((job) => UNRECKONED[job] ?? []);
  const plate = jobs.has(PLATE_JOB) ? known('stack.filler-plate') : undefined;
  for (const end of ['upper', 'lower'] as const) {
    const renewed = `dies.new-${end}`;
    const raised = end === 'lower' && plate !== undefined && plate.value > 0;
    if (!jobs.has(renewed) && !raised) {
      const hollow = jobs.has(GRIND_JOB) ? known(`${end}-die.hollow`) : undefined;
      if (hollow !== undefined) rises.push({ ...hollow, value: -hollow.value });
      continue;
    }
    const now = known(`stack.${end}-net`);
    const then = heightAfter(end, known, jobs);
    if (now === undefined || then === undefined) {
      unreckoned.push(`the ${jobs.has(renewed) ? `new ${end} die` : 'filler plate'}`);
      continue;
    }
    const rise = { ...now, value: then.value - now.value, uncertainty: Math.hypot(now.uncertainty, then.uncertainty) };
    rises.push(rise);
    changing.push({ job: jobs.has(renewed) ? renewed : PLATE_JOB, nearer: rise.value > 0 });
  }
  if (plate === undefined && CUTS.some((job) => jobs.has(job))) unreckoned.push('what is cut off the seat floor');
  const sum: Quantity = { dimension: 'length', value: rises.reduce((total, one) => total + one.value, 0), uncertainty: Math.hypot(...rises.map((one) => one.uncertainty)) };
  return { rise: sum, byPlate: plate ?? { dimension: 'length', value: 0, uncertainty: 0 }, changing, unreckoned: [...new Set(unreckoned)] };
}

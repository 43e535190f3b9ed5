import type { Quantity } from '../../methods/quantity/index.ts';
import type { Finding } from '../condition/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { Known } from '../survey/index.ts';
import { beforeTheDies, gapPlan, usualGap, type GapPlan } from '../worksheet/index.ts';
import { LOUD, type Values } from './figure.ts';
import type { Making, PartKind, PartToMake } from './part-to-make.ts';

/** What of a picture the lines are worked out from. */
interface GapGround {
  readonly known: Known;
  readonly values: Values;
  readonly findings: readonly Finding[];
  readonly system: PrintSystem;
}

/** The job that puts a part into the stack. */
const GOES_IN_BY: Readonly<Partial<Record<PartKind, string>>> = { 'filler-plate': 'seat.fit-filler-plate', 'lower-die': 'dies.new-lower', 'upper-die': 'dies.new-upper' };

/**
 * Adds to the sheets what only all open jobs together can say: to a die or plate that takes up the gap, what is done to the
 * linkage before it goes in; to a prop, for which gap it is sawn, and how long it is for another.
 * @param jobs ids of the jobs that are still to be done
 */
export function gapLines(ground: GapGround, jobs: ReadonlySet<string>): (making: Making) => Making {
  const plan = gapPlanOf(ground, jobs);
  const line = beforeTheDies(plan, ground.known.identity.family, ground.system);
  return (making) => {
    if (making.state !== 'to-make') return making;
    if (making.kind === 'ram-prop') return { ...making, notes: [...propNotes(making, plan, ground), ...making.notes] };
    if (line === '' || !plan.waiting.includes(GOES_IN_BY[making.kind] ?? '')) return making;
    const loud = making.warnings.filter((one) => one.startsWith(LOUD));
    return { ...making, warnings: [...loud, line, ...making.warnings.filter((one) => !one.startsWith(LOUD))] };
  };
}

/** What the open jobs together make of the gap. @param jobs ids of the jobs that are still to be done */
export function gapPlanOf({ known, findings, values }: GapGround, jobs: ReadonlySet<string>): GapPlan {
  const lookup = (key: string): Quantity | undefined => {
    const outcome = values[key]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  return gapPlan({ known, findings, lookup, jobs });
}

/** The prop is as long as the dies stand apart at the top: a gap that is wider or narrower makes it longer or shorter by as much. */
function propNotes(prop: PartToMake, { now, later: open, move, stack }: GapPlan, { known, system }: GapGround): readonly string[] {
  const length = prop.dimensions.find((one) => one.name === 'length')?.quantity.value;
  if (length === undefined || now === undefined) return [];
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system, 'down');
  const at = (gap: number): string => print(length + gap - now.value);
  const usual = usualGap(known.identity.ramClass.quantity.value);
  const later = open === undefined ? undefined : open.value + move;
  const changed = later !== undefined && Math.abs(later - now.value) > 1e-4;
  const outside = now.value < usual.from.value || now.value > usual.to.value;
  return [[
    `For the dies of today, with ${print(now.value)} between them at the bottom.`,
    ...(stack.changing.length > 0 && later !== undefined ? [changed ? `After the open jobs, with the gap set to ${print(later)}: ${at(later)}.` : `After the open jobs, with the gap set to ${print(later)} again, the same length serves.`] : []),
    ...(outside ? [`Once the gap is set as is usual, ${print(usual.from.value)} to ${print(usual.to.value)}, it is ${at(usual.from.value)} to ${at(usual.to.value)}: saw a new one then, since under a short one the ram has room to fall.`] : ['Saw a new one whenever the gap is set wider: under a short one the ram has room to fall.']),
    ...(stack.unreckoned.length > 0 ? ['The open jobs change the gap by an amount that no reading gives: measure the room again when they are done.'] : []),
  ].join(' ')];
}

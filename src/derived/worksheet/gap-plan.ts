import { instantMs } from '../../entries/index.ts';
import { GAP_JOB, ROOM_JOB, USUAL_GAPS } from '../../knowledge/index.ts';
import { interpolate } from '../../methods/numerics/index.ts';
import { readQuantity, type Dimension, type Quantity } from '../../methods/quantity/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { stackAfter, type Lookup, type StackAfter } from '../stack/index.ts';

/** A change of the stack, and a gap that is off, up to which nobody touches the rod: 1/16 in. */
const NEAR = 0.0254 / 16;
/** The matters that judge the gap; where they find it sound it is left, whatever is usual. */
const GAP_CRITERIA: readonly string[] = ['stack.rest-gap', 'stack.rest-gap-wide'];

/** What must happen to the linkage so that the gap is right once the open jobs have changed the stack. */
export interface GapPlan {
  readonly stack: StackAfter;
  /** Gap at bottom dead centre as it was read; absent where nobody read it, or where the rod was moved since. */
  readonly now?: Quantity;
  /** The gap once the open jobs are done, with the linkage as it stands now; below 0 where the dies would meet before the bottom. */
  readonly later?: Quantity;
  /** What it is to be. */
  readonly wanted: { readonly from: Quantity; readonly to: Quantity };
  /** How far the ram, or the head of a helve, has to be moved, m: above 0 is up. */
  readonly move: number;
  /** Jobs before which it has to be moved, or the dies meet when it is first barred over. */
  readonly waiting: readonly string[];
  /** Day on which the rod was moved after the gap was read. */
  readonly movedOn?: string;
}

export interface GapGround {
  readonly known: Known;
  readonly findings: readonly Finding[];
  readonly lookup: Lookup;
  /** Ids of the jobs that are still to be done. */
  readonly jobs: ReadonlySet<string>;
  /** Range that the gap is wanted in; the usual one of the class where left out. */
  readonly range?: { readonly from: Quantity; readonly to: Quantity };
}

const inches = (value: number, dimension: Dimension = 'length'): Quantity => {
  const reading = readQuantity(`${value} ${dimension === 'mass' ? 'lb' : 'in'}`, { dimension, field: 'usual gaps' });
  if (!reading.ok) throw new Error(`knowledge: usual gaps: ${reading.problem.message}`);
  return { ...reading.quantity, uncertainty: 0 };
};

/** The gap that is usual for a ram of this weight, kg: common practice. */
export function usualGap(mass: number): { readonly from: Quantity; readonly to: Quantity } {
  const masses = USUAL_GAPS.map((row) => inches(row.ramPounds, 'mass').value);
  const at = (end: 0 | 1): Quantity => ({ dimension: 'length', value: interpolate(masses, USUAL_GAPS.map((row) => inches(row.inches[end]).value), mass), uncertainty: 0 });
  return { from: at(0), to: at(1) };
}

/**
 * Reckons the gap as it will be, and how far the linkage has to be moved for it. A gap that the report calls good is kept; else the
 * nearer end of what is wanted is aimed at.
 */
export function gapPlan({ known, findings, lookup, jobs, range = usualGap(known.identity.ramClass.quantity.value) }: GapGround): GapPlan {
  const stack = stackAfter(lookup, jobs);
  const movedOn = movedSince(known);
  const now = movedOn === undefined ? lookup('upper-die.rest-gap') : undefined;
  const judged = findings.filter((one) => GAP_CRITERIA.includes(one.criterion) && one.grade !== 'does-not-apply');
  const good = now !== undefined && judged.length > 0 && judged.every((one) => one.grade === 'sound');
  const kept = good ? { ...now, uncertainty: 0 } : undefined;
  const wanted = kept === undefined ? range : { from: kept.value < range.from.value ? kept : range.from, to: kept.value > range.to.value ? kept : range.to };
  const later = now === undefined ? undefined : { ...now, value: now.value - stack.rise.value, uncertainty: Math.hypot(now.uncertainty, stack.rise.uncertainty) };
  const aim = later === undefined ? 0 : later.value < wanted.from.value ? wanted.from.value - later.value : later.value > wanted.to.value ? wanted.to.value - later.value : 0;
  // Nobody read the gap: moving the ram as far as the faces come nearer leaves it what it is.
  const move = movedOn !== undefined ? 0 : later === undefined ? stack.rise.value : aim;
  return { stack, ...(now === undefined ? {} : { now }), ...(later === undefined ? {} : { later }), wanted, move: Math.abs(move) <= NEAR ? 0 : move, waiting: waitingJobs(stack, now, later), ...(movedOn === undefined ? {} : { movedOn }) };
}

/** True where the open jobs change the stack by more than is left alone. */
export const changesStack = ({ stack }: GapPlan): boolean => Math.abs(stack.rise.value) > NEAR;

/** The jobs with which the dies would meet, as far as the readings can tell: within twice their doubt. */
function waitingJobs(stack: StackAfter, now: Quantity | undefined, later: Quantity | undefined): readonly string[] {
  const nearer = stack.changing.filter((one) => one.nearer).map((one) => one.job);
  if (stack.rise.value <= NEAR) return [];
  const closed = (gap: number, doubt: number): boolean => gap - 2 * doubt <= 0;
  const plate = stack.byPlate.value > 0 && now !== undefined && closed(now.value - stack.byPlate.value, Math.hypot(now.uncertainty, stack.byPlate.uncertainty)) ? ['seat.fit-filler-plate'] : [];
  if (plate.length === 0 && later !== undefined && !closed(later.value, later.uncertainty)) return [];
  return [...new Set([...plate, ...nearer])];
}

/** The day on which the rod was moved, where that was after the gap was read. */
function movedSince(known: Known): string | undefined {
  const read = instantMs(known.values['upper-die.rest-gap']?.when ?? '');
  const moved = [ROOM_JOB, GAP_JOB].flatMap((id) => {
    const progress = known.progress[id];
    return progress?.state === 'done' ? [progress.when] : [];
  }).sort().at(-1);
  const at = moved === undefined ? undefined : instantMs(moved);
  return moved === undefined || at === undefined || read === undefined || at <= read ? undefined : moved.slice(0, 10);
}

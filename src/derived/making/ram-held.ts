import { DIES_OUT, ROOM_JOB } from '../../knowledge/index.ts';
import { isOpen, type Worksheet, type WorksheetJob } from '../worksheet/index.ts';

/** One state in which the ram hangs over hands: which dies are out, and how far it was raised before. */
export interface RamHeld {
  readonly out: 'lower' | 'upper' | 'both';
  /** How far an earlier job of the worksheet has moved the ram up, m. */
  readonly raised: number;
  /** Numbers of the jobs on the worksheet. */
  readonly jobs: readonly number[];
}

/**
 * The states in which the open jobs have the ram held up with a die out, in the order of the worksheet; jobs of one state together.
 * @param move how far the ram is moved up before what raises the stack goes in, m
 */
export function ramHeld(worksheet: Worksheet, move: number): readonly RamHeld[] {
  const open = worksheet.jobs.filter(isOpen);
  const room = open.find((one) => one.job === ROOM_JOB)?.number;
  const held: RamHeld[] = [];
  for (const job of open) {
    const out = takenOut(job);
    if (out === undefined) continue;
    const raised = room !== undefined && job.number > room ? Math.max(0, move) : 0;
    const same = held.findIndex((one) => one.out === out && one.raised === raised);
    const one = held[same];
    if (one === undefined) held.push({ out, raised, jobs: [job.number] });
    else held[same] = { ...one, jobs: [...one.jobs, job.number] };
  }
  return held;
}

function takenOut(job: WorksheetJob): RamHeld['out'] | undefined {
  const taken = DIES_OUT[job.job];
  if (taken !== 'as-found') return taken;
  const ends = new Set(job.cures.map((cure) => cure.split('@')[1]));
  return ends.size === 1 && ends.has('lower') ? 'lower' : ends.size === 1 && ends.has('upper') ? 'upper' : 'both';
}

import { nextJob, type Picture, type Settling } from '../../derived/index.ts';
import { lookOf, needsRun, placeOf } from '../../hammer/index.ts';
import { timeWords } from '../../views/index.ts';
import { partPath, pathOf } from '../route.svelte.ts';

export interface NextToDo {
  readonly words: string;
  readonly path: string;
}

/** The one thing to do now: settle what the verdict waits for, else the first job, else the oldest gap. */
export function nextToDo(picture: Picture): NextToDo | undefined {
  const { hammer } = picture.known;
  // Cold before running, then the quickest.
  const gate = [...picture.duty.missing].sort((a, b) => Number(isOfRun(a)) - Number(isOfRun(b)) || a.minutes - b.minutes)[0];
  if (picture.duty.verdict === 'not-known-yet' && gate !== undefined) {
    const part = partToSettle(gate);
    return { words: `${gate.title}, ${gate.minutes} min. ${gate.how}`, path: part === undefined ? pathOf(hammer, 'round') : `${partPath(hammer, part)}#${(gate.missing[0] ?? '').split('#')[0]}` };
  }
  const job = nextJob(picture.worksheet);
  if (job !== undefined) return { words: `${job.title}, about ${timeWords(job.hours.likely)}${job.parts.length === 0 ? '' : `. Fetch: ${job.parts.map((part) => part.words).join(', ')}`}`, path: `${pathOf(hammer, 'work')}#${job.job}` };
  const gap = picture.notChecked.find((one) => picture.duty.verdict !== 'stand-down' || one.part !== 'running');
  if (gap !== undefined) return { words: `Look at the ${gap.name}: not checked yet`, path: partPath(hammer, gap.part) };
  return undefined;
}

/** The part at which an open question is settled. */
function partToSettle(settling: Settling): string | undefined {
  const [id = ''] = (settling.missing[0] ?? '').split(/[@#]/);
  return lookOf(id)?.part.id ?? placeOf(id)?.part.id;
}

const isOfRun = ({ missing: [key = ''] }: Settling): boolean => needsRun(key.split(/[@#]/)[0] ?? key);

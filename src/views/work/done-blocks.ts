import { isOpen, progressOf, type DoneJob, type FoundAndLeft, type Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block } from '../report/block.ts';
import { findingNames } from './budget-blocks.ts';
import { keyWords, keysWords } from './key-words.ts';
import { workHours } from '../sentences/money-words.ts';

/** Most readings and looks of one job that are set out; a job that touched more names how many more. */
const MOST_SET_OUT = 8;

/** What was done so far: when, by whom, what was found before it and what was left after it, and what is still to be proven. */
export function doneBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const done = progressOf(picture.known, picture.findings, knowledge);
  const under = picture.worksheet.jobs.filter((job) => job.state === 'started' || job.state === 'planned');
  if (done.length === 0 && under.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'How far it has come' },
    { kind: 'paragraph', text: comeWords(picture, done, under) },
    ...(done.length === 0 ? [] : [{ kind: 'table', caption: 'Work done, with what was found before it and what was left after it; the log keeps both', columns: ['Job', 'When, by whom', 'As found', 'As left', 'Still to prove'], rows: done.map((one) => ({
      cells: [one.title, `${one.when.slice(0, 10)}, ${one.by}${one.hours === undefined ? '' : `, ${workHours(one.hours)}`}${one.words === undefined ? '' : `: ${one.words}`}`, shownWords(one.values, 'found'), shownWords(one.values, 'left'), proofWords(picture, one)],
    })) } as const]),
  ];
}

function comeWords({ worksheet }: Picture, done: readonly DoneJob[], under: readonly { readonly state: string; readonly title: string }[]): string {
  const open = worksheet.jobs.filter(isOpen).length;
  const started = under.filter((job) => job.state === 'started').map((job) => job.title.toLowerCase());
  const planned = under.filter((job) => job.state === 'planned').map((job) => job.title.toLowerCase());
  return [`${done.length} done, ${open} open.`, started.length === 0 ? '' : `Started: ${started.join('; ')}.`, planned.length === 0 ? '' : `Planned: ${planned.join('; ')}.`].filter((words) => words !== '').join(' ');
}

function shownWords(values: readonly FoundAndLeft[], end: 'found' | 'left'): string {
  const shown = values.flatMap((one) => { const value = one[end]; return value === undefined ? [] : [`${keyWords(one.key)}: ${value.shown.replaceAll('-', ' ')}`]; });
  const rest = shown.length - MOST_SET_OUT;
  return rest > 0 ? `${shown.slice(0, MOST_SET_OUT).join('; ')}; and ${rest} more` : shown.join('; ');
}

function proofWords(picture: Picture, { toProve, stillThere }: DoneJob): string {
  const names = findingNames(picture);
  const named = (keys: readonly string[]): string => keys.map((key) => names.get(key) ?? keysWords([key])).join('; ');
  return [toProve.length === 0 ? '' : `look or measure again: ${named(toProve)}`, stillThere.length === 0 ? '' : `still there: ${named(stillThere)}`].filter((words) => words !== '').join('. ');
}

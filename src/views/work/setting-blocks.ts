import { isOpen, printQuantity, settingSheet, type Picture, type SettingLine } from '../../derived/index.ts';
import { TRIAL_JOB, type Knowledge } from '../../knowledge/index.ts';
import { formatQuantity, type Quantity } from '../../methods/quantity/index.ts';
import type { Block } from '../report/block.ts';
import { keysWords } from './key-words.ts';

const BASIS = { 'as-made': 'as made', 'worked-out': 'worked out from its readings', usual: 'usual for the class, not read from this hammer' } as const;
const STATE: Readonly<Record<SettingLine['state'], string>> = { set: 'in order, leave it', off: 'to be set', good: 'leave it', held: 'leave it for now', 'not-known': 'not known', look: 'try it' };

/** The lines of the sheet for a picture. */
export const settingLines = (picture: Picture): readonly SettingLine[] => settingSheet({
  known: picture.known, values: picture.values, findings: picture.findings, system: picture.system, jobs: new Set(picture.worksheet.jobs.filter(isOpen).map((job) => job.job)),
});

/** Settings of re-assembly in the order in which each changes the next, with room to write what was left. */
export function settingBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const lines = settingLines(picture);
  const source = (id: string): string => knowledge.sources.find((one) => one.id === id)?.title ?? id;
  return [
    { kind: 'paragraph', text: 'Power locked off and ram blocked for each. One change at a time, from the top; write down what was found before it is touched. Nothing runs before the last line is set: what needs running stands together at the end.' },
    ...lines.flatMap((line) => (line.first === undefined ? [] : [{ kind: 'paragraph', tone: 'next', text: `Before anything is set, for ${line.number}, ${line.title.charAt(0).toLowerCase()}${line.title.slice(1)}: what the open jobs change.` } as const, { kind: 'list', ordered: false, items: line.first } as const])),
    { kind: 'table', caption: 'Settings in order', columns: ['No.', 'Setting', 'As found', 'To be', 'Change', 'As left'], rows: lines.map((line) => ({
      cells: [String(line.number), line.title, foundWords(picture, line), targetWords(picture, line), changeOf(picture, line), '______________'],
    })) },
    { kind: 'heading', level: 2, text: 'How, and why in this place' },
    { kind: 'table', caption: 'In the same order', columns: ['No.', 'Why here', 'How', 'Rests on'], rows: lines.map((line) => ({
      cells: [String(line.number), line.because, line.how, [line.target === undefined ? '' : `${BASIS[line.target.basis]}.`, wayWords(line), line.target?.sentence ?? '', line.missing.length === 0 ? '' : `Still to be read: ${keysWords(line.missing)}.`, `(${source(line.source)})`].filter((words) => words !== '').join(' ')],
    })) },
    ...runningBlocks(picture, lines),
  ];
}

/** What only the running hammer shows, together in one place: after every setting, on the trial where there is one, and within the limits card. */
function runningBlocks(picture: Picture, lines: readonly SettingLine[]): readonly Block[] {
  const shown = lines.flatMap((line) => (line.running === undefined ? [] : [{ line, running: line.running }]));
  if (shown.length === 0) return [];
  const trial = picture.worksheet.jobs.find((job) => job.job === TRIAL_JOB && isOpen(job));
  const when = picture.duty.verdict === 'stand-down' ? 'When it may run again: ' : picture.duty.verdict === 'not-known-yet' ? 'Once it may run: ' : '';
  const place = trial === undefined ? 'With every line above set' : `With every line above set, every job before it done, and on the trial (job ${trial.number} of the worksheet), after the soft blows on wood`;
  const tread = picture.duty.limits.filter((limit) => limit.kind === 'greatest-tread').map((limit) => ` The limits card says: ${limit.sentence}`);
  return [
    { kind: 'heading', level: 2, text: 'What only running shows, last of all' },
    { kind: 'paragraph', text: `${when === '' ? place : `${when}${place.charAt(0).toLowerCase()}${place.slice(1)}`}: prop out, guards on, wood between the dies. No deeper and no longer than the limits card allows.${tread.join('')}` },
    { kind: 'table', caption: 'Locked off again before anything is changed', columns: ['No.', 'Setting', 'Running', 'As left'], rows: shown.map(({ line, running }) => ({ cells: [String(line.number), line.title, `${when}${running}`, '______________'] })) },
  ];
}

/** Why a reading that is not as usual stays as it is. */
function wayWords({ state, held }: SettingLine): string {
  if (state === 'good') return 'Leave it: the report calls it good as it is.';
  return held === undefined ? '' : `Not yet. ${held.join(' ')} Once that is right:`;
}

/** As found, and as it will be once the open jobs are done. */
function foundWords(picture: Picture, { id, asFound, afterJobs }: SettingLine): string {
  const found = asFound?.words ?? 'not checked';
  if (afterJobs === undefined) return found;
  if (id === 'speed') return `${found} today; with the open jobs about ${printed(picture, afterJobs)}`;
  const size = printQuantity({ ...afterJobs, value: Math.abs(afterJobs.value) }, picture.system, afterJobs.value > 0 ? 'down' : 'up');
  return `${found} today; with the open jobs and the linkage as it stands ${afterJobs.value > 0 ? size : `none: the dies meet, ${size} wanting`}`;
}

function targetWords(picture: Picture, line: SettingLine): string {
  const wanted = wantedWords(picture, line);
  // Whoever reads this column alone must not set what is to be left.
  return line.state === 'good' ? `as it is (usual: ${wanted})` : line.state === 'held' ? `as it is for now (later: ${wanted})` : wanted;
}

function wantedWords(picture: Picture, { target, tolerance }: SettingLine): string {
  const print = (quantity: Quantity): string => printed(picture, quantity);
  if (target === undefined) return 'see below';
  const { from, to } = target;
  // No figure is wanted nearer than it is known.
  const doubt = from === undefined ? 0 : 2 * from.uncertainty;
  const near = tolerance === undefined ? '' : ` ± ${twoFigures(picture, doubt > tolerance.value ? { ...tolerance, value: printable(doubt, picture) } : tolerance)}${doubt > tolerance.value ? ', which is how far it is known' : ''}`;
  if (from !== undefined && to !== undefined) return from.value === to.value ? `${print(from)}${near}` : `${print(from)} to ${print(to)}`;
  if (from !== undefined) return `${print(from)} or more`;
  if (to !== undefined) return `${print(to)} or less`;
  return target.sentence;
}

function changeOf(picture: Picture, { id, state, change, first, afterJobs, target }: SettingLine): string {
  if (first !== undefined && afterJobs === undefined) return 'to be read again once the jobs are done';
  if (target?.ground === true) return 'read it when it is ground';
  if (change === undefined || state === 'held') return STATE[state];
  const words = `${change.value > 0 ? '+' : '−'} ${twoFigures(picture, { ...change, value: Math.abs(change.value) })}`;
  if (afterJobs === undefined || id === 'speed') return words;
  return `${words}, ${picture.known.identity.family === 'helve' ? `the head ${change.value > 0 ? 'up' : 'down'}` : `the rod ${change.value > 0 ? 'shorter' : 'longer'}`}`;
}

/** A doubt in what a rule shows, upwards: sixteenths of an inch or millimetres. */
const printable = (doubt: number, { system }: Picture): number => Math.ceil(doubt / (system === 'inch' ? 0.0254 / 16 : 0.001) - 1e-6) * (system === 'inch' ? 0.0254 / 16 : 0.001);

/** How far, and how near is near enough: in millimetres two figures say it, and more would pretend. */
const twoFigures = (picture: Picture, quantity: Quantity): string =>
  picture.system === 'metric' && quantity.dimension === 'length' && quantity.value > 0 ? formatQuantity({ ...quantity, uncertainty: 0 }, { system: 'metric', doubt: false, resolution: 10 ** (Math.floor(Math.log10(quantity.value)) - 1) }) : printed(picture, quantity);

/** Speeds of a hammer are counted in blows, not in turns. */
const printed = (picture: Picture, quantity: Quantity): string =>
  quantity.dimension === 'rotation' ? formatQuantity({ ...quantity, uncertainty: 0 }, { unit: 'rpm', resolution: 1 / 60, doubt: false }).replace(/rpm$/, 'blows/min') : printQuantity(quantity, picture.system);

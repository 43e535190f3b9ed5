import { calendarText, looksOverTime, upkeepEvents, upkeepPlan, wearOf, inspectionRecord, type DueItem, type Picture, type UpkeepPlan, type Wear, type WearStep } from '../../derived/index.ts';
import type { Entry } from '../../entries/index.ts';
import { answerWords, placeOf } from '../../hammer/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';
import type { Block } from '../report/block.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import { keyWords, keysNamed, keysWords } from './key-words.ts';

const HOUR = 3_600;
const STATE: Readonly<Record<DueItem['state'], string>> = { overdue: 'overdue', due: 'due', ahead: 'ahead', 'each-session': 'each session' };

export const planOfUpkeep = (picture: Picture, entries: readonly Entry[]): UpkeepPlan => upkeepPlan(picture.known, entries, picture.provenance.asOf);

/** What is due of a hammer as calendar text, stamped with the instant of the picture so that the same log gives the same file. */
export const calendarOf = (picture: Picture, entries: readonly Entry[]): string =>
  calendarText(upkeepEvents(planOfUpkeep(picture, entries), { id: picture.known.hammer, tag: picture.known.identity.tag }, picture.provenance.asOf), picture.provenance.asOf);

/** What is due and when, the most pressing first, and what the next full measuring is for. */
export function dueBlocks(picture: Picture, entries: readonly Entry[]): readonly Block[] {
  const plan = planOfUpkeep(picture, entries);
  const { oldest, on, because } = plan.nextSurvey;
  const oldestNamed = keysNamed(oldest);
  return [
    { kind: 'heading', level: 2, text: 'What is due' },
    { kind: 'table', caption: `As of ${picture.provenance.asOf.slice(0, 10)}, with ${hoursOf(picture.known.hoursRun)} run in all${plan.usePerDay === undefined ? '; how much it is used the log does not tell yet' : `, ${plan.usePerDay * 7 < HOUR / 2 ? 'less than half an hour' : `about ${hoursOf(plan.usePerDay * 7)}`} a week`}`, columns: ['What', 'When', 'Why then', 'What to do'], rows: plan.items.map((item) => ({
      cells: [item.title, `${STATE[item.state]}${item.dueOn === undefined ? '' : `, ${item.dueOn}`}${item.timeLeft === undefined || item.timeLeft <= 0 || item.state === 'overdue' ? '' : `, ${hoursOf(item.timeLeft)} of running left`}`, item.because, item.words],
    })) },
    { kind: 'paragraph', text: `Next full measuring ${on}: ${because}${oldest.length === 0 ? '' : ` Oldest by then: ${oldestNamed.slice(0, 6).map((one) => onceItMayRun(picture, one.keys, one.words)).join('; ')}${oldestNamed.length > 6 ? `; and ${oldestNamed.length - 6} more` : ''}.`}` },
  ];
}

const hoursOf = (seconds: number): string => `${seconds / HOUR < 10 ? Math.round((seconds / HOUR) * 10) / 10 : Math.round(seconds / HOUR)} h`;

/** Wear of the places that were read again and again, with the interval, and when it comes to the next step. */
export function wearBlocks(picture: Picture, entries: readonly Entry[], knowledge: Knowledge): readonly Block[] {
  const all = wearOf(picture.known, entries, knowledge, picture.provenance.asOf);
  const shown = (wear: Wear): number => (wear.forecast.state === 'fitted' && wear.forecast.wearShown ? 0 : 1);
  const fitted = all.filter((wear) => wear.forecast.state === 'fitted').sort((a, b) => shown(a) - shown(b));
  const few = all.filter((wear) => wear.forecast.state === 'refused');
  return [
    { kind: 'heading', level: 2, text: 'Wear' },
    ...(fitted.length === 0 ? [] : [{ kind: 'table', caption: 'Straight line through the readings of a place since the last work on it, with 95 % intervals', columns: ['Place', 'Readings', 'Wears', 'Comes to'], rows: fitted.map((wear) => ({ cells: [keyWords(wear.key), `${wear.readings}: ${wear.dates.map((date) => date.slice(0, 10)).join(', ')}`, rateWords(picture, wear), stepWords(wear)] })) } as const]),
    { kind: 'paragraph', text: few.length === 0 && fitted.length === 0 ? 'No place was read twice yet; a forecast wants three readings of the same place, taken the same way.' : few.length === 0 ? 'Nothing is claimed further ahead than three times the span of the readings.' : `Read twice, and a forecast wants three readings of the same place, taken the same way: ${keysWords(few.map((wear) => wear.key))}.` },
  ];
}

/** Rate over a stretch that somebody has a feeling for: a hundred hours, or a year. */
function rateWords({ system }: Picture, wear: Wear): string {
  const { forecast } = wear;
  if (forecast.state !== 'fitted') return '';
  const dimension = placeOf(wear.key.split('@')[0] ?? '')?.place.dimension;
  if (dimension === undefined) return '';
  const [stretch, words] = wear.over === 'running time' ? [100 * HOUR, 'in 100 h run'] : [365, 'a year'];
  const print = (rate: number): string => `${rate < 0 ? '−' : '+'} ${formatQuantity({ dimension, value: Math.abs(rate * stretch), uncertainty: 0 }, { system, doubt: false, ...(rate === 0 ? {} : { resolution: Math.max(Math.abs(rate * stretch) / FIGURES, dimension === 'length' ? MICROMETRE : 0) }) })}`;
  const [low, high] = forecast.rateInterval;
  return forecast.wearShown ? `${print(forecast.rate)} ${words} (${print(low)} to ${print(high)})` : `the readings do not show that it wears: between ${print(low)} and ${print(high)} ${words}`;
}

const GRADE: Readonly<Record<string, string>> = { watch: 'to be watched', limited: 'limits use', 'stand-down': 'stops it' };

/** `in 210 to 600 h of running, likely 340`; what lies beyond three times the span of the readings is not claimed. */
function reachedIn({ ahead }: WearStep, over: Wear['over']): string {
  const [unit, stretch] = over === 'running time' ? ['h of running', HOUR] : ['days', 1];
  const figure = (value: number): string => String(roundTwo(Math.max(0, value / stretch)));
  const { earliest, likely, latest } = ahead;
  if (earliest === undefined) return 'not within sight';
  if (likely !== undefined && likely <= 0) return 'should be there by now; measure it';
  if (latest !== undefined && likely !== undefined) return `in ${figure(earliest)} to ${figure(latest)} ${unit}, likely ${figure(likely)}`;
  if (likely !== undefined) return `in ${figure(earliest)} ${unit} at the earliest, likely ${figure(likely)}; how late is not within sight`;
  return `in ${figure(earliest)} ${unit} at the earliest; no likely figure within sight`;
}

/** No tool in a shop reads finer, m. */
const MICROMETRE = 1e-6;
/** A rate is printed to a hundredth of itself or so. */
const FIGURES = 50;

/** Two figures of a forecast mean something. */
const roundTwo = (value: number): number => (value === 0 ? 0 : Number(value.toPrecision(2)));

function stepWords({ steps, over }: Wear): string {
  if (steps.length === 0) return 'no rule judges it by itself';
  return steps.map((step) => `${GRADE[step.grade] ?? step.grade} at ${step.from}: ${step.already ? 'already there' : reachedIn(step, over)}`).join('; ');
}

/** Looks that were taken on more than one day, with every answer: what changed, and what was always the same. */
export function looksBlocks(picture: Picture, entries: readonly Entry[]): readonly Block[] {
  const all = looksOverTime(entries, picture.provenance.asOf);
  if (all.length === 0) return [];
  const changed = all.filter((one) => one.changed);
  const same = all.filter((one) => !one.changed);
  const key = (one: (typeof all)[number]): string => keyWords(one.at === undefined ? one.look : `${one.look}@${one.at}`);
  const answers = (one: (typeof all)[number]): string => one.answers.map(({ when, answer }) => `${when.slice(0, 10)} ${answerWords(one.look, answer)}`).join('; ');
  return [
    { kind: 'heading', level: 2, text: 'Looked at more than once' },
    ...(changed.length === 0 ? [] : [{ kind: 'table', caption: 'What changed between looks, oldest answer first', columns: ['Look', 'Answers'], rows: changed.map((one) => ({ cells: [key(one), answers(one)] })) } as const]),
    ...(same.length === 0 ? [] : [{ kind: 'table', caption: 'The same answer each time', columns: ['Look', 'Answers'], rows: same.map((one) => ({ cells: [key(one), answers(one)] })) } as const]),
  ];
}

/** Record of everything inspected that still counts, with room for the signature. */
export function inspectionBlocks(picture: Picture, knowledge: Knowledge): readonly Block[] {
  const record = inspectionRecord(picture.known, picture.findings, picture.duty);
  if (record === undefined) return [];
  const titles = new Map(picture.findings.map((finding) => [finding.criterion, finding.title]));
  const jobs = new Map(knowledge.jobs.map((job) => [job.id, job.title]));
  return [
    { kind: 'heading', level: 2, text: 'Record of what was inspected and still counts' },
    { kind: 'facts', rows: [
      ['Machine', [record.machine.tag, record.machine.name, record.machine.serial === undefined ? undefined : `serial ${record.machine.serial}`, record.machine.place].filter((one) => one !== undefined).join(', ')],
      ['Machine id', record.machine.id], ['Last visit', `${record.date}, ${record.by.join(', ')}`],
      ['Inspected', record.visits.length === 0 ? 'nothing that still counts' : record.visits.map((one) => `${one.date} by ${one.by.join(', ')}: ${one.matters === 1 ? 'one matter' : `${one.matters} matters`}`).join('; ')],
      ['Run so far', hoursOf(record.hoursRun)], ['Verdict', record.verdict],
      ...(record.jobsDone.length === 0 ? [] : [['Work done', record.jobsDone.map((one) => `${jobs.get(one.job) ?? one.job} (${one.by})`).join('; ')] as const]),
      ['Safety, not settled', record.gatesNotChecked.length === 0 ? 'none' : [...new Set(record.gatesNotChecked.map((key) => titles.get(key.split('@')[0] ?? key) ?? key))].join('; ')],
    ] },
    { kind: 'table', caption: 'Looked at or measured, with the days on which it was, as it counts today; matters of safety first', columns: ['What', 'Found', 'Grade', 'On'], rows: record.lines.map((line) => ({ cells: [`${line.what}${line.gate ? ' (safety)' : ''}`, line.shown, line.grade, line.days.join(', ')] })) },
    { kind: 'paragraph', text: 'Signature: ______________________________     Date: ______________' },
    { kind: 'paragraph', tone: 'small', text: `Kept with the machine. ${knowledge.sources.find((one) => one.id === record.source)?.title ?? record.source}` },
  ];
}

import { isOpen, type MoneyAndTime, type Picture } from '../../derived/index.ts';
import type { Block } from '../report/block.ts';
import { dayWords, moneySpan, moneyWords, rangeSentence, shareWords, workHours } from '../sentences/money-words.ts';
import { sumsSentence } from '../sentences/buy-rows.ts';
import { hoursWords } from '../sentences/words.ts';
import { chanceWords } from '../sentences/chance-words.ts';
import { rangeDrawing, type DrawnWidth } from './range-drawing.ts';

/** Most drivers that are named; what they leave over is summed up. */
const MOST_NAMED = 5;

/** What the open jobs cost and how long they take, drawn and said; nothing where no job is open. */
export function moneyBlocks(picture: Picture, money: MoneyAndTime, width: DrawnWidth = 'wide'): readonly Block[] {
  if (openJobs(picture) === 0) return onlyByChance(picture);
  const cash = (amount: number): string => moneyWords(amount, money.currency);
  const sentences = [rangeSentence('Parts and outside work', money.cost, cash), rangeSentence('Hours of work', money.hours, workHours), rangeSentence('Days from the first to the end of the trial', money.days, dayWords)];
  const svg = rangeDrawing([{ title: 'Money', range: money.cost, print: cash }, { title: 'Hours', range: money.hours, print: workHours }, { title: 'Days', range: money.days, print: dayWords }], sentences.join(' '), width);
  return [
    { kind: 'heading', level: 2, text: 'What it costs and how long it takes' },
    ...(svg === '' ? [] : [{ kind: 'figure', svg, words: sentences.join(' '), caption: 'Hatched: one chance in ten that it is no more. Chain line: as likely more as less. End of the bar: nine chances in ten that it is no more.' } as const]),
    ...sentences.map((text) => ({ kind: 'paragraph', text }) as const),
    ...unaskedBlocks(money),
    { kind: 'paragraph', text: `${sumsSentence(picture.worksheet)} The middle of the draws above may lie a little higher: work overruns by more than it saves.${mayBeWords(picture, money)}` },
    ...[...money.notes, ...(money.currency === 'unit' ? ['A unit is about one US dollar; prices differ from place to place.'] : [])].map((text) => ({ kind: 'paragraph', tone: 'small', text }) as const),
    ...(money.problems.length === 0 ? [] : [{ kind: 'list', ordered: false, items: money.problems } as const]),
  ];
}

/** Waits that nobody has asked about, beside the days that count none of them. */
const unaskedBlocks = ({ unasked }: MoneyAndTime): readonly Block[] => (unasked.length === 0 ? [] : [{ kind: 'paragraph', tone: 'next', text: `And waits that nobody has asked about, which these days leave out: ${unasked.map((line) => `${line.words} for job ${line.number}, ${lowered(line.title)}`).join('; ')}. Ask before any day is promised.` }]);

/** Where no job is certain: what may be needed, and what that comes to on average; a middle of nothing would say nothing. */
function onlyByChance({ worksheet }: Picture): readonly Block[] {
  const { mayBe = [], expected, currency = 'unit' } = worksheet;
  if (mayBe.length === 0 || expected === undefined) return [{ kind: 'paragraph', text: 'No job is open, so there is nothing to pay and nothing to wait for.' }];
  return [
    { kind: 'heading', level: 2, text: 'What it costs and how long it takes' },
    { kind: 'paragraph', text: `No job is certain. By its chance: ${mayBe.map((job) => `${lowered(job.title)}, ${chanceWords(job.need.chance)}; if it is needed, ${moneySpan(job.cost, currency)} and ${hoursWords(job.hours)}`).join('; ')}. Over all chances that is ${moneyWords(expected.cost, currency)} and ${workHours(expected.hours)} on average: most often nothing, and then the whole of it.` },
  ];
}

/** What the draws count beyond the sum of the open jobs, and what that does to their upper end. */
function mayBeWords({ worksheet }: Picture, money: MoneyAndTime): string {
  const mayBe = worksheet.mayBe ?? [];
  if (mayBe.length === 0) return '';
  const higher = [...(money.cost.p90 > worksheet.cost.most ? ['money'] : []), ...(money.hours.p90 > worksheet.hours.most ? ['hours'] : [])].join(' and ');
  return ` The draws count by its chance what only may be needed, and the sum leaves it out: ${mayBe.map((job) => `${lowered(job.title)}, ${chanceWords(job.need.chance)}`).join('; ')}.${higher === '' ? '' : ` That is why nine in ten lies above the most of the sum here, in ${higher}.`}`;
}

const lowered = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;

/** What makes the money and the hours uncertain. */
export function spreadBlocks(picture: Picture, money: MoneyAndTime): readonly Block[] {
  if (openJobs(picture) === 0) return [];
  const cash = (amount: number): string => moneyWords(amount, money.currency);
  return [
    { kind: 'heading', level: 2, text: 'What makes it uncertain' },
    { kind: 'table', caption: 'Shares of the spread of the money, by what is bought', columns: ['What', 'Share', 'On average'], rows: driverRows(money.boughtDrivers, cash) },
    { kind: 'table', caption: 'Shares of the spread of the hours, by job', columns: ['Job', 'Share', 'On average'], rows: driverRows(money.hourDrivers, workHours) },
    { kind: 'paragraph', text: 'A price asked for the first of these narrows the whole sum most.' },
  ];
}

/** The longest chain of work and waiting, who else is wanted, and which hands. */
export function lengthBlocks(picture: Picture, money: MoneyAndTime): readonly Block[] {
  if (openJobs(picture) === 0) return [];
  const { critical, byOthers, helpers, crew } = money;
  return [
    { kind: 'heading', level: 2, text: 'What sets the length' },
    critical.steps.length === 0
      ? { kind: 'paragraph', text: 'No job waits for another or for parts.' }
      : { kind: 'list', ordered: true, items: critical.steps.map((step) => (step.kind === 'work' ? `${step.title}: ${dayWords(step.days)} of work${money.unasked.some((line) => line.job === step.job) ? ', and a wait that nobody has asked about' : ''}` : `Waiting for the parts of: ${step.title}, ${dayWords(step.days)}`)) },
    ...(critical.steps.length === 0 ? [] : [{ kind: 'paragraph', text: `The longest chain of work and waiting, ${dayWords(critical.days)} give or take ${dayWords(critical.deviation)}, with hands enough for everything else at the same time${critical.steps.some((step) => money.unasked.some((line) => line.job === step.job)) ? ', without what nobody has asked about' : ''}.${waits(money) ? ' Order its parts first.' : ''}` } as const]),
    ...(byOthers.length === 0 ? [] : [{ kind: 'paragraph', text: `Wants more skill than ${SKILL_WORDS[crew.skill]} has: ${byOthers.map((job) => job.title.toLowerCase()).join('; ')}.` } as const]),
    ...(helpers.most === 0 ? [] : [{ kind: 'paragraph', text: `${helpers.most === 1 ? 'One pair' : `${helpers.most} pairs`} of helping hands for ${helpers.jobs.length === 1 ? 'one job' : `${helpers.jobs.length} jobs`}, about ${workHours(helpers.hours)} in all.` } as const]),
  ];
}

const SKILL_WORDS = { 1: 'an owner', 2: 'a careful amateur', 3: 'a machinist or rebuilder', 4: 'a specialist' } as const;

const openJobs = (picture: Picture): number => picture.worksheet.jobs.filter(isOpen).length;
const waits = (money: MoneyAndTime): boolean => money.critical.steps.some((step) => step.kind === 'waiting for parts');

function driverRows(drivers: MoneyAndTime['costDrivers'], print: (value: number) => string): readonly { readonly cells: readonly string[] }[] {
  const telling = drivers.filter((driver) => driver.share > 0.005);
  const named = telling.slice(0, MOST_NAMED);
  const rest = telling.slice(MOST_NAMED);
  return [
    ...named.map((driver) => ({ cells: [driver.words, shareWords(driver.share), print(driver.mean)] })),
    ...(rest.length === 0 ? [] : [{ cells: [`${rest.length} more together`, shareWords(rest.reduce((sum, driver) => sum + driver.share, 0)), print(rest.reduce((sum, driver) => sum + driver.mean, 0))] }]),
  ];
}

import { isOpen, placeWords, type BestUse, type Picture } from '../../derived/index.ts';
import { TRIAL_JOB } from '../../knowledge/index.ts';
import type { Block, TableRow } from '../report/block.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import { DUTY_CONDITION, changeWords } from './ladder-blocks.ts';
import { exactMoney, moneyWords, workHours } from '../sentences/money-words.ts';

/** The best use of one budget: what to do, what it buys in duty, what stays, and on what it hangs. */
export function budgetBlocks(picture: Picture, use: BestUse): readonly Block[] {
  const currency = picture.worksheet.currency ?? 'unit';
  const title = titleOf(use, currency);
  if (use.problems.length > 0) return [{ kind: 'heading', level: 2, text: title }, { kind: 'list', ordered: false, items: use.problems }];
  const names = jobNames(picture, [use]);
  const { before, hangsOn, promise, ifLooksFindWorse, toSettle } = use.duty;
  const after = dutyThen(use);
  const change = changeWords(before, after);
  return [
    { kind: 'heading', level: 2, text: title },
    use.jobs.length === 0
      ? { kind: 'paragraph', text: nothingBought(picture, use) }
      : { kind: 'list', ordered: true, items: use.jobs.map((job) => names.get(job) ?? job) },
    ...(use.jobs.length === 0 ? [] : [
      { kind: 'paragraph', text: `${use.budget.reckon === 'most' ? 'At the most' : 'Likely'} ${moneyWords(use.cost, currency)} and ${workHours(use.hours)} of work, ${trialWords(picture, use)}.` } as const,
      ...(use.safety.length === 0 ? [] : [{ kind: 'paragraph', text: `Matters of safety come first, before anything else is bought: ${use.safety.map((job) => lowered(names.get(job) ?? job)).join('; ')}. Nothing runs before it stands guarded, the trial included.` } as const]),
      ...use.instead.map((job) => ({ kind: 'paragraph', text: insteadChosen(names, job) }) as const),
      { kind: 'verdict', words: `${VERDICT_WORDS[before.verdict]}, then ${before.verdict === after.verdict ? 'still ' : ''}${VERDICT_WORDS[after.verdict].toLowerCase()}`, sentence: change === '' ? after.sentence : change, condition: DUTY_CONDITION[after.verdict], sureWords: promise } as const,
      ...(toSettle.length === 0 || after.verdict === use.duty.after.verdict ? [] : [{ kind: 'paragraph', text: `${settleWords(toSettle)} Until then the verdict is: ${VERDICT_WORDS[use.duty.after.verdict].toLowerCase()}.` } as const]),
      ...(hangsOn.length === 0 ? [] : [
        { kind: 'list', ordered: false, items: hangsOn.map((one) => `Hangs on a look: ${one.sentence}`) } as const,
        ...(ifLooksFindWorse.verdict === after.verdict ? [] : [{ kind: 'paragraph', text: `Where such a look finds the fault, the verdict stays: ${VERDICT_WORDS[ifLooksFindWorse.verdict].toLowerCase()}.` } as const]),
      ]),
    ]),
    ...(use.stays.length === 0 ? [] : [{ kind: 'paragraph', text: staysWords(picture, use.stays) } as const]),
    { kind: 'facts', rows: [
      ...(use.toRun === undefined ? [] : [['Least money that makes it run at all', moneyWords(use.toRun, currency)] as const]),
      ['To cure every fault', use.toCureAll === undefined ? (picture.findings.some((finding) => ['watch', 'limited', 'stand-down'].includes(finding.grade)) ? 'no figure: at least one fault has no job that cures it' : 'nothing, no fault is open') : moneyWords(use.toCureAll, currency)],
    ] },
    { kind: 'paragraph', tone: 'small', text: use.proven ? `${use.budget.wanted === 'safe to run' ? 'Only what stands it down was to be cured, for the least money.' : 'No other choice of jobs within these bounds reaches a better verdict, or lighter limits at the same verdict.'} ${use.budget.reckon === 'most' ? 'Reckoned at the most that each job may cost and take.' : 'Reckoned at likely prices and hours.'}` : 'The best choice found; the search was stopped before every other one was ruled out.' },
  ];
}

/** The duty that is promised: what the trial or a look of these jobs still has to show is taken as shown, and said to be. */
const dutyThen = ({ duty }: BestUse): BestUse['duty']['after'] => duty.ifSettledGood;

/** `"Run the trial" settles: ...; the verdict holds if it finds it good.` */
const settleWords = (some: BestUse['duty']['toSettle']): string =>
  `${[...new Set(some.map((one) => one.jobTitle))].map((job) => `"${job}" settles what nobody has checked yet: ${some.filter((one) => one.jobTitle === job).map((one) => lowered(one.title)).join('; ')}.`).join(' ')} The verdict above holds if that is found good.`;

const trialWords = (picture: Picture, use: BestUse): string => (use.jobs.includes(TRIAL_JOB) ? 'the trial included' : use.duty.after.verdict === 'stand-down' ? 'and no trial yet: it still stands down, and the money for the trial is kept back' : picture.worksheet.jobs.some((job) => job.job === TRIAL_JOB && isOpen(job)) ? 'and no trial yet: what must come before it, or what it would prove, is not among this; the money for the trial is kept back' : 'and no trial is open');

/** More than this is no bound. */
const UNBOUND = 1e8;

function titleOf({ budget: { money, hours, wanted } }: BestUse, currency: string): string {
  const bounds = [...(money >= UNBOUND ? [] : [exactMoney(money, currency)]), ...(hours === undefined ? [] : [`${workHours(hours)} of work`])].join(' and ');
  if (wanted === 'safe to run') return `The least that lets it run again, under the limits that are left${bounds === '' ? '' : `, within ${bounds}`}`;
  return `Best use of ${bounds}`;
}

/** A job chosen in the place of others, and which. */
const insteadChosen = (names: ReadonlyMap<string, string>, job: BestUse['instead'][number]): string =>
  `"${job.title}" is chosen instead of: ${job.takesPlaceOf.map((id) => (names.get(id) ?? id).toLowerCase()).join('; ')}.`;

/** What more and more money buys, one row for each choice that differs from the one before. */
export function budgetStepBlocks(picture: Picture, steps: readonly BestUse[]): readonly Block[] {
  if (steps.length === 0) return [];
  const currency = picture.worksheet.currency ?? 'unit';
  const names = jobNames(picture, steps);
  const rows = steps.map((use, index): TableRow => {
    const held = new Set(steps[index - 1]?.jobs ?? []);
    const fresh = use.jobs.filter((job) => !held.has(job)).map((job) => names.get(job) ?? job);
    const then = dutyThen(use);
    return { condition: DUTY_CONDITION[then.verdict], cells: [moneyWords(use.cost, currency), workHours(use.hours), `${VERDICT_WORDS[then.verdict]}${limitCount(then)}${then.verdict === use.duty.after.verdict ? '' : ', if the trial or a look holds'}`, doneWords(names, use, held, fresh)] };
  });
  return [
    { kind: 'heading', level: 2, text: 'What money buys' },
    { kind: 'table', caption: 'What to do first with more and more money, at likely prices; each row keeps what the rows above it have bought', columns: ['Money', 'Work', 'Verdict then', 'What is done'], rows },
  ];
}

/** What a row does: the first alone, each other on top of those above; a job that another makes pointless is named with it. */
function doneWords(names: ReadonlyMap<string, string>, use: BestUse, held: ReadonlySet<string>, fresh: readonly string[]): string {
  const gone = [...held].filter((job) => !use.jobs.includes(job)).map((job) => names.get(job) ?? job);
  const words = fresh.map((one, index) => (held.size === 0 && index === 0 ? one : lowered(one))).join('; ');
  return `${held.size === 0 ? words : `All of the above, and: ${words}`}${gone.length === 0 ? '' : `. Not wanted then, because of these: ${gone.map(lowered).join('; ')}`}.`;
}

const limitCount = (after: BestUse['duty']['after']): string => (after.limits.length === 0 ? '' : after.limits.length === 1 ? ', 1 limit' : `, ${after.limits.length} limits`);

/** What stays, by name where it limits or stops; what is only watched is counted. */
function staysWords(picture: Picture, stays: readonly string[]): string {
  const names = findingNames(picture);
  const grades = new Map(picture.findings.map((finding) => [finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`, finding.grade]));
  const heavy = stays.filter((key) => grades.get(key) !== 'watch');
  const light = stays.length - heavy.length;
  const watched = light === 0 ? '' : `${light} ${light === 1 ? 'thing' : 'things'} to be watched`;
  const named = heavy.map((key) => lowered(names.get(key) ?? key)).join('; ');
  return `Stays as it is: ${[named, watched].filter((words) => words !== '').join('; and ')}.`;
}

const lowered = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;

function nothingBought(picture: Picture, use: BestUse): string {
  if (picture.worksheet.jobs.every((job) => job.state === 'done' || job.state === 'dropped')) return 'No job is open, so nothing has to be bought.';
  return `Nothing can be chosen within this: even the first job with its trial wants more.${use.toRun === undefined ? '' : ` It takes ${moneyWords(use.toRun, picture.worksheet.currency ?? 'unit')} to make it run at all.`}`;
}

export const jobNames = (picture: Picture, uses: readonly BestUse[]): ReadonlyMap<string, string> => new Map([...picture.worksheet.jobs, ...uses.flatMap((use) => use.instead)].map((job) => [job.job, job.title]));
export const findingNames = (picture: Picture): ReadonlyMap<string, string> => new Map(picture.findings.map((finding) => [finding.at === undefined ? finding.criterion : `${finding.criterion}@${finding.at}`, `${finding.title}${placeWords(finding)}`]));

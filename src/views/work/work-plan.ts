import { isOpen, bestUse, dutyLadder, moneyAndTime, priceBook, saleValue, worksheetOf, type BestUse, type Budget, type Crew, type LadderStep, type MoneyAndTime, type MoneyOptions, type Picture, type SaleValue } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';

/** Everything that a person who plans the work asks of a picture. */
export interface WorkPlan {
  readonly money: MoneyAndTime;
  readonly ladder: readonly LadderStep[];
  /** The best choice for a given budget; absent where none was given. */
  readonly use?: BestUse;
  /** What more and more money buys: the least money of each better duty. */
  readonly steps: readonly BestUse[];
  readonly sale: SaleValue;
}

/** Sums of money at which the choice is made, as shares of curing everything. */
const SHARES = [0, 0.1, 0.25, 0.5, 0.75] as const;

/** The plan of a picture: money and time, what may be run meanwhile, what a budget buys, what the hammer is worth. */
export function workPlan(picture: Picture, knowledge: Knowledge, budget?: Budget, crew?: Partial<Crew>): WorkPlan {
  const { known, findings, worksheet, provenance } = picture;
  return {
    money: moneyAndTime(worksheet, knowledge, provenance.seed, crew === undefined ? {} : { crew }),
    ladder: dutyLadder(known, findings, worksheet, knowledge),
    ...(budget === undefined ? {} : { use: bestUse(known, findings, worksheet, knowledge, budget) }),
    steps: budgetSteps(picture, knowledge),
    sale: saleOf(picture, knowledge),
  };
}

/** The same picture with its worksheet reckoned in other money, or with old prices brought up. */
export const withMoney = (picture: Picture, knowledge: Knowledge, options: MoneyOptions): Picture =>
  ({ ...picture, worksheet: worksheetOf(picture.known, picture.findings, knowledge, { asOf: picture.provenance.asOf, ...options }) });

export const saleOf = (picture: Picture, knowledge: Knowledge): SaleValue => saleValue(picture.known, picture.findings, { jobs: picture.worksheet.jobs, prices: picture.worksheet.prices ?? priceBook(picture.known, knowledge), ...(picture.duty.overdue === undefined ? {} : { overdue: picture.duty.overdue }) }, picture.provenance.seed);

/** The choice at several sums, each keeping what the lesser ones bought; those that buy nothing more left out. */
function budgetSteps({ known, findings, worksheet }: Picture, knowledge: Knowledge): readonly BestUse[] {
  const choose = (money: number, keeping: readonly string[]): BestUse => bestUse(known, findings, worksheet, knowledge, { money, keeping });
  const whole = worksheet.jobs.filter(isOpen).reduce((sum, job) => sum + job.cost.likely, 0);
  const sums = [...new Set([...SHARES.map((share) => Math.round(share * whole)), Math.ceil(whole)])].sort((a, b) => a - b);
  const steps: BestUse[] = [];
  const take = (money: number): void => {
    const held = steps.at(-1)?.jobs ?? [];
    const one = choose(money, held);
    if (one.jobs.length > 0 && one.jobs.join() !== held.join()) steps.push(one);
  };
  for (const [index, money] of sums.entries()) {
    take(money);
    // The least that makes it run, on top of what is bought already, is a sum of its own where it lies before the next.
    const run = runsFor(choose(money, steps.at(-1)?.jobs ?? []));
    if (run !== undefined && run > money && run < (sums[index + 1] ?? Number.POSITIVE_INFINITY)) take(run);
  }
  return steps;
}

const runsFor = ({ toRun, duty }: BestUse): number | undefined => (toRun === undefined || duty.after.verdict !== 'stand-down' ? undefined : Math.ceil(toRun));

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
}

/** Sums of money at which the choice is made, as shares of curing everything. */
const SHARES = [0, 0.1, 0.25, 0.5, 0.75] as const;

/** The plan of a picture: money and time, what may be run meanwhile, what a budget buys. */
export function workPlan(picture: Picture, knowledge: Knowledge, budget?: Budget, crew?: Partial<Crew>): WorkPlan {
  const { known, findings, worksheet, provenance } = picture;
  return {
    money: moneyAndTime(worksheet, knowledge, provenance.seed, crew === undefined ? {} : { crew }),
    ladder: dutyLadder(known, findings, worksheet, knowledge),
    ...(budget === undefined ? {} : { use: bestUse(known, findings, worksheet, knowledge, budget) }),
    steps: budgetSteps(picture, knowledge),
  };
}

/** The same picture with its worksheet reckoned in other money, or with old prices brought up. */
export const withMoney = (picture: Picture, knowledge: Knowledge, options: MoneyOptions): Picture =>
  ({ ...picture, worksheet: worksheetOf(picture.known, picture.findings, knowledge, { asOf: picture.provenance.asOf, ...options }) });

export const saleOf = (picture: Picture, knowledge: Knowledge): SaleValue => saleValue(picture.known, picture.findings, { jobs: picture.worksheet.jobs, ...(picture.worksheet.mayBe === undefined ? {} : { mayBe: picture.worksheet.mayBe }), prices: picture.worksheet.prices ?? priceBook(picture.known, knowledge), ...(picture.duty.overdue === undefined ? {} : { overdue: picture.duty.overdue }) }, picture.provenance.seed);

/**
 * The choice at several sums, each keeping what the lesser ones bought; those that buy nothing more left out. What is bought
 * before it runs at all is part of the least that makes it run, so that no money goes beside it.
 */
function budgetSteps({ known, findings, worksheet }: Picture, knowledge: Knowledge): readonly BestUse[] {
  const choose = (money: number, more: Pick<Budget, 'keeping' | 'among'> = {}): BestUse => bestUse(known, findings, worksheet, knowledge, { money, ...more });
  const whole = worksheet.jobs.filter(isOpen).reduce((sum, job) => sum + job.cost.likely, 0);
  const { toRun } = choose(0);
  const least = toRun === undefined ? undefined : choose(Math.ceil(toRun));
  const sums = [...new Set([...SHARES.map((share) => Math.round(share * whole)), ...(toRun === undefined ? [] : [Math.ceil(toRun)]), Math.ceil(whole)])].sort((a, b) => a - b);
  const steps: BestUse[] = [];
  for (const money of sums) {
    const keeping = steps.at(-1)?.jobs ?? [];
    const one = choose(money, least !== undefined && money < Math.ceil(toRun ?? 0) ? { keeping, among: least.jobs } : { keeping });
    if (one.jobs.length > 0 && one.jobs.join() !== keeping.join()) steps.push(one);
  }
  return steps;
}

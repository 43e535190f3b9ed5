import type { Command } from 'commander';
import type { Budget, Crew, MoneyOptions, Picture, SaleValue } from '../derived/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { planBlocks, saleBlocks, saleOf, withMoney, workPlan, type WorkPlan } from '../views/work/index.ts';
import { blocksText } from './blocks-text.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine } from './words.ts';

interface PlanOptions extends SurveyOptions {
  readonly budget?: string;
  readonly hours?: string;
  readonly safe?: boolean;
  readonly atMost?: boolean;
  readonly hands?: string;
  readonly skill?: string;
  readonly hoursADay?: string;
  readonly currency?: string;
  readonly rise?: string;
}

/** `plan FILE`: order, money and time with their doubt, what may be run meanwhile, the best use of a budget, the sale value. */
export const planCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('plan <file>'))
    .description('plan the work: order with reasons, money and time with their doubt, what may be run meanwhile, the best use of a budget, and what the hammer is worth')
    .option('--budget <money>', 'choose the best jobs for this much money, in the money of the prices entered, else in units of about one US dollar')
    .option('--hours <hours>', 'and within this many hours of work')
    .option('--safe', 'choose only what lifts the stand-down, for the least money; the limits that are left still hold')
    .option('--at-most', 'reckon each job of the budget at the most that it may cost and take, not at what is likely')
    .option('--hands <count>', 'pairs of hands that work at once')
    .option('--skill <1-4>', 'skill of the best of them: 1 owner, 2 careful amateur, 3 machinist or rebuilder, 4 specialist')
    .option('--hours-a-day <hours>', 'hours that they work in a day')
    .option('--currency <letters>', 'reckon in this money, such as EUR; by the rates entered as prices of money.eur and the like')
    .option('--rise <percent>', 'bring old prices up by this much a year: your assumption, and printed as one')
    .action(async (file: string, options: PlanOptions) => {
      const budget = budgetOf(options);
      const crew = crewOf(options);
      const money = moneyOf(options);
      ended(await withSurvey(file, options, door, ({ picture: asEntered }) => {
        const picture = money === undefined ? asEntered : withMoney(asEntered, knowledge, money);
        const plan = { ...workPlan(picture, knowledge, budget, crew), sale: saleOf(picture, knowledge) };
        return { text: () => planText(picture, plan), json: () => ({ plan: { ...plan, worksheet: picture.worksheet } }), exit: EXIT.fine };
      }));
    });
};

function budgetOf({ budget, hours, safe, atMost }: PlanOptions): Budget | undefined {
  const money = budget === undefined ? undefined : figure(budget, 'budget', 'a plain figure of money, such as 800');
  const most = hours === undefined ? undefined : figure(hours, 'hours of work', 'a plain figure of hours, such as 20');
  if (money === undefined) {
    if (most === undefined && safe === true) return { money: NO_BOUND, wanted: 'safe to run', ...(atMost === true ? { reckon: 'most' } : {}) };
    if (most === undefined) return undefined;
    throw new BadInput(`hours alone choose nothing; give the money too, such as --budget 800: --hours ${hours ?? ''}`);
  }
  return { money, ...(most === undefined ? {} : { hours: most }), ...(atMost === true ? { reckon: 'most' } : {}), ...(safe === true ? { wanted: 'safe to run' } : {}) };
}

/** More money than any worksheet asks for: what is safe is bought whatever it costs. */
const NO_BOUND = 1e9;

function crewOf({ hands, skill, hoursADay }: PlanOptions): Partial<Crew> | undefined {
  const count = hands === undefined ? undefined : figure(hands, 'pairs of hands', 'a whole number such as 2');
  const day = hoursADay === undefined ? undefined : figure(hoursADay, 'hours in a day', 'a plain figure of hours, such as 6');
  if (count !== undefined && (!Number.isInteger(count) || count < 1)) throw new BadInput(`the pairs of hands cannot be used; a whole number from 1: ${hands ?? ''}`);
  if (day !== undefined && (day <= 0 || day > 24)) throw new BadInput(`the hours in a day cannot be used; more than 0 and at most 24: ${hoursADay ?? ''}`);
  const level = SKILLS.find((one) => String(one) === skill);
  if (skill !== undefined && level === undefined) throw new BadInput(`the skill cannot be used; 1, 2, 3 or 4: ${skill}`);
  if (count === undefined && day === undefined && level === undefined) return undefined;
  return { ...(count === undefined ? {} : { hands: count }), ...(day === undefined ? {} : { hoursPerDay: day }), ...(level === undefined ? {} : { skill: level }) };
}

const SKILLS = [1, 2, 3, 4] as const;

function moneyOf({ currency, rise }: PlanOptions): MoneyOptions | undefined {
  if (currency !== undefined && !/^([A-Z]{3}|unit)$/.test(currency)) throw new BadInput(`the currency cannot be used; three letters such as EUR, or unit: ${currency}`);
  const share = rise === undefined ? undefined : figure(rise, 'rise of prices', 'per cent a year, such as 3');
  if (currency === undefined && share === undefined) return undefined;
  return { ...(currency === undefined ? {} : { currency }), ...(share === undefined ? {} : { risePerYear: share / 100 }) };
}

function figure(text: string, what: string, right: string): number {
  if (/^\d{1,9}(\.\d+)?$/.test(text.trim())) return Number(text);
  throw new BadInput(`the ${what} cannot be used; ${right}: ${text}`);
}

function planText(picture: Picture, plan: WorkPlan & { readonly sale: SaleValue }): string {
  return [`${picture.known.identity.tag}: plan of the work\n`, inventedLine(picture.known.identity.invented), blocksText(planBlocks(picture, knowledge, plan)), blocksText(saleBlocks(picture, plan.sale))].join('');
}

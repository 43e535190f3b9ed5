import type { Command } from 'commander';
import type { Budget, Picture } from '../derived/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { planBlocks, saleBlocks, workPlan, type WorkPlan } from '../views/work/index.ts';
import { blocksText } from './blocks-text.ts';
import { BadInput, EXIT, type Door } from './door.ts';
import type { SurveyOptions } from './survey-input.ts';
import { surveyCommand, withSurvey } from './with-survey.ts';
import { inventedLine } from './words.ts';

interface PlanOptions extends SurveyOptions {
  readonly budget?: string;
  readonly hours?: string;
  readonly safe?: boolean;
}

/** `plan FILE`: order, money and time with their doubt, what may be run meanwhile, the best use of a budget, the sale value. */
export const planCommand = (program: Command, door: Door, ended: (exit: number) => void): void => {
  surveyCommand(program.command('plan <file>'))
    .description('plan the work: order with reasons, money and time with their doubt, what may be run meanwhile, the best use of a budget, and what the hammer is worth')
    .option('--budget <money>', 'choose the best jobs for this much money, in the money of the prices entered, else in units of about one US dollar')
    .option('--hours <hours>', 'and within this many hours of work')
    .option('--safe', 'reckon each job of the budget at the most that it may cost, not at what is likely')
    .action(async (file: string, options: PlanOptions) => {
      const budget = budgetOf(options);
      ended(await withSurvey(file, options, door, ({ picture }) => {
        const plan = workPlan(picture, knowledge, budget);
        return { text: () => planText(picture, plan), json: () => ({ plan: { ...plan, worksheet: picture.worksheet } }), exit: EXIT.fine };
      }));
    });
};

function budgetOf({ budget, hours, safe }: PlanOptions): Budget | undefined {
  const money = budget === undefined ? undefined : figure(budget, 'budget', 'a plain figure of money, such as 800');
  const most = hours === undefined ? undefined : figure(hours, 'hours of work', 'a plain figure of hours, such as 20');
  if (money === undefined) {
    if (most === undefined) return undefined;
    throw new BadInput(`hours alone choose nothing; give the money too, such as --budget 800: --hours ${hours ?? ''}`);
  }
  return { money, ...(most === undefined ? {} : { hours: most }), ...(safe === true ? { reckon: 'most' } : {}) };
}

function figure(text: string, what: string, right: string): number {
  if (/^\d{1,9}(\.\d+)?$/.test(text.trim())) return Number(text);
  throw new BadInput(`the ${what} cannot be used; ${right}: ${text}`);
}

function planText(picture: Picture, plan: WorkPlan): string {
  return [`${picture.known.identity.tag}: plan of the work\n`, inventedLine(picture.known.identity.invented), blocksText(planBlocks(picture, knowledge, plan)), blocksText(saleBlocks(picture, plan.sale))].join('');
}

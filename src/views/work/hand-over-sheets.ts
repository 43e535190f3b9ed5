import type { Picture } from '../../derived/index.ts';
import type { Entry } from '../../entries/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block, ReportTree } from '../report/block.ts';
import { sheetTree } from '../report/report-tree.ts';
import { cautionBlocks } from '../report/caution-blocks.ts';
import { acceptanceBlocks, blowToExpect } from './acceptance-blocks.ts';
import { doneBlocks } from './done-blocks.ts';
import { budgetBlocks, budgetStepBlocks } from './budget-blocks.ts';
import { ladderBlocks } from './ladder-blocks.ts';
import { buyBlocks, makingBlocks, orderBlocks } from './making-blocks.ts';
import { lengthBlocks, moneyBlocks, spreadBlocks } from './money-blocks.ts';
import { nextBlocks, orderOfWorkBlocks } from './order-of-work-blocks.ts';
import { saleSheetBlocks } from './sale-blocks.ts';
import { mayBeBlocks } from './need-blocks.ts';
import { settingBlocks } from './setting-blocks.ts';
import { dueBlocks, inspectionBlocks, looksBlocks, wearBlocks } from './upkeep-blocks.ts';
import { saleOf, workPlan, type WorkPlan } from './work-plan.ts';

export const SHEET_IDS = ['worksheet', 'settings', 'parts', 'order', 'upkeep', 'inspection', 'sale'] as const;
export type SheetId = (typeof SHEET_IDS)[number];

/** What a sheet is called and whom it is for. */
export const SHEET_TITLES: Readonly<Record<SheetId, { readonly title: string; readonly words: string }>> = {
  worksheet: { title: 'Worksheet', words: 'Jobs in order with reasons, money and time with their doubt, what may be run meanwhile, what money buys. For whoever does the work or pays for it.' },
  settings: { title: 'Setting sheet', words: 'Settings of re-assembly in the right order, as found and as they should be, with room to write. For the bench.' },
  parts: { title: 'Parts to make', words: 'What has a drawing, and what has none and why. For the machinist.' },
  order: { title: 'Order sheet', words: 'Springs, stock and everything that the jobs use up, with prices and waiting. For whoever orders.' },
  upkeep: { title: 'Upkeep', words: 'What is due and when, wear with its forecast, and whether the last trial accepts the hammer.' },
  inspection: { title: 'Inspection record', words: 'Everything that was looked at or measured and still counts, with its days and room for the signature. Kept with the machine.' },
  sale: { title: 'Sale sheet', words: 'What it would fetch as it stands, with what a buyer takes off. For owner and buyer.' },
};

export interface SheetGround {
  readonly picture: Picture;
  /** Log of this hammer. */
  readonly entries: readonly Entry[];
  readonly knowledge: Knowledge;
}

/** One sheet of the hand-over as a tree, for paper or screen. */
export const handOverSheet = (id: SheetId, ground: SheetGround): ReportTree => sheetTree(ground.picture, SHEET_TITLES[id].title, sheetBlocks(id, ground));

function sheetBlocks(id: SheetId, { picture, entries, knowledge }: SheetGround): readonly Block[] {
  switch (id) {
    case 'worksheet':
      return planBlocks(picture, knowledge, workPlan(picture, knowledge));
    case 'settings':
      return settingBlocks(picture, knowledge);
    case 'parts':
      return makingBlocks(picture);
    case 'order':
      return orderBlocks(picture);
    case 'upkeep':
      return [...dueBlocks(picture, entries), ...acceptanceBlocks(picture, blowToExpect(picture)), ...wearBlocks(picture, entries, knowledge), ...looksBlocks(picture, entries)];
    case 'inspection':
      return inspectionBlocks(picture, knowledge);
    case 'sale':
      return saleSheetBlocks(picture, saleOf(picture, knowledge));
  }
}

/** The worksheet in full: order first, then money, what may be run meanwhile, what a budget buys. */
export function planBlocks(picture: Picture, knowledge: Knowledge, plan: WorkPlan): readonly Block[] {
  const open = picture.findings.filter((finding) => finding.grade === 'not-known').length;
  const unchecked = open === 0 ? [] : [{ kind: 'paragraph', tone: 'next', text: open === 1 ? 'One matter is not checked; what it would ask for is not on this sheet.' : `${open} matters are not checked; what they would ask for is not on this sheet.` } as const];
  if (plan.ladder.length === 0) return [{ kind: 'paragraph', text: picture.duty.verdict === 'not-known-yet' ? 'No work follows from what was read so far.' : 'No finding asks for work: oil it, and check keys and bolts before each session.' }, ...unchecked, ...mayBeBlocks(picture, knowledge), ...orderOfWorkBlocks(picture, knowledge), ...doneBlocks(picture, knowledge)];
  return [
    ...nextBlocks(picture),
    ...unchecked,
    ...(plan.use === undefined ? [] : budgetBlocks(picture, plan.use)),
    ...moneyBlocks(picture, plan.money),
    ...lengthBlocks(picture, plan.money),
    ...ladderBlocks(picture, plan.ladder),
    ...(plan.use === undefined ? budgetStepBlocks(picture, plan.steps) : []),
    ...orderOfWorkBlocks(picture, knowledge),
    ...mayBeBlocks(picture, knowledge),
    ...buyBlocks(picture),
    ...doneBlocks(picture, knowledge),
    ...spreadBlocks(picture, plan.money),
    ...cautionBlocks(picture, knowledge),
  ];
}

import { valueKey, type Picture, type SaleValue } from '../../derived/index.ts';
import type { Block, TableRow } from '../report/block.ts';
import { findingNames } from './budget-blocks.ts';
import { overdueBlocks } from '../report/first-page.ts';
import { makerWords } from '../sentences/maker-words.ts';
import { inSystem } from '../sentences/in-system.ts';
import { waitsForRun } from '../sentences/when-it-may-run.ts';
import { hoursWords, VERDICT_WORDS } from '../sentences/words.ts';
import { DUTY_CONDITION } from './ladder-blocks.ts';
import { chanceWords } from '../sentences/chance-words.ts';
import { exactMoney, moneySpan, moneyWords, rangeSentence, rounded, shareWords } from '../sentences/money-words.ts';
import { rangeDrawing } from './range-drawing.ts';

/** What the hammer would fetch as it stands: the base, what a buyer takes off, what nobody checked, and the doubt. */
export function saleBlocks(picture: Picture, sale: SaleValue): readonly Block[] {
  const names = findingNames(picture);
  const cash = (amount: number): string => moneyWords(amount, sale.currency);
  const sentence = rangeSentence('As it stands', sale.value, cash);
  const svg = rangeDrawing([{ title: 'As it stands', range: sale.value, print: cash }], sentence);
  return [
    { kind: 'heading', level: 2, text: 'What it would fetch as it stands' },
    ...(svg === '' ? [] : [{ kind: 'figure', svg, words: sentence, caption: 'Hatched: one chance in ten that it is no more. Chain line: as likely more as less. End of the bar: nine chances in ten that it is no more.' } as const]),
    { kind: 'paragraph', text: sentence },
    { kind: 'facts', rows: [
      ['Base', `${sale.base.words}: ${moneySpan(sale.base.value, sale.currency)}${sale.base.estimate ? ' (estimate)' : ''}`],
      ...(sale.paidForIt === undefined ? [] : [['Paid for this one', moneyWords(sale.paidForIt, sale.currency)] as const]),
    ] },
    ...(sale.changes.length === 0 && sale.toCure.length > 0 ? [] : sale.changes.length === 0
      ? [{ kind: 'paragraph', text: 'Nothing was found that a buyer takes off.' } as const]
      : [{ kind: 'table', caption: 'What a buyer takes off or adds, the greatest first, each from what those before it left', columns: ['What', 'Share', 'Money', 'Because of'], rows: sale.changes.map((change) => ({
          cells: [change.words, `${change.adds ? 'adds' : 'off'} ${shareWords(change.share.likely)} (${shareWords(change.share.least)} to ${shareWords(change.share.most)})`, `${change.adds ? '+' : '−'} ${exactMoney(Math.round(change.amount), sale.currency)}`, change.because.map((key) => names.get(key) ?? key).join('; ')],
        })) } as const]),
    ...(sale.toCure.length === 0 ? [] : [{ kind: 'table', caption: 'What a buyer takes off because he has to put it right: money to lay out and hours of his own, each job once', columns: ['Work', 'Money and hours', 'Taken off', 'Because of'], rows: sale.toCure.map((line) => ({
      cells: [`${line.title}${line.chance < 1 ? `, ${chanceWords(line.chance)}` : ''}`, `${moneySpan(line.cost, sale.currency)}; ${hoursWords(line.hours)}`, `− ${exactMoney(Math.round(line.amount), sale.currency)}`, line.because.map((key) => names.get(key) ?? key).join('; ')],
    })) } as const]),
    sumTable(sale),
    ...(sale.nothingOff.length === 0 ? [] : [{ kind: 'list', ordered: false, items: grouped(sale.nothingOff).map(([because, keys]) => `Takes nothing off: ${keys.map((key) => lowered(names.get(key) ?? key)).join('; ')}; because ${because}.`) } as const]),
    ...(sale.notChecked.length === 0 ? [] : [
      { kind: 'list', ordered: false, items: sale.notChecked.map((one) => `Not checked: ${one.words}; if it is there, ${shareWords(one.share.least)} to ${shareWords(one.share.most)} off. A buyer who cannot check it takes off something, and the range is the wider for it.`) } as const,
      { kind: 'paragraph', text: `If none of what is not checked were there: ${rangeSentence('', sale.ifNoneThere, cash).replace(/^: /, '')}` } as const,
    ]),
    ...unpricedBlocks(picture, sale),
    ...ifFoundBlocks(picture, sale),
    ...sale.notes.map((text) => ({ kind: 'paragraph', tone: 'small', text }) as const),
    { kind: 'paragraph', tone: 'small', text: 'An opinion with its doubt, not an offer and not a valuation for an insurer.' },
  ];
}

/** What nobody checked and nothing is taken off for, by name: the papers take none of it as good, and this price does. */
function unpricedBlocks(picture: Picture, { unpriced }: SaleValue): readonly Block[] {
  if (unpriced.length === 0) return [];
  const open = picture.findings.filter((finding) => unpriced.includes(valueKey(finding.criterion, finding.at)));
  const titles = (later: boolean): string => [...new Set(open.filter((finding) => waitsForRun(picture, finding.missing) === later).map((finding) => lowered(finding.title)))].join('; ');
  const [now, later] = [titles(false), titles(true)];
  const [it, they] = unpriced.length === 1 ? ['it', 'it is'] : ['them', 'they are'];
  return [{ kind: 'paragraph', tone: 'next', text: [
    `Nothing is taken off for ${unpriced.length === 1 ? 'one matter' : `${unpriced.length} matters`} that nobody checked. None of ${it} is taken as good: this price holds only if ${they}.`,
    ...(now === '' ? [] : [`Ask, or see for yourself: ${now}.`]),
  ].join(' ') }, ...(later === '' ? [] : [{ kind: 'paragraph', tone: 'next', text: `Among them, when it may run again: ${later}.` } as const])];
}

/** What follows where a look that is still open finds the fault: said with its money, and not taken off before it is known. */
function ifFoundBlocks({ worksheet }: Picture, { currency, toCure }: SaleValue): readonly Block[] {
  return toCure.flatMap((line): readonly Block[] => {
    const next = worksheet.ifFound?.find((one) => one.after.includes(line.job));
    return next === undefined ? [] : [{ kind: 'paragraph', tone: 'next', text: `${line.title}: only the test is taken off. If it is found: ${lowered(next.title)}, ${moneySpan(next.cost, currency)}; ${hoursWords(next.hours)}. Nothing is taken off for that.` }];
  });
}

const SUM_WORDS = { share: 'share', cure: 'to put right' } as const;

/** The sum line by line in whole money, each line with what is left, so that a buyer can add it up; the last line is what is said above. */
function sumTable({ sum, currency, value }: SaleValue): Block {
  const said = rounded(value.p50);
  const whole = (amount: number): number => Math.sign(amount) * Math.round(Math.abs(amount));
  const amounts = sum.map((line) => whole(line.amount));
  let left = 0;
  const rows: TableRow[] = sum.map((line, index) => {
    const amount = amounts[index] ?? 0;
    left += amount;
    const words = line.kind === 'base' ? `Base, the middle of it: ${line.words}` : line.kind === 'share' || line.kind === 'cure' ? `${capital(line.words)} (${SUM_WORDS[line.kind]})` : capital(line.words);
    return { cells: [words, line.kind === 'base' ? exactMoney(amount, currency) : `${amount < 0 ? '−' : '+'} ${exactMoney(Math.abs(amount), currency)}`, exactMoney(left, currency)] };
  });
  // The headline is rounded as the trade rounds; what that takes or gives is a line of its own, and no line above is bent for it.
  const rounding = said - left;
  if (rounding !== 0) rows.push({ cells: ['Rounded', `${rounding < 0 ? '−' : '+'} ${exactMoney(Math.abs(rounding), currency)}`, exactMoney(said, currency)] });
  return { kind: 'table', caption: 'How it adds up: each line at what it comes to about the middle of its range, which lies above its likely figure where the range reaches further up than down', columns: ['What', 'Money', 'Left'], rows: [...rows, { cells: ['As it stands, as likely more as less', '', exactMoney(said, currency)] }] };
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
const lowered = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;

/** Findings that take nothing off for the same reason, together. */
function grouped(some: SaleValue['nothingOff']): readonly (readonly [because: string, findings: readonly string[]])[] {
  const by = new Map<string, string[]>();
  for (const { because, finding } of some) by.set(because, [...(by.get(because) ?? []), finding]);
  return [...by];
}

/** When the limits of a verdict hold. */
const LIMITS_HOLD: Readonly<Record<Picture['duty']['verdict'], string>> = {
  'stand-down': 'It may not run at all today. Once what stops it is cured, these limits hold:',
  'not-known-yet': 'It may not run until what is missing is checked. Then these limits hold:',
  'fit-within-limits': 'It may run only like this:', fit: 'Limits:',
};

/** The sale sheet: what a buyer should know before he drives over, then the value and how it comes about. */
export function saleSheetBlocks(picture: Picture, sale: SaleValue): readonly Block[] {
  const { identity, statements } = picture.known;
  const { duty, notChecked } = picture;
  const told = statements.map((one) => `${one.words}${one.saidBy === undefined ? '' : ` (${one.saidBy})`}`);
  return [
    { kind: 'facts', rows: [
      ['Hammer', `${identity.tag}${identity.name === undefined ? '' : `, ${identity.name}`}`], ['Ram class', identity.ramClass.asWritten],
      ...(identity.maker === undefined ? [] : [['Maker, serial, year', makerWords(identity)] as const]),
      ...(identity.place === undefined ? [] : [['Stands at', identity.place] as const]),
    ] },
    { kind: 'verdict', words: VERDICT_WORDS[duty.verdict], sentence: duty.sentence, condition: DUTY_CONDITION[duty.verdict], sureWords: duty.sureWords },
    ...overdueBlocks(picture),
    ...(duty.limits.length === 0 ? [] : [
      { kind: 'paragraph', text: LIMITS_HOLD[duty.verdict] } as const,
      { kind: 'list', ordered: false, items: duty.limits.map((limit) => inSystem(limit.sentence, picture.system)) } as const,
    ]),
    ...(notChecked.length === 0 ? [] : [{ kind: 'paragraph', text: `Not looked at, or only in part: ${notChecked.length} parts. The report lists them.` } as const]),
    ...saleBlocks(picture, sale),
    ...(told.length === 0 ? [] : [{ kind: 'heading', level: 2, text: 'Told by somebody, not checked' } as const, { kind: 'list', ordered: false, items: told } as const]),
  ];
}

import { isOpen, overdueSentence, reasonSentence, type Picture, type PrintSystem } from '../../derived/index.ts';
import { chanceWords } from '../sentences/chance-words.ts';
import { moneySpan } from '../sentences/money-words.ts';
import { addedHours, partName, VERDICT_WORDS } from '../sentences/words.ts';
import { inSystem, ownUnitsFirst } from '../sentences/in-system.ts';
import { makerWords } from '../sentences/maker-words.ts';
import { treadWords } from '../sentences/tread-words.ts';
import { onceItMayRun } from '../sentences/when-it-may-run.ts';
import type { Block } from './block.ts';

/** The first page: verdict, limits, three reasons, what was not checked, what it would take. */
export function firstPage(picture: Picture): readonly Block[] {
  const { duty, worksheet } = picture;
  const { identity } = picture.known;
  const facts: (readonly [string, string])[] = [
    ['Hammer', `${identity.tag}${identity.name === undefined ? '' : `, ${identity.name}`}`],
    ['Ram class and linkage', `${identity.ramClass.asWritten}, ${FAMILY_WORDS[identity.family]}`],
    ...(identity.maker === undefined ? [] : [['Maker, serial, year', makerWords(identity)] as const]),
    ...(identity.place === undefined ? [] : [['Stands at', identity.place] as const]),
    ['Seen on', picture.known.visits.map((visit) => `${visit.date} by ${visit.by.join(', ')}`).join('; ')],
  ];
  const jobs = worksheet.jobs.filter(isOpen);
  const say = (text: string): string => inSystem(text, picture.system);
  const urgent = jobs.filter((job) => job.urgency !== 'watch');
  return [
    { kind: 'heading', level: 1, text: `${identity.tag}: what it is like, what it may do, what it needs` },
    ...(identity.invented === true ? [{ kind: 'paragraph', tone: 'small', text: 'Invented hammer, maker, place and people: made up to show the program at work.' } as const] : []),
    { kind: 'facts', rows: facts },
    { kind: 'verdict', words: VERDICT_WORDS[duty.verdict], sentence: duty.sentence, condition: CONDITION_OF[duty.verdict], sureWords: duty.sureWords },
    ...overdueBlocks(picture),
    ...(duty.limits.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: duty.verdict === 'stand-down' ? 'Limits that hold once what stops it is cured' : 'Limits' } as const,
      { kind: 'list', ordered: false, items: duty.limits.map((limit) => say(limit.sentence)) } as const,
      ...(treadWords(duty.limits) === undefined ? [] : [{ kind: 'paragraph', tone: 'small', text: `${treadWords(duty.limits)} (Common practice, no source.)` } as const]),
    ]),
    { kind: 'heading', level: 2, text: duty.verdict === 'fit' ? 'What speaks for it' : 'Why' },
    { kind: 'list', ordered: true, items: [...duty.reasons.map((reason) => reasonWords(reason.sentence, picture.system)), ...onceCured(picture)] },
    { kind: 'heading', level: 2, text: 'What was not checked' },
    picture.notChecked.length === 0
      ? { kind: 'paragraph', text: 'Every part of this linkage family was looked at, and every rule could be answered.' }
      : { kind: 'paragraph', text: notCheckedWords(picture) },
    { kind: 'heading', level: 2, text: 'What it would take' },
    jobs.length === 0
      ? { kind: 'paragraph', text: duty.verdict === 'not-known-yet' ? 'Not known yet: no work follows from what was read so far, and much of it was not looked at.' : `${(worksheet.mayBe ?? []).length === 0 ? 'Nothing beyond oil and the usual round.' : `Nothing that is certain beyond oil and the usual round.${mayBeWords(picture)}`}` }
      : { kind: 'paragraph', text: `${jobs.length === 1 ? 'One job' : `${jobs.length} jobs`}, ${urgent.length === 0 ? 'none' : String(urgent.length)} of them for a limit or a stop: ${addedHours(jobs.map((job) => job.hours))}; parts and outside work ${moneySpan(worksheet.cost, worksheet.currency ?? 'unit')} (${(worksheet.currency ?? 'unit') === 'unit' ? 'generic units of about one US dollar; ' : ''}an estimate wherever no price was heard).${mayBeWords(picture)}` },
    ...(duty.missing.length === 0 ? [] : [
      { kind: 'heading', level: 2, text: 'What would settle the verdict' } as const,
      ...(duty.verdict === 'stand-down' ? [{ kind: 'paragraph', text: 'While something stops it, whatever needs it to run waits until that is cured.' } as const] : []),
      { kind: 'list', ordered: true, items: [...duty.missing.slice(0, MOST_NAMED).map((one) => `${one.title} (${one.minutes} min): ${onceItMayRun(picture, one.missing, say(one.how))}`), ...(duty.missing.length > MOST_NAMED ? [`and ${duty.missing.length - MOST_NAMED} more, under Not known yet`] : [])] } as const,
    ]),
  ];
}

/** What only may be needed, with its chance: it is in no sum here, and the worksheet and the sale sheet count it by its chance. */
function mayBeWords({ worksheet }: Picture): string {
  const { mayBe = [] } = worksheet;
  return mayBe.length === 0 ? '' : ` May be needed beside it: ${mayBe.map((job) => `${job.title.charAt(0).toLowerCase()}${job.title.slice(1)}, ${chanceWords(job.need.chance)}`).join('; ')}; the worksheet and the sale sheet count ${mayBe.length === 1 ? 'it by its' : 'them by their'} chance.`;
}

/** What is overdue, where the verdict does not say it already: of a hammer that may not run it says only why. */
export const overdueBlocks = ({ duty }: Pick<Picture, 'duty'>): readonly Block[] =>
  (duty.overdue === undefined || duty.overdue.length === 0 || duty.sentence.includes('overdue') ? [] : [{ kind: 'paragraph', tone: 'next', text: overdueSentence(duty.overdue) }]);

/** A reason with the reader's own units before those in which the reading was written. */
export const reasonWords = (sentence: string, system: PrintSystem): string =>
  sentence.replace(/: ([^,():]+ \([^()]+\))\. /u, (_, shown: string) => `: ${ownUnitsFirst(shown, system)}. `);

/** What limits a hammer that something stops, after what stops it, so that nobody takes the cure of the one for the end of it. */
function onceCured({ duty, findings, system }: Picture): readonly string[] {
  if (duty.verdict !== 'stand-down') return [];
  const limiting = findings.filter((finding, index, all) => finding.grade === 'limited' && all.findIndex((one) => one.criterion === finding.criterion) === index).sort((a, b) => Number(b.gate) - Number(a.gate) || b.limits.length - a.limits.length);
  return limiting.slice(0, Math.max(0, MOST_REASONS - duty.reasons.length)).map((finding) => `Once that is cured, it limits still: ${reasonWords(reasonSentence(finding), system)}`);
}

const MOST_REASONS = 3;

/** So many things are named on the first page, which must stay one page; the rest is counted and stands behind it. */
const MOST_NAMED = 8;

/** What was not checked, gates first as the list has it. */
function notCheckedWords({ notChecked }: Picture): string {
  const named = notChecked.slice(0, MOST_NAMED);
  const names = (wholly: boolean): string => named.filter((one) => one.wholly === wholly).map((one) => partName(one.part)).join('; ');
  const more = notChecked.length - MOST_NAMED;
  const said = [...(names(true) === '' ? [] : [`Not at all: ${names(true)}.`]), ...(names(false) === '' ? [] : [`In part: ${names(false)}.`]), ...(more > 0 ? [`${more === 1 ? 'One more stands' : `${more} more stand`} under Not known yet.`] : [])];
  return `${said.join(' ')} None of it is taken as good.`;
}

export const FAMILY_WORDS = { 'coil-and-toggle': 'coil spring and toggles', 'bow-spring': 'bow spring', helve: 'helve' } as const;

const CONDITION_OF = { fit: 'sound', 'fit-within-limits': 'limited', 'stand-down': 'stand-down', 'not-known-yet': 'not-known' } as const;

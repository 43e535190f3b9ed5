import { overdueSentence, placeWords, valueKey, type Limit, type Picture } from '../../derived/index.ts';
import { asbestosWords } from '../../knowledge/index.ts';
import type { Condition } from '../drawing/hatch.ts';
import { inSystem } from '../sentences/in-system.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import { treadWords } from '../sentences/tread-words.ts';
import { reasonWords } from '../report/first-page.ts';
import { titleBlock } from '../report/report-tree.ts';
import type { TitleBlock } from '../report/block.ts';

/** The card that hangs beside the hammer: the verdict in words and the limits, readable at two metres. */
export interface LimitsCard {
  readonly tag: string;
  readonly verdict: string;
  readonly condition: Condition;
  /** One short sentence each, the figure first in the reader's eye: all of them, in the order in which they bind. */
  readonly limits: readonly string[];
  /** Those of them that are habits round the blow, not bounds of it: where the sheet is short they stand smaller, never away. */
  readonly habits: readonly string[];
  /** What holds on every hammer, whatever the verdict. */
  readonly always: readonly string[];
  readonly titleBlock: TitleBlock;
}

const ALWAYS = ['Never die on die cold.', 'Lock off and block the ram before a hand goes near.', 'Eyes, ears, boots. Keys and bolts before each session.'];

/** A reason as short as a card wants it: what and where, what was found without the words in brackets, and the first sentence of what it means. */
function shortReason({ findings, system }: Picture, { finding: key, sentence }: Picture['duty']['reasons'][number]): string {
  const finding = findings.find((one) => valueKey(one.criterion, one.at) === key);
  if (finding === undefined) return reasonWords(sentence, system);
  const found = finding.shown.replace(/ \((?!written)[^()]*\)$/u, '');
  return inSystem(`${finding.title}${placeWords(finding)}${found === '' ? '' : `: ${found}`}. ${finding.reason.split(/(?<=\.) /u)[0] ?? ''}`, system);
}

const HABITS: readonly Limit['kind'][] = ['longest-run', 'oil-every', 'not-unattended', 'no-bystanders', 'named-operator', 'second-person', 'double-hearing-protection'];
const isHabit = ({ kind }: Limit): boolean => HABITS.includes(kind);

/** The limits card of a picture. A hammer that stands down shows that and nothing else to do with running. */
export function limitsCard(picture: Picture): LimitsCard {
  const { duty, known } = picture;
  const condition: Condition = duty.verdict === 'stand-down' ? 'stand-down' : duty.verdict === 'not-known-yet' ? 'not-known' : duty.verdict === 'fit' ? 'sound' : 'limited';
  const running = duty.verdict === 'fit' || duty.verdict === 'fit-within-limits';
  const open = picture.findings.filter((finding) => finding.grade === 'not-known').length;
  const judged = picture.findings.filter((finding) => finding.grade !== 'does-not-apply').length;
  // On the card itself the card that others name is this one.
  const say = (limit: Limit): string => inSystem(limit.sentence, picture.system).replace('the limits card', 'this card');
  const tread = running ? treadWords(duty.limits) : undefined;
  const overdue = duty.overdue === undefined || duty.overdue.length === 0 || (running && duty.limits.length === 0) ? [] : [overdueSentence(duty.overdue)];
  const settle = duty.missing.map((one) => one.title);
  const facing = asbestosWords(known.looks);
  // Dust asks for no verdict: whoever opens the hammer that stands down breathes it too.
  const dust = facing === undefined ? [] : [`Clutch facing: ${facing.charAt(0).toLowerCase()}${facing.slice(1)}`];
  return {
    habits: running ? duty.limits.filter(isHabit).map(say) : duty.verdict === 'not-known-yet' ? settle : [],
    tag: known.identity.tag, verdict: VERDICT_WORDS[duty.verdict], condition,
    limits: running ? (duty.limits.length === 0 ? [duty.sentence, ...dust] : [...duty.limits.map(say), ...dust]) : duty.verdict === 'stand-down' ? ['Do not run.', ...dust, ...duty.reasons.map((reason) => shortReason(picture, reason))] : [...dust, 'Do not run until this is settled:', ...settle],
    always: [...overdue, ...(tread === undefined ? [] : [tread]), ...(open === 0 ? [] : [`Not checked, and not taken as good: ${open} of ${judged} matters.`]), ...(duty.limits.some((limit) => limit.kind === 'named-operator') ? [running ? 'Operator: ______________________' : 'Operator, once it may run: ______________________'] : []), ...ALWAYS], titleBlock: titleBlock(picture, 'Limits card'),
  };
}

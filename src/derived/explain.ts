import type { Entry } from '../entries/index.ts';
import { answerWords, atName, lookOf, placeOf } from '../hammer/index.ts';
import type { Knowledge, Source } from '../knowledge/index.ts';
import { formatQuantity } from '../methods/quantity/index.ts';
import type { Picture } from './picture.ts';
import { valueKey, type Value } from './value.ts';

/** Why something is as it is: a tree from a judgement or a value down to the readings and the sources. */
export interface Explanation {
  readonly key: string;
  readonly title: string;
  /** What is known of it, with unit and doubt, or that it is not known. */
  readonly shown: string;
  /** How we know: `measured on 2026-04-11 by Ada Quill with rule`, `worked out`, `assumed`. */
  readonly standing: string;
  readonly formula?: string;
  readonly words?: string;
  readonly sources: readonly Source[];
  readonly children: readonly Explanation[];
}

const DEEPEST = 12;

/**
 * Explains a finding (`guide.play`, `guide.play@top`) or a value (`stack.loss`, `lower-die.height`).
 * @returns the explanation, or undefined where the picture has nothing of that name
 */
export function explain(picture: Picture, knowledge: Knowledge, entries: readonly Entry[], key: string): Explanation | undefined {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const finding = picture.findings.find((one) => valueKey(one.criterion, one.at) === key) ?? picture.findings.find((one) => one.criterion === key);
  if (finding !== undefined) {
    return {
      key, title: finding.title, shown: finding.grade.replaceAll('-', ' '), standing: [finding.sureWords, finding.override === undefined ? '' : `owner's limit by ${finding.override.author}: ${finding.override.reason}; the default is ${finding.override.defaultRule}`].filter((words) => words !== '').join('; '),
      formula: finding.rule, words: finding.reason, sources: sourcesOf(knowledge, finding.sources),
      children: [...new Set([...finding.from, ...finding.missing])].map((from) => explainValue(picture, knowledge, byId, from, 0)),
    };
  }
  if (picture.values[key] === undefined && picture.known.looks[key] === undefined) return undefined;
  return explainValue(picture, knowledge, byId, key, 0);
}

function explainValue(picture: Picture, knowledge: Knowledge, entries: ReadonlyMap<string, Entry>, key: string, depth: number): Explanation {
  const look = picture.known.looks[key];
  if (look !== undefined) {
    return { key, title: nameOf(key), shown: answerWords(key, look.answer), standing: `${look.standing} on ${look.when.slice(0, 10)} by ${look.by}`, sources: [], children: [], ...(look.words === undefined ? {} : { words: look.words }) };
  }
  const value = picture.values[key];
  if (value === undefined) return { key, title: nameOf(key), shown: 'not checked', standing: 'nobody has entered it', sources: [], children: [] };
  return {
    key, title: `${value.title}${placed(key)}`, shown: shownOutcome(picture, value), standing: standingOf(value, entries), sources: sourcesOf(knowledge, value.sources),
    children: depth >= DEEPEST ? [] : value.from.filter((from) => from !== key).map((from) => explainValue(picture, knowledge, entries, from, depth + 1)),
    ...(value.formula === undefined ? {} : { formula: value.formula }), ...(value.words === undefined && value.warning === undefined ? {} : { words: [value.words, value.warning].filter((words) => words !== undefined).join(' ') }),
  };
}

const baseOf = (key: string): string => key.split(/[@#]/)[0] ?? key;

/** Where on the part, from the key: `, front left`. */
function placed(key: string): string {
  const [, at] = /@([^#]+)/.exec(key) ?? [];
  return at === undefined ? '' : `, ${atName(at)}`;
}

/** A reading or look by the name that a person knows; what has none keeps its key. */
function nameOf(key: string): string {
  const name = lookOf(baseOf(key))?.look.question ?? placeOf(baseOf(key))?.place.name;
  return name === undefined ? key : `${name}${key.includes('#as-made') ? ', as made' : ''}${placed(key)}`;
}

function shownOutcome(picture: Picture, value: Value): string {
  switch (value.outcome.state) {
    case 'known': {
      const printed = formatQuantity(value.outcome.quantity, { system: picture.system, doubt: true });
      return value.asWritten === undefined || value.asWritten === printed ? printed : `${value.asWritten} (${printed})`;
    }
    case 'not-known':
      return `not known; missing: ${value.outcome.missing.map(nameOf).join('; ')}`;
    case 'does-not-apply':
      return `does not apply: ${value.outcome.because}`;
    case 'outside-validity':
      return `no figure: ${value.outcome.because}`;
  }
}

function standingOf(value: Value, entries: ReadonlyMap<string, Entry>): string {
  const [first] = value.evidence;
  const entry = first === undefined ? undefined : entries.get(first);
  const tool = entry?.kind === 'reading' ? (entry.body as { readonly tool?: string }).tool : undefined;
  const taken = entry === undefined ? '' : ` on ${entry.at.slice(0, 10)} by ${entry.by}${tool === undefined ? '' : ` with ${tool.replaceAll('-', ' ')}`}`;
  const rests = value.standing === 'worked-out' && value.rests === 'assumed' ? ', an estimate: it rests on an assumed figure' : value.standing === 'worked-out' && value.rests === 'told' ? ', and rests on something told' : '';
  return `${value.standing.replace('-', ' ')}${taken}${rests}`;
}

const sourcesOf = (knowledge: Knowledge, ids: readonly string[]): readonly Source[] => ids.flatMap((id) => knowledge.sources.find((source) => source.id === id) ?? []);

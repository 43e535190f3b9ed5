import { isAlias, isMap, isPair, isScalar, isSeq, parseDocument, type Node } from 'yaml';
import type { RecordNode, SurveyNode } from './survey-tree.ts';
import type { Span, SurveyProblems } from './survey-problem.ts';
import { syntaxWords } from './syntax-words.ts';

const DEEPEST = 12;
/** Nesting in one line that no survey has; a file past it is refused before the parser walks into it. */
const DEEPEST_BRACKETS = 60;

/**
 * Reads the text of a survey file into a tree, listing what is wrong with the writing and keeping the rest. Anchors,
 * references and tags of YAML are refused: a survey needs none, and they can be made to swell without bound.
 * @param text whole file, already within the size limit
 * @param problems receives what is wrong
 * @returns the tree, or undefined where nothing could be read
 */
export function parseSurveyTree(text: string, problems: SurveyProblems): SurveyNode | undefined {
  const deep = tooDeep(text);
  if (deep !== undefined) {
    problems.add('', { start: deep, end: deep + 1 }, text.slice(deep, deep + 20), 'brackets or dashes are nested too deeply', `at most ${DEEPEST_BRACKETS} in one another`);
    return undefined;
  }
  const document = parseDocument(text, { schema: 'failsafe', uniqueKeys: false, prettyErrors: false, merge: false, strict: true, logLevel: 'silent' });
  for (const found of [...document.errors, ...document.warnings]) {
    const [start, end] = found.pos;
    const { wrong, expected } = syntaxWords(found.code, found.message);
    problems.add('', { start, end }, text.slice(start, Math.min(end, start + 40)).split('\n')[0], wrong, expected);
  }
  return document.contents === null ? undefined : nodeOf(document.contents, '', 0, problems);
}

const spanOf = (node: { range?: readonly [number, number, number] | null }): Span => ({ start: node.range?.[0] ?? 0, end: node.range?.[1] ?? 0 });

function nodeOf(node: Node | null, path: string, depth: number, problems: SurveyProblems, fallback: Span = { start: 0, end: 0 }): SurveyNode | undefined {
  if (node === null) return { kind: 'text', text: '', span: fallback };
  const span = spanOf(node);
  if (isAlias(node)) {
    problems.add(path, span, `*${node.source}`, 'a reference to another place is not allowed', 'the value written out');
    return undefined;
  }
  if (depth > DEEPEST) {
    problems.add(path, span, path.slice(-40), 'the survey is nested too deeply', `at most ${DEEPEST} levels`);
    return undefined;
  }
  if ((isScalar(node) || isMap(node) || isSeq(node)) && node.anchor !== undefined) problems.add(path, span, `&${node.anchor}`, 'a mark for references is not allowed', 'the value without &');
  if (isScalar(node)) return { kind: 'text', text: String(node.value), span };
  if (isSeq(node)) {
    const items: SurveyNode[] = [];
    node.items.forEach((item, index) => {
      const read = nodeOf(isPair(item) ? null : (item as Node | null), `${path}[${index}]`, depth + 1, problems, span);
      if (read !== undefined) items.push(read);
    });
    return { kind: 'list', items, span };
  }
  return isMap(node) ? recordOf(node, path, depth, problems) : undefined;
}

function recordOf(node: { readonly items: readonly { readonly key: unknown; readonly value: unknown }[]; range?: readonly [number, number, number] | null }, path: string, depth: number, problems: SurveyProblems): RecordNode {
  const fields = new Map<string, { readonly key: Span; readonly value: SurveyNode }>();
  for (const { key, value } of node.items) {
    if (!isScalar(key)) {
      const at = spanOf((key ?? node) as Node);
      problems.add(path, at, 'a list or record', 'a name is missing before the colon', 'a plain name');
      continue;
    }
    const name = String(key.value);
    const keySpan = spanOf(key);
    const inner = path === '' ? name : `${path}.${name}`;
    if (fields.has(name)) {
      problems.add(inner, keySpan, name, 'this name is written twice in one place', 'each name once; the first is used');
      continue;
    }
    const read = nodeOf(value as Node | null, inner, depth + 1, problems, keySpan);
    if (read !== undefined) fields.set(name, { key: keySpan, value: read });
  }
  return { kind: 'record', fields, span: spanOf(node) };
}

/** Offset at which nesting passes the bound, counted roughly; letters inside quotation marks count too, which no survey feels. */
function tooDeep(text: string): number | undefined {
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text.charCodeAt(at);
    if (letter === 0x5b || letter === 0x7b) depth += 1;
    else if ((letter === 0x5d || letter === 0x7d) && depth > 0) depth -= 1;
    if (depth > DEEPEST_BRACKETS) return at;
  }
  const dashes = /^[ \t]*(?:[-?:][ \t]+){20}/m.exec(text);
  return dashes?.index;
}

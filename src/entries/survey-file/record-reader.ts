import { namesAllowed } from '../names-allowed.ts';
import { nodeWords, type RecordNode, type SurveyNode } from './survey-tree.ts';
import type { Span, SurveyProblems } from './survey-problem.ts';

/** Reads the fields of one record: unknown names are listed with the nearest known one, and each value keeps its place. */
export class RecordReader {
  readonly record: RecordNode;
  readonly path: string;
  readonly problems: SurveyProblems;

  /**
   * @param known names that may stand here; anything else is a problem
   */
  constructor(record: RecordNode, path: string, known: readonly string[], problems: SurveyProblems) {
    this.record = record;
    this.path = path;
    this.problems = problems;
    for (const [name, { key }] of record.fields) {
      if (!known.includes(name)) problems.add(this.pathOf(name), key, name, 'no such name is known here', namesAllowed(name, known, problems.full));
    }
  }

  pathOf(name: string): string {
    return this.path === '' ? name : `${this.path}.${name}`;
  }

  /** Place of a field's value, or of the whole record where the field is missing. */
  spanOf(name: string): Span {
    return this.record.fields.get(name)?.value.span ?? this.record.span;
  }

  node(name: string): SurveyNode | undefined {
    return this.record.fields.get(name)?.value;
  }

  /** A field's text; nothing where it is absent, a problem where it is blank or no text. */
  text(name: string, expected = 'some text'): string | undefined {
    const node = this.node(name);
    if (node === undefined) return undefined;
    if (node.kind === 'text' && node.text.trim() !== '') return node.text.trim();
    this.problems.add(this.pathOf(name), this.spanOf(name), node.kind === 'text' ? undefined : nodeWords(node), `nothing usable is written for ${name}`, expected);
    return undefined;
  }

  /** A field's text, and a problem where it is absent. */
  need(name: string, expected: string): string | undefined {
    if (this.node(name) === undefined) this.missing(name, expected);
    return this.text(name, expected);
  }

  missing(name: string, expected: string): void {
    this.problems.add(this.pathOf(name), { start: this.record.span.start, end: this.record.span.start }, undefined, `${name} is missing`, expected);
  }

  /** One of some words. */
  word<T extends string>(name: string, words: readonly T[]): T | undefined {
    const text = this.text(name, `one of ${words.join(', ')}`);
    if (text === undefined) return undefined;
    const found = words.find((word) => word === text);
    if (found === undefined) this.refuse(name, text, namesAllowed(text, words, this.problems.full));
    return found;
  }

  refuse(name: string, value: unknown, expected: string): void {
    this.problems.add(this.pathOf(name), this.spanOf(name), value, `${name} cannot be used`, expected);
  }

  /** The items of a list; one item written without a dash counts as a list of one. */
  list(name: string): readonly { readonly node: SurveyNode; readonly path: string }[] {
    const node = this.node(name);
    if (node === undefined || isBlank(node)) return [];
    const items = node.kind === 'list' ? node.items : [node];
    return items.map((item, index) => ({ node: item, path: `${this.pathOf(name)}[${index}]` }));
  }

  /** The fields of a record of free names; nothing where it is absent or left blank. */
  entries(name: string, expected: string): readonly { readonly name: string; readonly key: Span; readonly node: SurveyNode; readonly path: string }[] {
    const node = this.node(name);
    if (node === undefined || isBlank(node)) return [];
    if (node.kind !== 'record') {
      this.problems.add(this.pathOf(name), node.span, nodeWords(node), `${name} is no record`, expected);
      return [];
    }
    return [...node.fields].map(([inner, { key, value }]) => ({ name: inner, key, node: value, path: `${this.pathOf(name)}.${inner}` }));
  }
}

const isBlank = (node: SurveyNode): boolean => node.kind === 'text' && node.text.trim() === '';

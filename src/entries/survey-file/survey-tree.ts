import type { Span } from './survey-problem.ts';

/** A survey file as read, before anything is known of its meaning: texts, records and lists, each with its place. */
export type SurveyNode = TextNode | RecordNode | ListNode;

export interface TextNode {
  readonly kind: 'text';
  /** As written, without quotation marks; empty where nothing was written. */
  readonly text: string;
  readonly span: Span;
}

export interface RecordNode {
  readonly kind: 'record';
  /** Fields in the order written, each key once. */
  readonly fields: ReadonlyMap<string, { readonly key: Span; readonly value: SurveyNode }>;
  readonly span: Span;
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly SurveyNode[];
  readonly span: Span;
}

/** Says in a word what stands in a place. */
export const nodeWords = (node: SurveyNode): string => (node.kind === 'text' ? node.text : node.kind === 'list' ? `a list of ${node.items.length}` : `a record of ${[...node.fields.keys()].slice(0, 3).join(', ')}`);

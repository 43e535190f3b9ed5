export interface WithoutTabs {
  readonly text: string;
  /** Where the first line with a leading tab is, and how many there are; absent where there are none. */
  readonly tabs?: { readonly start: number; readonly lines: number };
}

/**
 * Puts two spaces for each tab at the beginning of a line, so that one wrong key does not cost the rest of the file: the
 * levels stay apart where every level is one tab.
 */
export function withoutTabs(text: string): WithoutTabs {
  const first = /^ *\t/m.exec(text);
  if (first === null) return { text };
  const lines = text.match(/^ *\t/gm)?.length ?? 0;
  return { text: text.replace(/^ *\t[ \t]*/gm, (indent) => indent.replaceAll('\t', '  ')), tabs: { start: first.index, lines } };
}

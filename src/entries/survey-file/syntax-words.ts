/** What is wrong and what would be right, for a fault of the writing. */
export interface SyntaxWords {
  readonly wrong: string;
  readonly expected: string;
}

const WORDS: Readonly<Record<string, SyntaxWords>> = {
  TAB_AS_INDENT: { wrong: 'a tab stands where spaces belong', expected: 'spaces, the same number for all lines of one block' },
  BAD_INDENT: { wrong: 'the line is pushed in by the wrong number of spaces', expected: 'the same number of spaces for all lines of one block' },
  MISSING_CHAR: { wrong: 'a sign is missing; the file may be cut off here', expected: 'the closing quotation mark, bracket or brace, or a colon and a space after the name' },
  UNEXPECTED_TOKEN: { wrong: 'this cannot stand here', expected: 'name: value, or a dash before each item of a list' },
  BLOCK_IN_FLOW: { wrong: 'lines pushed in cannot stand inside braces or brackets', expected: 'everything on one line inside the braces' },
  BLOCK_AS_IMPLICIT_KEY: { wrong: 'a second colon stands on the line', expected: 'quotation marks round a value that has a colon and a space in it' },
  MULTILINE_IMPLICIT_KEY: { wrong: 'a name runs over several lines, or the colon after it is missing', expected: 'name: value on one line' },
  KEY_OVER_1024_CHARS: { wrong: 'a name is too long', expected: 'a name of part and place, such as upper-die.height' },
  BAD_ALIAS: { wrong: 'a reference to another place is not allowed', expected: 'the value written out' },
  ALIAS_PROPS: { wrong: 'a reference to another place is not allowed', expected: 'the value written out' },
  BAD_SCALAR_START: { wrong: 'a value cannot begin with this sign', expected: 'quotation marks round the value' },
  BAD_DQ_ESCAPE: { wrong: 'a backslash inside double quotation marks means something else', expected: 'two backslashes, or single quotation marks' },
  MULTIPLE_DOCS: { wrong: 'a second survey begins in the same file', expected: 'one survey in a file' },
  TAG_RESOLVE_FAILED: { wrong: 'a tag with an exclamation mark is not allowed', expected: 'the value without the tag' },
  MULTIPLE_TAGS: { wrong: 'a tag with an exclamation mark is not allowed', expected: 'the value without the tag' },
  BAD_PROP_ORDER: { wrong: 'a tag or a mark for references is not allowed', expected: 'the value by itself' },
  MULTIPLE_ANCHORS: { wrong: 'a mark for references is not allowed', expected: 'the value without &' },
  BAD_DIRECTIVE: { wrong: 'a line that begins with a per cent sign is not allowed', expected: 'tupwise: 1 as the first line' },
};

/**
 * Puts a fault of the writing into plain words.
 * @param code the parser's own code for it
 * @param message the parser's message, used where the code has no words here
 */
export function syntaxWords(code: string, message: string): SyntaxWords {
  const known = Object.hasOwn(WORDS, code) ? WORDS[code] : undefined;
  return known ?? { wrong: `the writing is wrong (${message.split('\n')[0]?.slice(0, 100) ?? code})`, expected: 'name: value, one on a line' };
}

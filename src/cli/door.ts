/** What the command line needs from outside; a test hands in its own. */
export interface Door {
  /** Writes what was asked for. */
  readonly out: (text: string) => void;
  /** Writes problems and remarks. */
  readonly err: (text: string) => void;
  /** Shows a line that the next one, or an empty one, takes the place of; only where somebody looks on at a terminal. */
  readonly passing?: (text: string) => void;
  /** Reads standard input to its end. */
  readonly standardInput: () => Promise<string>;
  /** The present instant, ISO 8601. */
  readonly now: () => string;
}

/** Exit codes, the same for every command. */
export const EXIT = {
  fit: 0,
  fine: 0,
  /** Something went wrong that is no fault of the input. */
  failed: 1,
  badInput: 2,
  fitWithinLimits: 10,
  notKnownYet: 20,
  standDown: 30,
} as const;

export const EXIT_WORDS = `Exit codes:
   0  fit, or done as asked
  10  fit within limits
  20  not known yet
  30  stand down
   2  bad input: every problem is listed with its place
   1  the program itself failed`;

/** Input that cannot be used, said in a sentence; ends the command with exit code 2. */
export class BadInput extends Error {
  override readonly name = 'BadInput';
}

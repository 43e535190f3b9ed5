/** Bad input, said so that the person can put it right: which field, what was written, what is wrong with it, what would be right. */
export interface Problem {
  readonly field: string;
  readonly value: string;
  readonly message: string;
  readonly expected: string;
}

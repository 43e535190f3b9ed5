import type { Problem } from '../../entries/index.ts';

/** A problem as one sentence: what is wrong; what would be right: what stood there. Those of the log come as whole sentences. */
export const sentenceOf = ({ message, expected, value }: Problem): string => (message.includes(expected) ? message : `${message}; ${expected}: ${value}`);

/** Problems one after the other. */
export const sentencesOf = (problems: readonly Problem[]): string => problems.map((problem) => `${sentenceOf(problem)}.`).join(' ');

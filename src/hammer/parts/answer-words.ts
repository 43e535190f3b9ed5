import { lookOf } from './catalogue.ts';

/**
 * What a look's answer says, in the words that were offered to choose from.
 * @param look id of the look, with or without the `@place` that it was looked at
 * @param answer id of the answer; one that the vocabulary does not have (of a newer version) gives its own letters
 */
export function answerWords(look: string, answer: string): string {
  const [id = look] = look.split('@');
  return lookOf(id)?.look.answers.find((one) => one.id === answer)?.words ?? answer.replaceAll('-', ' ');
}

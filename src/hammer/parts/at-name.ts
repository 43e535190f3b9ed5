/** Phases and pairs of legs carry letters, which would read as stray ones at the end of a sentence. */
const LETTERS = /^[abc]{1,2}$/u;

/** A place on a part in words: `front left`, `phase A`, `legs A and B`. @param at as it stands behind the `@` of a key */
export function atName(at: string): string {
  if (!LETTERS.test(at)) return at.replaceAll('-', ' ');
  const [one = '', other] = at.toUpperCase();
  return other === undefined ? `phase ${one}` : `legs ${one} and ${other}`;
}

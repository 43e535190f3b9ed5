const LONGEST = 60;

/**
 * Letters to change, put in, leave out or swap with a neighbour to make one name from the other.
 * Source: the restricted edit distance; textbook knowledge, from memory.
 */
function editDistance(one: string, other: string, most: number): number {
  let before: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const next = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      let least = Math.min(last[column]! + 1, next[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1));
      if (row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1]) least = Math.min(least, before[column - 2]! + 1);
      next.push(least);
    }
    if (Math.min(...next) > most) return most + 1;
    before = last;
    last = next;
  }
  return last[other.length]!;
}

const plain = (name: string): string => name.toLowerCase().replace(/[\s_]+/g, '-');

/**
 * The known name that a mistyped one was probably meant to be.
 * @param name as typed
 * @param known names that exist
 * @returns the nearest, or undefined where none is near (more than a third of the letters would have to change)
 */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const typed = plain(name);
  if (typed.length > LONGEST || typed === '') return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3));
  for (const candidate of known) {
    if (Math.abs(candidate.length - typed.length) > least) continue;
    const distance = editDistance(typed, candidate, least);
    if (distance < least || (distance === least && best === undefined)) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

import type { Ranged } from '../capacity/index.ts';

/** What may arrive at a distance from the hammer. m and m/s. */
export interface Felt {
  readonly distance: number;
  readonly least: number;
  readonly most: number;
  readonly words: string;
}

/** m/s at a building; from memory of BS 5228-2 (what people notice) and DIN 4150-3 (short shocks at a dwelling's foundation). */
export const VIBRATION_MARKS = [
  { from: 0, words: 'nobody notices' },
  { from: 0.14e-3, words: 'somebody sensitive may notice' },
  { from: 0.3e-3, words: 'felt in a house' },
  { from: 1e-3, words: 'brings complaints' },
  { from: 5e-3, words: 'a dwelling may suffer light damage' },
] as const;

export const VIBRATION_SOURCE = 'speed at a distance: P. B. Attewell and I. W. Farmer, 1973, for driven piles, a factor 0.25 to 1.5 by the soil; marks: BS 5228-2 and DIN 4150-3; all from memory, and no hammer was measured for it';

/** m/s x m / √J: least for dry firm ground, most for soft wet clay, which carries furthest. */
const CARRIED = { least: 0.25e-3, most: 1.5e-3 } as const;

const wordsOf = (speed: number): string => [...VIBRATION_MARKS].reverse().find((mark) => speed >= mark.from)?.words ?? VIBRATION_MARKS[0].words;

/**
 * Greatest speed of the ground at distances: factor x √energy / distance, the rule for driven piles with the energy that the ground gets.
 * @param distances m, a few times the size of the block and beyond @param energy J into the ground
 */
export function feltAt(distances: readonly number[], energy: Ranged): readonly Felt[] {
  if (energy.state !== 'known') return [];
  return distances.map((distance) => {
    const least = (CARRIED.least * Math.sqrt(energy.low)) / distance;
    const most = (CARRIED.most * Math.sqrt(energy.high)) / distance;
    return { distance, least, most, words: wordsOf(least) === wordsOf(most) ? wordsOf(most) : `between “${wordsOf(least)}” and “${wordsOf(most)}”` };
  });
}

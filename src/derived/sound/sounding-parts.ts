/** First and last frame, the last one exclusive, of a part of the recording that holds sound. */
export type Part = readonly [number, number];

/** Share of the mean energy below which a frame holds nothing: no room and no microphone is that quiet. */
const NOTHING = 1e-8;
/** s; shorter silence belongs to the beat */
const LONGEST_SILENCE = 3;

/**
 * The parts of a recording that hold sound. What a cut, a mute or a lost connection left empty for more than three
 * seconds is left out, lest medians and spreads be taken over nothing.
 * @param energies rows of the bands, frame by frame
 * @returns at least one part; the whole where nothing is empty
 */
export function soundingParts(energies: readonly Float32Array[], frameRate: number): readonly Part[] {
  const frames = energies[0]?.length ?? 0;
  const sums = new Float64Array(frames);
  let mean = 0;
  for (const row of energies) addRow(sums, row);
  for (let i = 0; i < frames; i++) mean += sums[i]! / frames;
  const least = NOTHING * mean;
  const longest = LONGEST_SILENCE * frameRate;
  const parts: Part[] = [];
  let [from, to] = [0, 0];
  for (let i = 0; i < frames; i++) {
    if (!(sums[i]! > least)) continue;
    if (i - to > longest) {
      if (to > from) parts.push([from, to]);
      from = i;
    }
    to = i + 1;
  }
  if (frames - to <= longest) to = frames;
  if (to > from) parts.push([from, to]);
  return parts.length > 0 ? parts : [[0, frames]];
}

/** Every `stride`th value of a row within the parts. @param stride 1 or more */
export function thinnedParts(row: Float32Array, parts: readonly Part[], stride: number): Float64Array {
  let count = 0;
  for (const [from, to] of parts) count += Math.ceil((to - from) / stride);
  const out = new Float64Array(count);
  let at = 0;
  for (const [from, to] of parts) for (let i = from; i < to; i += stride) out[at++] = row[i]!;
  return out;
}

function addRow(into: Float64Array, row: Float32Array): void {
  for (let i = 0; i < into.length; i++) into[i] = into[i]! + row[i]!;
}

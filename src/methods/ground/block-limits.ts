/** What a code asks of a hammer's foundation block. SI. */
export interface BlockLimits {
  /** greatest amplitude of the block, m */
  readonly blockAmplitude: number;
  /** the same where the ground is sand below the water, m */
  readonly blockAmplitudeOnWetSand: number;
  /** greatest amplitude of the anvil, m */
  readonly anvilAmplitude: number;
  /** least thickness of the block below the anvil, m */
  readonly thickness: number;
  /** greatest offset of the centre of gravity over the side of the block */
  readonly eccentricity: number;
  /** least mass of the block over that of the anvil */
  readonly blockOverAnvil: number;
  /** greatest pressure on the ground over what it may carry at rest */
  readonly groundShare: number;
  readonly source: string;
  readonly sure: 'low';
}

// Steps by mass of the ram, kg. Between the steps remembered the lower one is taken, which is the careful side for an amplitude.
const ANVIL_STEPS = [
  { from: 0, amplitude: 1e-3 },
  { from: 2000, amplitude: 2e-3 },
  { from: 3000, amplitude: 3e-3 },
];
const THICKNESS_STEPS = [
  { upTo: 1000, thickness: 1 },
  { upTo: 2000, thickness: 1.25 },
  { upTo: 4000, thickness: 1.75 },
  { upTo: 6000, thickness: 2.25 },
  { upTo: Number.POSITIVE_INFINITY, thickness: 2.5 },
];

/**
 * Limits of IS 2974 part 2:1980 for a ram of the mass given. From memory with little confidence in the steps: the standard
 * was not opened, and it is written for industrial hammers, so a small shop's block need not meet it.
 * @param ramMass kg, positive
 */
export function blockLimits(ramMass: number): BlockLimits {
  if (!(ramMass > 0)) throw new Error(`The mass of the ram must be positive: ${ramMass}`);
  return {
    blockAmplitude: 1.2e-3,
    blockAmplitudeOnWetSand: 0.8e-3,
    anvilAmplitude: ANVIL_STEPS.findLast((step) => ramMass >= step.from)!.amplitude,
    thickness: THICKNESS_STEPS.find((step) => ramMass <= step.upTo)!.thickness,
    eccentricity: 0.05,
    blockOverAnvil: 3,
    groundShare: 0.8,
    source: 'IS 2974 part 2:1980, from memory',
    sure: 'low',
  };
}

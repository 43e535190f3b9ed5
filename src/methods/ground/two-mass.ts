/** An anvil on an elastic pad on a block on the ground. SI: kg and N/m, all positive. */
export interface HammerFoundation {
  readonly anvilMass: number;
  /** block, with what is fixed to it and the fill that moves with it */
  readonly blockMass: number;
  /** pad between anvil and block */
  readonly padStiffness: number;
  /** ground under the block */
  readonly groundStiffness: number;
}

/** One way in which both masses swing together. */
export interface FoundationMode {
  /** rad/s */
  readonly frequency: number;
  /** movement of the block over that of the anvil; negative where they move against each other */
  readonly shape: number;
}

/** Amplitudes of anvil and block, m. */
export interface Amplitudes {
  readonly anvil: number;
  readonly block: number;
}

export interface FoundationResponse {
  /** lower first */
  readonly modes: readonly [FoundationMode, FoundationMode];
  /** share of each mode in the movement, m; of the block with its sign against the anvil's */
  readonly amplitudes: readonly [Amplitudes, Amplitudes];
  /** greatest movement of the exact undamped system, which both modes together reach once they fall in step */
  readonly exact: Amplitudes;
  /** what the usual handbooks print: the lower mode alone. It is the smaller figure. */
  readonly lowerModeOnly: Amplitudes;
  /** greatest squeeze of the pad, m, by either reckoning */
  readonly padSqueeze: { readonly exact: number; readonly lowerModeOnly: number };
}

/**
 * Both natural frequencies and shapes, exact: the roots of
 * w⁴ - (1 + r)(wa² + wl²) w² + (1 + r) wa² wl² = 0 with wa² = pad/anvil, wl² = ground/(anvil + block), r = anvil/block
 * (D. D. Barkan, Dynamics of Bases and Foundations).
 */
export function foundationModes(one: HammerFoundation): readonly [FoundationMode, FoundationMode] {
  for (const [name, value] of Object.entries(one)) if (!(value > 0 && value < Number.POSITIVE_INFINITY)) throw new Error(`The ${name} must be positive: ${value}`);
  const onPad = one.padStiffness / one.anvilMass;
  const onGround = one.groundStiffness / (one.anvilMass + one.blockMass);
  const ratio = 1 + one.anvilMass / one.blockMass;
  const half = (ratio * (onPad + onGround)) / 2;
  const product = ratio * onPad * onGround;
  const upper = half + Math.sqrt(half * half - product);
  // The lower root from the product of both: the difference would lose its digits where they lie far apart.
  const lower = product / upper;
  const mode = (square: number): FoundationMode => ({ frequency: Math.sqrt(square), shape: 1 - square / onPad });
  return [mode(lower), mode(upper)];
}

/**
 * Movement after the anvil is struck and leaves at a speed, block at rest; no damping.
 * @param speed of the anvil just after the blow, m/s (see `anvilSpeed`), not negative
 */
export function foundationResponse(one: HammerFoundation, speed: number): FoundationResponse {
  const modes = foundationModes(one);
  const [low, high] = modes;
  // Speeds of the two modes: together the anvil's, and none for the block.
  const lowSpeed = (speed * high.shape) / (high.shape - low.shape);
  const amplitude = ({ frequency, shape }: FoundationMode, modeSpeed: number): Amplitudes => ({ anvil: modeSpeed / frequency, block: (modeSpeed / frequency) * shape });
  const amplitudes = [amplitude(low, lowSpeed), amplitude(high, speed - lowSpeed)] as const;
  const [first, second] = amplitudes;
  return {
    modes,
    amplitudes,
    exact: { anvil: first.anvil + Math.abs(second.anvil), block: Math.abs(first.block) + Math.abs(second.block) },
    lowerModeOnly: { anvil: first.anvil, block: Math.abs(first.block) },
    padSqueeze: { exact: Math.abs(first.anvil - first.block) + Math.abs(second.anvil - second.block), lowerModeOnly: Math.abs(first.anvil - first.block) },
  };
}

/** Movement of anvil and block at a time after the blow, m, from the exact two-mode response. @param time s */
export function movementAt(response: FoundationResponse, time: number): Amplitudes {
  const share = response.modes.map((mode) => Math.sin(mode.frequency * time));
  const sum = (of: 'anvil' | 'block'): number => response.amplitudes[0][of] * share[0]! + response.amplitudes[1][of] * share[1]!;
  return { anvil: sum('anvil'), block: sum('block') };
}

/** Stress in the pad, Pa, from its squeeze (m), stiffness (N/m) and area (m²). */
export const padStress = (squeeze: number, stiffness: number, area: number): number => (squeeze * stiffness) / area;

import { reductionByBlow, upsetWork, type Deformation } from '../../methods/forming/index.ts';
import type { Section } from './bar.ts';
import type { StressAt } from './hot-stress.ts';

/** A full blow on a bar between flat dies. SI. */
export interface Stroke {
  readonly section: Section;
  /** m of the bar under the dies, along it */
  readonly bite: number;
  /** K */
  readonly temperature: number;
  /** ram speed at the blow, m/s */
  readonly speed: number;
  readonly friction: number;
  /** logarithmic strain that the steel still holds from the blows before, not negative */
  readonly held: number;
}

export type Struck =
  | {
      readonly state: 'known';
      /** ln(height before / height after) */
      readonly strain: number;
      /** reduction over the height before */
      readonly share: number;
      /** m */
      readonly reduction: number;
      /** mean over the blow, Pa */
      readonly stress: number;
      /** 1/s, mean */
      readonly rate: number;
    }
  | { readonly state: 'outside-validity'; readonly because: string };

/**
 * Where in a blow the stress stands at its mean. A stress that rises as the power n of strain from nothing has its mean at (1 + n)^(-1/n)
 * of the way, 0.40 to 0.43 for n of 0.2 to 0.4; one that starts from much strain has it in the middle.
 */
export const meanStrain = (held: number, strain: number): number => held + strain * (0.5 - (0.09 * strain) / (held + strain));

/** Mean strain rate of a blow, 1/s: two thirds of the speed at its start (a steady force takes the energy off evenly along the way) over the height. */
export const meanRate = (speed: number, height: number): number => (2 * speed) / (3 * height);

/**
 * Work beyond that of an even squeeze where the bar is thicker than the dies are wide: they dent it from both sides and its middle holds.
 * 1 + 0.21 (h/b - 1) above h/b = 1 (W. F. Hosford and R. M. Caddell, Metal Forming, plane strain, from memory; Hill's fields give
 * 2.57 at 8.7 and this 2.6).
 */
export const dentingWork = (height: number, bite: number): number => 1 + 0.21 * Math.max(0, height / bite - 1);

const deformation = (stroke: Stroke, strain: number): Deformation => ({
  temperature: stroke.temperature, strain: meanStrain(stroke.held, strain), rate: meanRate(stroke.speed, stroke.section.height),
});

const volumeOf = (stroke: Stroke): number => stroke.section.height * stroke.section.width * stroke.bite;

/**
 * What a blow does. The stress depends on the strain that the blow makes, so both are found together.
 * @param energy that goes into the work, J, positive
 */
export function strike(stroke: Stroke, energy: number, stressAt: StressAt): Struck {
  const bite = { volume: volumeOf(stroke), height: stroke.section.height, friction: stroke.friction };
  const useful = energy / dentingWork(stroke.section.height, stroke.bite);
  let strain = 0.02;
  for (let round = 0; round < 60; round++) {
    // The laws end near a strain of 0.5; beyond it the stress is held while the two are found, and the answer is refused below.
    const flow = stressAt(deformation(stroke, Math.min(strain, 0.5)));
    if (flow.state !== 'known') return flow;
    const step = reductionByBlow({ ...bite, flowStress: flow.stress }, useful);
    if (step.state !== 'known') return step;
    const moved = Math.abs(step.strain - strain);
    strain = step.strain;
    if (moved <= 1e-6 * strain) {
      const end = stressAt({ ...deformation(stroke, strain), strain: stroke.held + strain });
      if (end.state !== 'known') return end;
      return { state: 'known', strain, share: step.share, reduction: step.reduction, stress: flow.stress, rate: meanRate(stroke.speed, stroke.section.height) };
    }
  }
  return { state: 'outside-validity', because: `strain and stress of the blow could not be found together: ${energy.toPrecision(3)} J on ${(1000 * bite.height).toPrecision(3)} mm` };
}

/**
 * Energy that a blow must put into the work for a strain, J.
 * @param strain ln(height before / height after), positive
 * @returns a sentence where the laws do not hold
 */
export function energyFor(stroke: Stroke, strain: number, stressAt: StressAt): number | string {
  const flow = stressAt(deformation(stroke, strain));
  if (flow.state !== 'known') return flow.because;
  return dentingWork(stroke.section.height, stroke.bite) * upsetWork({ volume: volumeOf(stroke), height: stroke.section.height, flowStress: flow.stress, friction: stroke.friction }, stroke.section.height * Math.exp(-strain));
}

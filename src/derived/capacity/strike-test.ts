import type { Estimate } from '../../methods/chance/index.ts';
import { blowEfficiency } from '../../methods/ground/index.ts';
import { assumedDistributions, HOT_DENSITY, LAW_SCATTER, SHOP_TEMPERATURE, WORK_INTO_HEAT } from './assumptions.ts';
import { doubtRow, outsideProblems, type InputProblem } from './capacity-input.ts';
import { either, ensemble, positive, type Ranged } from './ensemble.ts';
import { betweenLaws, type StressAt } from './hot-stress.ts';
import { energyFor, strike, type Stroke } from './strike.ts';

/** A bar struck a counted number of full blows at one place. SI. */
export interface StrikeTest {
  /** m, side of the square bar before; 1 in for the usual test */
  readonly side: number;
  /** m of bar under the dies; 2 in for the usual test */
  readonly bite: Estimate;
  /** whole number, 1 to 50 */
  readonly blows: number;
  /** m, mean of the corners after the blows */
  readonly thickness: Estimate;
  /** K at the first blow */
  readonly temperature: Estimate;
  /** share of the mass */
  readonly carbon: number;
  readonly ramMass: Estimate;
  readonly anvilRatio: Estimate;
  readonly restitution: Estimate;
  readonly rate: Estimate;
}

/** What the blows of a test were worth. */
export interface StrikeTestRead {
  readonly state: 'known';
  /** J a blow that went into the work */
  readonly energyIntoWork: Ranged;
  /** J a blow of the ram, by anvil ratio and rebound */
  readonly blowEnergy: Ranged;
  /** m/s of the ram with that energy */
  readonly impactSpeed: Ranged;
}

export type StrikeTestAnswer = StrikeTestRead | { readonly state: 'refused'; readonly problems: readonly InputProblem[] };

interface Blows {
  readonly stroke: Omit<Stroke, 'section' | 'held'>;
  /** strain beyond which the steel does not hold what earlier blows left in it */
  readonly held: number;
  readonly blows: number;
  readonly side: number;
  readonly heatCapacity: number;
  /** K/s by air and dies together */
  readonly cooling: number;
  readonly rate: number;
}

/**
 * Energy into the work, J a blow, that brings a bar to a thickness. The strain is shared evenly by the blows: the sum over them is
 * that of the true blows within 1 %, since each strain is paid once at nearly the same stress.
 */
function energyOfTest(one: Blows, thickness: number, stressAt: StressAt): number {
  const step = Math.log(one.side / thickness) / one.blows;
  const volume = one.side ** 2 * one.stroke.bite;
  let { temperature } = one.stroke;
  let height = one.side;
  let sum = 0;
  for (let blow = 0; blow < one.blows; blow++) {
    // The volume under the dies is kept, so it is as if a shorter bite of a wider bar lay there.
    const stroke: Stroke = { ...one.stroke, temperature, section: { height, width: volume / (height * one.stroke.bite) }, held: Math.min(one.held, blow * step) };
    const energy = energyFor(stroke, step, stressAt);
    if (typeof energy === 'string') return Number.NaN;
    sum += energy;
    height *= Math.exp(-step);
    temperature += (WORK_INTO_HEAT * energy) / (volume * HOT_DENSITY * one.heatCapacity) - one.cooling / one.rate;
  }
  return sum / one.blows;
}

/**
 * Thickness that a bar has after blows of an energy each: the test forwards, blow by blow.
 * @param energy into the work, J a blow
 * @returns m, or a sentence where the laws do not hold
 */
export function thicknessAfter(one: Omit<StrikeTest, 'thickness'>, energy: number, held: number, friction: number, stressAt: StressAt, cooling = 0, heatCapacity = 650): number | string {
  const volume = one.side ** 2 * one.bite.value;
  const speed = Math.sqrt((2 * energy) / (one.ramMass.value * blowEfficiency(one.anvilRatio.value, one.restitution.value)));
  let height = one.side;
  let temperature = one.temperature.value;
  let strain = 0;
  for (let blow = 0; blow < one.blows; blow++) {
    const struck = strike({ section: { height, width: volume / (height * one.bite.value) }, bite: one.bite.value, temperature, speed, friction, held: Math.min(held, strain) }, energy, stressAt);
    if (struck.state !== 'known') return struck.because;
    strain += struck.strain;
    height *= 1 - struck.share;
    temperature += (WORK_INTO_HEAT * energy) / (volume * HOT_DENSITY * heatCapacity) - cooling / one.rate.value;
  }
  return height;
}

/** Everything wrong with a test. */
export function strikeTestProblems(one: StrikeTest): readonly InputProblem[] {
  const estimates = { bite: one.bite, thickness: one.thickness, temperature: one.temperature, ramMass: one.ramMass, anvilRatio: one.anvilRatio, restitution: one.restitution, rate: one.rate };
  return [
    ...outsideProblems([
      ['side', one.side, 0.005, 0.2, 'm'], ['bite', one.bite.value, 0.003, 0.6, 'm'], ['blows', one.blows, 1, 50, ''], ['temperature', one.temperature.value, 673, 1673, 'K'], ['carbon', one.carbon, 0, 0.02, ''],
      ['ramMass', one.ramMass.value, 0.5, 3000, 'kg'], ['anvilRatio', one.anvilRatio.value, 0.5, 1000, ''], ['restitution', one.restitution.value, 0, 0.95, ''], ['rate', one.rate.value, 0.1, 20, 'blows a second'],
      ['thickness', one.thickness.value, one.side * 0.2, one.side * 0.995, 'm'],
      ...Object.entries(estimates).map(([field, estimate]) => doubtRow(field, estimate)),
    ]),
    ...(Number.isInteger(one.blows) ? [] : [{ field: 'blows', sentence: `blows are counted; a whole number from 1 to 50 is allowed: ${one.blows}` }]),
  ];
}

/**
 * Reads a strike test back as the energy of a blow, with 95 % intervals. A test on a shorter bite than said reads as more energy
 * than the blows had, in proportion to the length; so the length under the dies has to be recorded.
 * @param seed whole number @param draws at least 100
 */
export function strikeTestEnergy(one: StrikeTest, seed: number, draws = 2000): StrikeTestAnswer {
  const problems = strikeTestProblems(one);
  if (problems.length > 0) return { state: 'refused', problems };
  const assumed = assumedDistributions();
  const unknowns = {
    friction: assumed.friction, held: assumed.held, heatCapacity: assumed.heatCapacity, pressedContact: assumed.pressedContact, contactTime: assumed.contactTime,
    bite: positive(one.bite), thickness: positive(one.thickness), temperature: either(one.temperature), ramMass: positive(one.ramMass), anvilRatio: positive(one.anvilRatio), restitution: either(one.restitution),
    rate: positive(one.rate), lawShare: { kind: 'uniform', from: 0, to: 1 }, lawFactor: { kind: 'lognormal', median: 1, factor: LAW_SCATTER },
  } as const;
  const drawn = ensemble(unknowns, { seed, stream: 'strike-test', draws }, (x) => {
    const efficiency = blowEfficiency(x.anvilRatio, Math.min(0.95, Math.max(0, x.restitution)));
    const stressAt = betweenLaws(one.carbon, x.lawShare, x.lawFactor);
    // Both faces of the bite, cold dies, for the moment of each blow; the air takes less than a twentieth of that in so short a time.
    const cooling = (2 * x.pressedContact * x.contactTime * x.rate * (x.temperature - SHOP_TEMPERATURE)) / (HOT_DENSITY * x.heatCapacity * one.side);
    // The speed sets the strain rate, and the rate hardly counts: one round from a usual speed is enough.
    const solve = (speed: number): number => energyOfTest({ stroke: { bite: x.bite, temperature: x.temperature, speed, friction: x.friction }, held: x.held, blows: one.blows, side: one.side, heatCapacity: x.heatCapacity, cooling, rate: x.rate }, Math.min(x.thickness, one.side * 0.999), stressAt);
    const first = solve(USUAL_SPEED);
    const energy = Number.isFinite(first) ? solve(Math.sqrt((2 * first) / (efficiency * x.ramMass))) : first;
    return { energy, blow: energy / efficiency, speed: Math.sqrt((2 * energy) / (efficiency * x.ramMass)) };
  });
  const because = 'the laws of flow stress were not fitted to so heavy a blow or to such a heat';
  return { state: 'known', energyIntoWork: drawn.of('energy', because), blowEnergy: drawn.of('blow', because), impactSpeed: drawn.of('speed', because) };
}

/** m/s of a ram at the blow, for a first guess. */
const USUAL_SPEED = 4;

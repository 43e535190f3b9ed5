import { BLOW_EFFICIENCY, biotNumber, forceByMeanPressure, peakForce, radiationCoefficient, stripForce } from '../../methods/forming/index.ts';
import { blowEfficiency } from '../../methods/ground/index.ts';
import { assumedDistributions, ASSUMPTIONS, LAW_SCATTER, LEAST_REDUCTION, SHOP_TEMPERATURE, type Assumption } from './assumptions.ts';
import { coolingThickness, sectionOf } from './bar.ts';
import { capacityProblems, finishOf, type CapacityInput, type InputProblem } from './capacity-input.ts';
import { bent, either, ensemble, partOfStated, positive, type Ranged } from './ensemble.ts';
import { blowsOfHeat, heatParts, heatTime, type Heat } from './heat-of-bar.ts';
import { forgingRange } from './heat-colours.ts';
import { betweenLaws, stressLaws } from './hot-stress.ts';
import { largestBar } from './largest-bar.ts';
import { strike, type Stroke, type Struck } from './strike.ts';

/** What one law alone says at the best estimates. */
export interface ByLaw {
  readonly law: string;
  readonly source: string;
  readonly standing: string;
  /** mean stress, strain, rate and reduction of the first full blow; or why the law does not speak for it */
  readonly blow: Struck;
  /** side of the largest square bar, m; or why not */
  readonly largestBar: { readonly state: 'known'; readonly size: number } | { readonly state: 'outside-validity'; readonly because: string };
}

/** What a hammer does to a bar. SI. */
export interface Capacity {
  readonly state: 'known';
  readonly byLaw: readonly ByLaw[];
  readonly efficiency: Ranged;
  /** what a handbook prints for hammers at large, beside the figure from anvil ratio and rebound */
  readonly efficiencyPublished: typeof BLOW_EFFICIENCY;
  readonly energyIntoWork: Ranged;
  /** share of the thickness by one full blow, first of the heat and last */
  readonly reductionHot: Ranged;
  readonly reductionAtFinish: Ranged;
  /** m by the first blow */
  readonly reductionLength: Ranged;
  /** N at the end of the first blow: a free upset; the bar held from spreading; and from energy over way */
  readonly force: { readonly upset: Ranged; readonly drawing: Ranged; readonly byWay: Ranged };
  /** K between two blows at the start of the heat, positive cools */
  readonly coolingBetweenBlows: { readonly byAir: Ranged; readonly byDies: Ranged; readonly byWork: Ranged; readonly all: Ranged };
  /** s and count */
  readonly heatTime: Ranged;
  readonly blowsPerHeat: Ranged;
  /** m, side of a square bar of this steel */
  readonly largestBar: Ranged;
  readonly leastReduction: number;
  /** chance that a full blow takes at least that share off the bar asked about */
  readonly chanceThatItMoves: number | undefined;
  readonly notes: readonly string[];
  readonly assumed: readonly Assumption[];
}

export type CapacityAnswer = Capacity | { readonly state: 'refused'; readonly problems: readonly InputProblem[] };

/** W/(m K) of hot steel, from memory. */
const CONDUCTIVITY = 28;
const DRAWS = 2000;

/**
 * What a hammer does to a bar, each figure with a 95 % interval by seeded Monte Carlo over everything that is in doubt.
 * @param seed whole number, 0 and up
 * @returns the figures; or the list of problems where the input cannot be
 */
export function capacityOf(input: CapacityInput, seed: number): CapacityAnswer {
  const problems = capacityProblems(input);
  if (problems.length > 0) return { state: 'refused', problems };
  const leastReduction = input.leastReduction ?? LEAST_REDUCTION;
  const finish = finishOf(input);
  const unknowns = {
    ...assumedDistributions(),
    temperature: either(input.temperature), bite: positive(input.dieWidth), blowEnergy: positive(input.blowEnergy), ramMass: positive(input.ramMass), anvilRatio: positive(input.anvilRatio),
    restitution: either(input.restitution), rate: positive(input.rate), lawShare: { kind: 'uniform', from: 0, to: 1 }, lawFactor: { kind: 'lognormal', median: 1, factor: LAW_SCATTER },
  } as const;
  const drawn = ensemble(unknowns, { seed, stream: 'capacity', draws: input.draws ?? DRAWS }, (x) => {
    const efficiency = blowEfficiency(x.anvilRatio, Math.min(0.95, Math.max(0, x.restitution)));
    const blow = bent(x.blowEnergy, input.blowEnergy);
    const energy = blow * efficiency;
    const stressAt = betweenLaws(input.bar.carbon, x.lawShare, x.lawFactor);
    const stroke: Stroke = { section: sectionOf(input.bar), bite: x.bite, temperature: x.temperature, speed: Math.sqrt((2 * blow) / x.ramMass), friction: x.friction, held: x.held };
    const hot = strike(stroke, energy, stressAt);
    const last = strike({ ...stroke, temperature: finish }, energy, stressAt);
    const heat: Heat = { ...x, bar: input.bar, from: x.temperature, to: finish, energy };
    const parts = heatParts(heat);
    const time = heatTime(heat);
    const bar = largestBar(stroke, energy, leastReduction, stressAt);
    return {
      efficiency, blow, energy, ...forcesOf(stroke, hot, energy),
      hot: hot.state === 'known' ? hot.share : Number.NaN, last: last.state === 'known' ? last.share : Number.NaN, length: hot.state === 'known' ? hot.reduction : Number.NaN,
      byAir: parts.byAir / x.rate, byDies: parts.byDies / x.rate, byWork: parts.byWork / x.rate, all: (parts.byAir + parts.byDies - parts.byWork) / x.rate,
      time, blows: blowsOfHeat(heat, time), bar: bar.state === 'known' ? bar.size : Number.NaN,
    };
  });
  const best = bestStroke(input);
  const nominal = betweenLaws(input.bar.carbon, 0.5);
  const hot = reasonOf(strike(best.stroke, best.energy, nominal));
  const last = reasonOf(strike({ ...best.stroke, temperature: finish }, best.energy, nominal));
  const bar = reasonOf(largestBar(best.stroke, best.energy, leastReduction, nominal));
  const kept = 'the blows put as much heat into the bar as it loses: it does not cool to the stop while they go on';
  return {
    state: 'known',
    byLaw: stressLaws(input.bar.carbon).map((law) => ({
      law: law.name, source: law.source, standing: law.standing, blow: strike(best.stroke, best.energy, law.at), largestBar: largestBar(best.stroke, best.energy, leastReduction, law.at),
    })),
    efficiency: drawn.of('efficiency', ''), efficiencyPublished: BLOW_EFFICIENCY, energyIntoWork: partOfStated(drawn.of('energy', ''), drawn.of('blow', ''), input.blowEnergy),
    reductionHot: drawn.of('hot', hot), reductionAtFinish: drawn.of('last', last), reductionLength: drawn.of('length', hot),
    force: { upset: drawn.of('upset', hot), drawing: drawn.of('drawing', hot), byWay: drawn.of('byWay', hot) },
    coolingBetweenBlows: { byAir: drawn.of('byAir', ''), byDies: drawn.of('byDies', ''), byWork: drawn.of('byWork', ''), all: drawn.of('all', '') },
    heatTime: drawn.of('time', kept), blowsPerHeat: drawn.of('blows', kept), largestBar: drawn.of('bar', bar), leastReduction,
    chanceThatItMoves: drawn.chance('hot', (share) => share >= leastReduction),
    notes: notesOf(input), assumed: Object.values(ASSUMPTIONS),
  };
}

function forcesOf(stroke: Stroke, hot: Struck, energy: number): Record<'upset' | 'drawing' | 'byWay', number> {
  if (hot.state !== 'known') return { upset: Number.NaN, drawing: Number.NaN, byWay: Number.NaN };
  const { section, bite, friction } = stroke;
  const height = section.height * (1 - hot.share);
  const area = (section.height * section.width * bite) / height;
  return {
    upset: forceByMeanPressure({ flowStress: hot.stress, radius: Math.sqrt(area / Math.PI), height, friction }),
    // It flows the shorter way under the dies and is held along the longer.
    drawing: stripForce({ flowStress: hot.stress, width: Math.min(bite, section.width), length: Math.max(bite, section.width), height, friction }),
    byWay: peakForce(energy, hot.reduction),
  };
}

/** The blow at the best estimates, for what one law says and for reasons. */
function bestStroke(input: CapacityInput): { readonly stroke: Stroke; readonly energy: number } {
  const speed = Math.sqrt((2 * input.blowEnergy.value) / input.ramMass.value);
  return {
    stroke: { section: sectionOf(input.bar), bite: input.dieWidth.value, temperature: input.temperature.value, speed, friction: ASSUMPTIONS.friction.likely, held: ASSUMPTIONS.held.likely },
    energy: input.blowEnergy.value * blowEfficiency(input.anvilRatio.value, input.restitution.value),
  };
}

const reasonOf = (answer: { readonly state: string; readonly because?: string }): string => answer.because ?? 'most of what is possible within the doubt lies outside what the laws were fitted to';

function notesOf(input: CapacityInput): readonly string[] {
  const { height, width } = sectionOf(input.bar);
  const biot = biotNumber(radiationCoefficient(input.temperature.value, SHOP_TEMPERATURE, ASSUMPTIONS.emissivity.likely) + ASSUMPTIONS.film.likely, coolingThickness(input.bar), CONDUCTIVITY);
  return [
    ...(height > input.dieWidth.value ? ['The bar is thicker than the dies are wide: they dent its surface and its middle holds. The extra work is counted; the piping at its ends is not.'] : []),
    ...(height < width / 6 ? ['Thin and wide: friction and cold dies count for more than is reckoned here.'] : []),
    ...(biot > 0.1 ? ['So thick that its skin cools well before its core: the skin stops moving sooner and the core stays soft longer than one temperature says.'] : []),
    ...(input.bar.section === 'round' ? ['A round bar is reckoned as the square of the same section.'] : []),
    ...(input.temperature.value > forgingRange(input.bar.carbon).hottest ? ['Hotter than this steel is usually taken: it may burn.'] : []),
  ];
}

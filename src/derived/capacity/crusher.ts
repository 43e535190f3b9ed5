import { CRUSHER_FRICTION, CRUSHER_METALS, CRUSHER_REBOUND, CRUSHER_SLENDER, CRUSHER_STRAIN, type CrusherMetal } from '../../knowledge/index.ts';
import type { Estimate } from '../../methods/chance/index.ts';
import { coldUpsetWork } from '../../methods/forming/index.ts';
import { blowEfficiency } from '../../methods/ground/index.ts';
import { firstKnown, type Ledger } from '../ledger.ts';
import type { Outcome } from '../value.ts';
import { doubtRow, outsideProblems, type InputProblem } from './capacity-input.ts';
import { ensemble, positive, type Ranged } from './ensemble.ts';
import { estimatesOf, putRanged } from './value-by-chance.ts';

/** A round of soft metal stood on end and struck cold. SI. */
export interface Crusher {
  readonly metal: CrusherMetal;
  readonly diameter: Estimate;
  readonly height: Estimate;
  readonly after: Estimate;
  /** full blows, whole, from 1 */
  readonly blows: number;
  readonly anvilRatio: Estimate;
}

export type CrusherAnswer = { readonly state: 'known'; readonly energyIntoWork: Ranged; readonly blowEnergy: Ranged } | { readonly state: 'refused'; readonly problems: readonly InputProblem[] };

/** Everything wrong with a crusher. */
export function crusherProblems({ diameter, height, after, blows, anvilRatio }: Crusher): readonly InputProblem[] {
  return [
    ...outsideProblems([
      ['diameter', diameter.value, 0.003, 0.15, 'm'], ['height', height.value, 0.003, CRUSHER_SLENDER * diameter.value, 'm'], ['after', after.value, height.value * Math.exp(-CRUSHER_STRAIN), height.value * 0.995, 'm'],
      ['blows', blows, 1, 20, ''], ['anvilRatio', anvilRatio.value, 0.5, 1000, ''],
      doubtRow('diameter', diameter), doubtRow('height', height), doubtRow('after', after), doubtRow('anvilRatio', anvilRatio),
    ]),
    ...(Number.isInteger(blows) ? [] : [{ field: 'blows', sentence: `blows are counted; a whole number from 1 to 20 is allowed: ${blows}` }]),
  ];
}

/**
 * Reads a crusher back as the energy of a full blow, with 95 % intervals: strength of the metal, its stiffening at speed, friction and rebound
 * each play within their range.
 * @param seed whole number @param draws at least 100
 */
export function crusherEnergy(one: Crusher, seed: number, draws = 400): CrusherAnswer {
  const problems = crusherProblems(one);
  if (problems.length > 0) return { state: 'refused', problems };
  const { metal } = one;
  const drawn = ensemble({
    diameter: positive(one.diameter), height: positive(one.height), after: positive(one.after), anvilRatio: positive(one.anvilRatio),
    strength: { kind: 'lognormal', median: metal.strength, factor: metal.scatter }, speed: { kind: 'triangular', ...metal.speed }, friction: { kind: 'triangular', ...CRUSHER_FRICTION }, rebound: { kind: 'triangular', ...CRUSHER_REBOUND },
  }, { seed, stream: `crusher-${metal.id}`, draws }, (x) => {
    const energy = coldUpsetWork({ diameter: x.diameter, height: x.height, strength: x.strength * x.speed, hardening: metal.hardening, friction: x.friction }, Math.min(x.after, x.height)) / one.blows;
    return { energy, blow: energy / blowEfficiency(x.anvilRatio, x.rebound) };
  });
  const because = 'the heights read leave no squeeze';
  return { state: 'known', energyIntoWork: drawn.of('energy', because), blowEnergy: drawn.of('blow', because) };
}

const DIAMETER = 'running.crusher-diameter';
const HEIGHT = 'running.crusher-height';
const ANVIL = 'capacity.anvil-ratio|class.anvil-ratio';
/** An inch across where nobody wrote it down, with the doubt of a bar as sold. */
const USUAL_DIAMETER: Estimate = { value: 0.0254, uncertainty: 0.0003 };

/** Enters what each crusher that was struck says of the blow. After `workOutBlow`. */
export function workOutCrushers(ledger: Ledger, seed: number, draws: number): void {
  for (const metal of CRUSHER_METALS) {
    const recipe = {
      key: `capacity.${metal.id}-crusher-energy`, title: `energy of a full blow, read back from a crusher of ${metal.title}`, dimension: 'energy', sources: ['cold-flow-stress', 'rigid-body-mechanics'], inputs: [metal.place, HEIGHT, ANVIL],
      formula: 'volume x K strain^(n + 1) / (n + 1), with friction, x stiffening at speed / blows / share that goes into the work', words: `Flow of ${metal.title}: ${metal.standing}.`,
    } as const;
    putRanged(ledger, recipe, outcomeOf(ledger, metal, seed, draws));
  }
}

function outcomeOf(ledger: Ledger, metal: CrusherMetal, seed: number, draws: number): Ranged | Exclude<Outcome, { state: 'known' }> {
  const estimates = estimatesOf(ledger, { after: metal.place, height: HEIGHT, anvilRatio: ANVIL });
  if (!estimates.ok) return estimates.outcome;
  const known = (key: string): Estimate | undefined => {
    const outcome = firstKnown(ledger, key).value?.outcome;
    return outcome?.state === 'known' ? outcome.quantity : undefined;
  };
  const answer = crusherEnergy({ metal, ...estimates.of, diameter: known(DIAMETER) ?? USUAL_DIAMETER, blows: Math.round(known('running.crusher-blows')?.value ?? 1) }, seed, draws);
  return answer.state === 'known' ? answer.blowEnergy : { state: 'outside-validity', because: answer.problems.map((problem) => problem.sentence).join('; ') };
}

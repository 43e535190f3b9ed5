/** A best estimate with its standard uncertainty, both in the unit of the quantity. */
export interface Estimate {
  readonly value: number;
  /** not negative */
  readonly uncertainty: number;
}

/** A result with its standard uncertainty, and what each input gave to it. */
export interface Propagated extends Estimate {
  /** Change of the result for one standard uncertainty of each input, with its sign, in the unit of the result. */
  readonly contributions: readonly number[];
}

/**
 * Carries uncertainty through a formula by the law of propagation, first order (JCGM 100:2008, 5.1.2, and 5.2.2 with correlation).
 *
 * Sensitivities are taken over one standard uncertainty to each side (ibid. 5.1.3, note 2). Where the formula gives no
 * finite figure on one side, the other side alone is used; where it gives none on either, the contribution and the
 * uncertainty are Infinity: not bounded. For a formula that bends much within the doubt use `monteCarlo`.
 *
 * @param formula finite at the best estimates; must not keep or change the list it is given
 * @param inputs best estimates with standard uncertainties, which must not be negative
 * @param correlations correlation coefficients, square and symmetric with ones on the diagonal; independent where left out
 */
export function propagate(formula: (inputs: number[]) => number, inputs: readonly Estimate[], correlations?: readonly (readonly number[])[]): Propagated {
  const best = inputs.map((input) => input.value);
  const value = formula([...best]);
  const moved = (index: number, by: number): number => {
    const point = [...best];
    point[index]! += by;
    return formula(point);
  };
  const contributions = inputs.map(({ uncertainty }, index) => {
    if (!(uncertainty >= 0)) throw new Error(`A standard uncertainty must not be negative: input ${index} has ${uncertainty}`);
    if (uncertainty === 0) return 0;
    const above = moved(index, uncertainty);
    const below = moved(index, -uncertainty);
    if (Number.isFinite(above) && Number.isFinite(below)) return (above - below) / 2;
    if (Number.isFinite(above)) return above - value;
    if (Number.isFinite(below)) return value - below;
    return Number.POSITIVE_INFINITY;
  });
  if (contributions.some((one) => !Number.isFinite(one))) return { value, uncertainty: Number.POSITIVE_INFINITY, contributions };
  return { value, uncertainty: Math.sqrt(Math.max(0, variance(contributions, correlations))), contributions };
}

function variance(contributions: readonly number[], correlations: readonly (readonly number[])[] | undefined): number {
  if (correlations === undefined) return contributions.reduce((sum, one) => sum + one * one, 0);
  let sum = 0;
  for (let i = 0; i < contributions.length; i++) {
    for (let j = 0; j < contributions.length; j++) {
      const r = correlations[i]?.[j];
      if (r === undefined || !(r >= -1 && r <= 1) || r !== correlations[j]?.[i] || (i === j && r !== 1)) {
        throw new Error(`Correlations must be symmetric, from -1 to 1, with ones on the diagonal: row ${i}, column ${j} is ${r}`);
      }
      sum += contributions[i]! * contributions[j]! * r;
    }
  }
  return sum;
}

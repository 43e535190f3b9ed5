import { ASSUMPTIONS, type AssumptionName } from '../../knowledge/index.ts';
import type { Distribution } from '../../methods/chance/index.ts';

export { ASSUMPTIONS, HOT_DENSITY, LAW_SCATTER, LEAST_REDUCTION, SHOP_TEMPERATURE, WORK_INTO_HEAT, type Assumption, type AssumptionName } from '../../knowledge/index.ts';

/** The assumptions as distributions, triangles on their ranges. */
export const assumedDistributions = (): Record<AssumptionName, Distribution> =>
  Object.fromEntries(Object.values(ASSUMPTIONS).map((one) => [one.id, { kind: 'triangular', least: one.least, likely: one.likely, most: one.most }])) as Record<AssumptionName, Distribution>;

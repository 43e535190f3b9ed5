/** Ground under a block, as a table sorts it. */
export interface Soil {
  readonly id: SoilId;
  readonly words: string;
  /** Pa that it may carry at rest */
  readonly bearing: readonly [least: number, most: number];
  /** N/m³: pressure for each metre of settling under quick loads, for a base of 10 m² */
  readonly compression: readonly [least: number, most: number];
}

export type SoilId = 'weak' | 'medium' | 'strong' | 'rock';

export const SOIL_SOURCE = 'D. D. Barkan, Dynamics of Bases and Foundations, coefficient of elastic uniform compression by soil category, from memory';

/** Four categories by what the soil carries at rest. */
export const SOILS: readonly Soil[] = [
  { id: 'weak', words: 'weak: soft clay, silt, loose fine sand, made ground', bearing: [50e3, 150e3], compression: [15e6, 30e6] },
  { id: 'medium', words: 'medium: stiff clay, medium sand', bearing: [150e3, 350e3], compression: [30e6, 50e6] },
  { id: 'strong', words: 'strong: hard clay, gravel, dense sand', bearing: [350e3, 500e3], compression: [50e6, 100e6] },
  { id: 'rock', words: 'rock', bearing: [500e3, 2e6], compression: [100e6, 300e6] },
];

const TABLE_AREA = 10;
/** Below this the rule of the root has no support; a small base is taken as this large. */
const LEAST_AREA = 0.2;

/**
 * Stiffness of the ground under a base, N/m: coefficient x area, the coefficient growing as the root of 10 m² over the area.
 * @param coefficient N/m³ for 10 m², positive @param area m², positive
 */
export const groundStiffness = (coefficient: number, area: number): number => coefficient * Math.sqrt(Math.max(1, TABLE_AREA / Math.max(area, LEAST_AREA))) * area;

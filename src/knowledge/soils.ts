/** Ground under a block, as a table sorts it. */
export interface Soil {
  readonly id: SoilId;
  readonly words: string;
  /** Pa that it may carry at rest */
  readonly bearing: readonly [least: number, most: number];
  /** N/m³: pressure for each metre of settling under quick loads, for a base of 10 m² */
  readonly compression: readonly [least: number, most: number];
  readonly source: string;
}

export type SoilId = 'weak' | 'medium' | 'strong' | 'rock';

/** Four categories by what the soil carries at rest. */
export const SOILS: readonly Soil[] = [
  { id: 'weak', words: 'weak: soft clay, silt, loose fine sand, made ground', bearing: [50e3, 150e3], compression: [15e6, 30e6], source: 'barkan-soils' },
  { id: 'medium', words: 'medium: stiff clay, medium sand', bearing: [150e3, 350e3], compression: [30e6, 50e6], source: 'barkan-soils' },
  { id: 'strong', words: 'strong: hard clay, gravel, dense sand', bearing: [350e3, 500e3], compression: [50e6, 100e6], source: 'barkan-soils' },
  { id: 'rock', words: 'rock', bearing: [500e3, 2e6], compression: [100e6, 300e6], source: 'barkan-soils' },
];

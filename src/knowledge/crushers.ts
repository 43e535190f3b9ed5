/** A soft metal that a blow is read from cold. */
export interface CrusherMetal {
  readonly id: 'copper' | 'lead';
  readonly title: string;
  /** Place of the height after. */
  readonly place: string;
  /** Pa: K of the flow stress K εⁿ, slowly pressed, and n. */
  readonly strength: number;
  readonly hardening: number;
  /** Factor within which two thirds of such metals lie. */
  readonly scatter: number;
  /** How much stronger it is at the speed of a blow than pressed slowly. */
  readonly speed: { readonly least: number; readonly likely: number; readonly most: number };
  readonly standing: string;
}

/**
 * Copper by a handbook's constants for slow pressing; at a hundred or so a second it is some 5 to 40 % stronger. Lead flows at shop heat as
 * steel does hot: its strength is a guess at the speed of a blow already, with a wide doubt.
 */
export const CRUSHER_METALS: readonly CrusherMetal[] = [
  { id: 'copper', title: 'annealed copper', place: 'running.copper-crusher', strength: 315e6, hardening: 0.54, scatter: 1.1, speed: { least: 1.05, likely: 1.15, most: 1.4 }, standing: 'K 315 MPa, n 0.54, from memory' },
  { id: 'lead', title: 'soft lead', place: 'running.lead-crusher', strength: 25e6, hardening: 0, scatter: 1.6, speed: { least: 0.9, likely: 1, most: 1.2 }, standing: 'a guess from memory, 15 to 40 MPa at the speed of a blow' },
];

/** Friction of clean metal on a dry steel die, cold (from memory). */
export const CRUSHER_FRICTION = { least: 0.05, likely: 0.12, most: 0.25 } as const;
/** Rebound over impact speed on cold soft metal (from memory). */
export const CRUSHER_REBOUND = { least: 0.1, likely: 0.25, most: 0.45 } as const;
/** True strain to which such constants are read. */
export const CRUSHER_STRAIN = 1;
/** Height over diameter above which a round bends instead of being upset (common practice, no source). */
export const CRUSHER_SLENDER = 2.5;

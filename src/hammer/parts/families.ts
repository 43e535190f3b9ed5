import { LINKAGE_FAMILIES, type LinkageFamily } from '../vocabulary.ts';

/** Every linkage family that the program knows. */
export const EVERY: readonly LinkageFamily[] = LINKAGE_FAMILIES;
/** Coil spring between two toggle arms. */
export const COIL: readonly LinkageFamily[] = ['coil-and-toggle'];
/** Bow or leaf spring above the ram. */
export const BOW: readonly LinkageFamily[] = ['bow-spring'];
/** Pivoted beam with a cushion. */
export const HELVE: readonly LinkageFamily[] = ['helve'];
/** Families whose ram slides in a guide. */
export const GUIDED: readonly LinkageFamily[] = ['coil-and-toggle', 'bow-spring'];
/** Families with a rod and crank of adjustable length that carry the spring. */
export const SPRUNG: readonly LinkageFamily[] = ['coil-and-toggle', 'bow-spring'];

/** Four corners of a die face or foot. */
export const CORNERS: readonly string[] = ['front-left', 'front-right', 'rear-left', 'rear-right'];
/** The two main bearings: `front` is the crank end. */
export const ENDS: readonly string[] = ['front', 'rear'];

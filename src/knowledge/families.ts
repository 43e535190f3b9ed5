import { LINKAGE_FAMILIES, type LinkageFamily } from '../hammer/index.ts';

/** Which linkage families a criterion or job is for. */
export const EVERY: readonly LinkageFamily[] = LINKAGE_FAMILIES;
export const COIL: readonly LinkageFamily[] = ['coil-and-toggle'];
export const BOW: readonly LinkageFamily[] = ['bow-spring'];
export const HELVE: readonly LinkageFamily[] = ['helve'];
export const GUIDED: readonly LinkageFamily[] = ['coil-and-toggle', 'bow-spring'];

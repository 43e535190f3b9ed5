import { blockLimits } from '../../methods/ground/index.ts';
import { sizeOfBolt } from './bolts.ts';
import type { GroundInput } from './ground-input.ts';

/** A figure of this hammer against one rule, with where the rule comes from. */
export interface AgainstRule {
  readonly id: string;
  readonly rule: string;
  readonly have: number;
  readonly want: number;
  readonly dimension: 'ratio' | 'length';
  readonly meets: boolean;
  readonly source: string;
}

/** m: soft joint round a block, half an inch (read on a public page; practice, not law) */
const EDGE_GAP = 0.0127;
/** m: 12 in, the thinner end of what is laid for small hammers (read on public pages) */
const SMALL_BLOCK = 0.3048;
/** m, tape and rule */
const HAIR = 0.0005;

/**
 * The foundation against what codes and owners ask. Codes are written for industrial hammers; a shop's block need not meet them, and a
 * block that misses every rule may still have served for decades.
 * @param blockMass kg
 */
export function againstRules(input: GroundInput, blockMass: number | undefined): readonly AgainstRule[] {
  const limits = blockLimits(input.ramMass.value);
  const rows: AgainstRule[] = [];
  const put = (id: string, rule: string, have: number, want: number, dimension: AgainstRule['dimension'], source: string): void => void rows.push({ id, rule, have, want, dimension, meets: have >= want - (dimension === 'length' ? HAIR : 0), source });
  if (blockMass !== undefined && input.kind !== 'timber') {
    const ratio = blockMass / input.anvilMass.value;
    put('block-over-anvil-code', 'block at least three times the anvil', ratio, limits.blockOverAnvil, 'ratio', limits.source);
    put('block-over-anvil-handbook', 'block three to five times the anvil, or more', ratio, 3, 'ratio', 'Barkan, and Prakash and Puri, from memory');
  }
  if (input.thickness !== undefined && (input.kind === 'own-block' || input.kind === 'slab')) {
    put('thickness-practice', 'twelve to eighteen inches under a small hammer', input.thickness, SMALL_BLOCK, 'length', 'read on public pages; practice, not law');
    put('thickness-code', 'thickness that a code asks of industrial hammers', input.thickness, limits.thickness, 'length', limits.source);
  }
  if (input.edgeGap !== undefined && input.kind === 'own-block') put('edge-gap', 'half an inch of soft joint between block and floor', input.edgeGap, EDGE_GAP, 'length', 'read on a public page; practice, not law');
  if (input.boltDiameter !== undefined) put('bolts', 'hold-down bolts of the size usual for the class', input.boltDiameter, sizeOfBolt(input.ramMass.value), 'length', 'common practice, no source; 5/8 in read on a public page');
  return rows;
}

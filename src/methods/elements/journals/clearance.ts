import { demandPositive } from '../../numerics/index.ts';
import { INCH } from '../source-units.ts';

/** A published rule for the clearance of a babbitted bearing on the diameter: base + share × diameter. */
export interface ClearanceRule {
  readonly id: string;
  readonly words: string;
  /** Least when set, and most when set; as a constant, m, and a share of the shaft diameter. */
  readonly least: { readonly base: number; readonly share: number };
  readonly most: { readonly base: number; readonly share: number };
  /** Most in service as a share of the diameter, where the rule gives one. */
  readonly mostInService?: number;
  readonly source: string;
}

const thou = (thousandths: number): number => (thousandths * INCH) / 1000;
const SHEET = 'industry summary sheet of babbitt bearing clearances, vi.scribd.com/document/359468220';

/** Rules that do not agree; which one is used belongs on the sheet. */
export const CLEARANCE_RULES: readonly ClearanceRule[] = [
  { id: 'general', words: '0.0015 to 0.002 in for each inch of shaft', least: { base: 0, share: 0.0015 }, most: { base: 0, share: 0.002 }, mostInService: 0.004, source: SHEET },
  { id: 'slow-long', words: '0.002 in for each inch, up to 600 turns a minute, long bearings', least: { base: 0, share: 0.002 }, most: { base: 0, share: 0.002 }, mostInService: 0.004, source: SHEET },
  { id: 'motor-shop', words: '0.003 in and 0.001 for each inch, to 0.005 in and 0.001 for each inch', least: { base: thou(3), share: 0.001 }, most: { base: thou(5), share: 0.001 }, source: SHEET },
  { id: 'workshop', words: '0.001 in for each inch at least, with 0.0005 in more', least: { base: 0, share: 0.001 }, most: { base: thou(0.5), share: 0.001 }, source: 'workshop rule, forum.hetclub.org/discussion/172786' },
];

/** Clearances on the diameter that a rule gives for a shaft, m. Shaft diameter in m, > 0. */
export const clearanceByRule = (rule: ClearanceRule, shaftDiameter: number): { readonly least: number; readonly most: number } => {
  demandPositive('shaft diameter', shaftDiameter);
  return { least: rule.least.base + rule.least.share * shaftDiameter, most: rule.most.base + rule.most.share * shaftDiameter };
};

/** Clearance on the diameter, m: bore less shaft; below 0 where the shaft is larger. */
export const clearanceBySubtraction = (bore: number, shaftDiameter: number): number => demandPositive('bore', bore) - demandPositive('shaft diameter', shaftDiameter);

/** Clearance on the diameter for each unit of shaft diameter, no unit: in thousandths it is thousandths of an inch for each inch. */
export const clearanceShare = (clearance: number, shaftDiameter: number): number => clearance / demandPositive('shaft diameter', shaftDiameter);

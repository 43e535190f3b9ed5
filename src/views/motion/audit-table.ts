import type { EnergyAudit } from '../../derived/motion/index.ts';

export interface AuditRow {
  readonly name: keyof EnergyAudit;
  readonly words: string;
  readonly joules: number;
  /** of what the motor gave */
  readonly share: number;
}

const WORDS: readonly (readonly [keyof EnergyAudit, string])[] = [
  ['input', 'given by the motor'], ['blows', 'spent in the blows'], ['clutch', 'heat in the slipping clutch'], ['bearing', 'heat in the bearings'], ['guide', 'heat in the guide'], ['viscous', 'drag of oil and air'],
  ['pins', 'heat in the pins of the linkage'], ['stops', 'spent where linkage or ram meet a stop'], ['ground', 'into the ground under the anvil'], ['stored', 'more in flywheel, spring and height at the end'], ['residual', 'left over: the error of the reckoning'],
];

/** Where the work of a run went; given less everything else is what is left over. */
export const auditTable = (audit: EnergyAudit): readonly AuditRow[] =>
  WORDS.map(([name, words]) => ({ name, words, joules: audit[name], share: audit[name] / Math.max(Math.abs(audit.input), 1e-9) }));

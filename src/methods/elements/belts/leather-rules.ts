import { demandPositive } from '../../numerics/index.ts';
import { FOOT_PER_MINUTE, HORSEPOWER, INCH, KSI } from '../source-units.ts';
import { capstanRatio } from './belt-pull.ts';

export type LeatherRuleId = 'single-1000' | 'single-864' | 'single-800' | 'double-1.7' | 'double-550' | 'double-2';

/** A rule of thumb for oak-tanned leather at half a turn of wrap: the useful pull for each unit of width. */
export interface LeatherRule {
  readonly id: LeatherRuleId;
  readonly words: string;
  /** N/m. */
  readonly pullPerWidth: number;
  readonly source: string;
}

/** Pull for each unit of width of a belt that carries one horsepower for each inch at a speed. */
const atSpeed = (feetPerMinute: number): number => HORSEPOWER / (feetPerMinute * FOOT_PER_MINUTE) / INCH;

const SHEET = 'leather belting, in an encyclopaedia of workshop practice, chestofbooks.com/.../326-Leather-Belting.html';
const CATALOGUE = 'hardware catalogue page 2162, shapleighs.com/page-2162: D N w / 3300 single, / 2100 double, D in inches';

/** Rules that do not agree by a quarter and more; which one is used belongs on the sheet. */
export const LEATHER_RULES: readonly LeatherRule[] = [
  { id: 'single-1000', words: 'single, 1 hp for each inch at 1000 ft/min (33 lb/in)', pullPerWidth: atSpeed(1000), source: SHEET },
  { id: 'single-864', words: 'single, D N w / 3300', pullPerWidth: atSpeed((3300 * Math.PI) / 12), source: CATALOGUE },
  { id: 'single-800', words: 'single, 1 hp for each inch at 800 ft/min', pullPerWidth: atSpeed(800), source: SHEET },
  { id: 'double-1.7', words: 'double, 1.7 times the single of 1000 ft/min', pullPerWidth: 1.7 * atSpeed(1000), source: SHEET },
  { id: 'double-550', words: 'double, D N w / 2100, 1 hp for each inch at 550 ft/min', pullPerWidth: atSpeed((2100 * Math.PI) / 12), source: CATALOGUE },
  { id: 'double-2', words: 'double, twice the single of 1000 ft/min', pullPerWidth: 2 * atSpeed(1000), source: SHEET },
];

/** Working stress of leather by its joint, Pa; the same workshop encyclopaedia, Strength of Leather Belting. */
export const LEATHER_JOINT_STRESS = { laced: 0.3 * KSI, cemented: 0.4 * KSI, metal: 0.25 * KSI } as const;

/** Friction of leather on iron that the wrap correction takes, Khurmi and Gupta's usual 0.25. */
const LEATHER_FRICTION = 0.25;

/** Share of the pull at half a turn that is left at another wrap: (1 - e^(-µ θ))/(1 - e^(-µ π)). Wrap in rad, 0 or above. */
export const wrapShare = (wrap: number, friction = LEATHER_FRICTION): number => (1 - 1 / capstanRatio(friction, wrap)) / (1 - 1 / capstanRatio(demandPositive('friction', friction), Math.PI));

const ruleOf = (id: LeatherRuleId): LeatherRule => {
  const rule = LEATHER_RULES.find((candidate) => candidate.id === id);
  if (rule === undefined) throw new Error(`No leather rule has this id; ${LEATHER_RULES.map((candidate) => candidate.id).join(', ')} are known: ${id}`);
  return rule;
};

/**
 * Power that a leather belt carries by a rule, W.
 * @param width m, > 0
 * @param speed m/s, > 0; the rules are for at most about 25 m/s
 * @param wrap rad; half a turn unless said
 */
export const leatherBeltPower = (width: number, speed: number, wrap = Math.PI, rule: LeatherRuleId = 'single-1000'): number =>
  demandPositive('belt width', width) * demandPositive('belt speed', speed) * ruleOf(rule).pullPerWidth * wrapShare(wrap);

/** Width of leather belt that carries a power by a rule, m. Arguments as in `leatherBeltPower`, power in W. */
export const leatherBeltWidth = (power: number, speed: number, wrap = Math.PI, rule: LeatherRuleId = 'single-1000'): number =>
  demandPositive('power', power) / leatherBeltPower(1, speed, wrap, rule);

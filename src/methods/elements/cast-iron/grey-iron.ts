import { KSI } from '../source-units.ts';

/** Strength of a class of grey iron, typical of separately cast test bars. */
export interface GreyIron {
  /** Class number: least tensile strength in thousands of pounds per square inch, as ASTM A48 names it. */
  readonly ironClass: number;
  /** Pa. */
  readonly tensileStrength: number;
  /** Pa. */
  readonly compressiveStrength: number;
  /** Brinell hardness, 10 mm ball and 3000 kgf. */
  readonly brinell: number;
  /** How the figures are known; the compressive strengths of 20, 30 and 40 were read, the rest is from memory. */
  readonly standing: 'compressive strength read' | 'from memory';
}

/** Shigley, Mechanical Engineering Design, Table A-24. A compressive strength of 33 ksi for class 20, printed in places, is a slip for 83. */
export const GREY_IRON: readonly GreyIron[] = (
  [
    [20, 22, 83, 156, 'compressive strength read'],
    [25, 26, 97, 174, 'from memory'],
    [30, 31, 109, 201, 'compressive strength read'],
    [35, 36.5, 124, 212, 'from memory'],
    [40, 42.5, 140, 235, 'compressive strength read'],
  ] as const
).map(([ironClass, tensile, compressive, brinell, standing]) => ({ ironClass, tensileStrength: tensile * KSI, compressiveStrength: compressive * KSI, brinell, standing }));

/** The class of that number, if the table has it: 20, 25, 30, 35 or 40. */
export const greyIronClass = (ironClass: number): GreyIron | undefined => GREY_IRON.find((iron) => iron.ironClass === ironClass);

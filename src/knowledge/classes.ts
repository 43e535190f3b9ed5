/** What is usual for a nominal ram weight, as the trade says it: numbers in the units of the trade. */
export interface RamClass {
  readonly ramPounds: number;
  readonly bpm: readonly [least: number, most: number];
  readonly motorHorsepower: readonly [least: number, most: number];
  /** Largest square or round bar in steady work, and the one that brochures promise. */
  readonly practicalBarInches: readonly [least: number, most: number];
  readonly brochureBarInches: number;
  /** Mass of the machine, motor included where the range allows. */
  readonly machinePounds: readonly [least: number, most: number];
  readonly source: string;
}

/** Light hammers run faster, heavy ones slower. Between the classes the figures are interpolated. */
export const RAM_CLASSES: readonly RamClass[] = [
  { ramPounds: 25, bpm: [350, 400], motorHorsepower: [1, 1.5], practicalBarInches: [1, 1.5], brochureBarInches: 2, machinePounds: [900, 1100], source: 'common-practice' },
  { ramPounds: 50, bpm: [275, 350], motorHorsepower: [2, 2], practicalBarInches: [1.75, 2.25], brochureBarInches: 3, machinePounds: [1600, 2000], source: 'common-practice' },
  { ramPounds: 100, bpm: [250, 300], motorHorsepower: [3, 5], practicalBarInches: [2.5, 3], brochureBarInches: 4, machinePounds: [2700, 3500], source: 'common-practice' },
  { ramPounds: 250, bpm: [200, 250], motorHorsepower: [5, 7.5], practicalBarInches: [4, 5], brochureBarInches: 6, machinePounds: [6000, 8000], source: 'common-practice' },
  { ramPounds: 500, bpm: [160, 200], motorHorsepower: [10, 10], practicalBarInches: [6, 8], brochureBarInches: 8, machinePounds: [10_000, 14_000], source: 'common-practice' },
];

/** Sizes that metric merchants keep, smaller and larger side apart where a section has two, mm. */
export interface StockSizes {
  readonly thin: readonly number[];
  readonly wide: readonly number[];
}

const every = (from: number, to: number, step: number): readonly number[] => Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, index) => from + index * step);

/** Rounds after EN 10060, nominal sizes from memory. */
const ROUND = [8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 30, 32, 35, 36, 38, 40, 42, 45, 48, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200, 220, 250, 280, 300, 350, 400, 450, 500];
/** Flats after EN 10058, nominal sizes from memory. */
const FLAT_THIN = [3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 50, 60, 80, 100];
const FLAT_WIDE = [10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 180, 200, 250, 300];
/** Plate by what mills roll (EN 10029, from memory), sawn or burnt to any width. */
const PLATE_THIN = [3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];

/** Metric sizes by the form in which a part’s metal, timber or rubber is bought: common practice and standards from memory; a merchant’s list wins. */
export const METRIC_STOCK = {
  source: 'from-memory',
  'round bar': { thin: ROUND, wide: ROUND }, 'flat bar': { thin: FLAT_THIN, wide: FLAT_WIDE }, plate: { thin: PLATE_THIN, wide: every(15, 600, 5) },
  block: { thin: every(10, 500, 5), wide: every(10, 500, 5) },
  timber: { thin: [50, 63, 75, 100, 120, 140, 160, 180, 200, 220, 240, 260, 280, 300], wide: [50, 63, 75, 100, 120, 140, 160, 180, 200, 220, 240, 260, 280, 300] },
  strip: { thin: [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20], wide: [40, 45, 50, 60, 63, 65, 70, 75, 80, 90, 100, 120, 150] },
  belting: { thin: [3, 4, 5, 6, 7, 8, 9, 10, 12, 15], wide: [25, 30, 40, 50, 60, 65, 70, 75, 80, 90, 100, 120, 125, 150, 200] },
  'block of rubber': { thin: [10, 15, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 100, 110, 120, 125, 130, 140, 150], wide: every(10, 600, 5) },
} as const satisfies Readonly<Record<string, StockSizes | string>>;

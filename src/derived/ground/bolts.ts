const POUND = 0.45359237;
const INCH = 0.0254;

/** Usual hold-down bolts: 5/8 in to the 50 lb class, 3/4 in at 100 lb, 1 in at 250 lb (common practice, 5/8 read on a public page). */
const STEPS = [
  { upTo: 65 * POUND, diameter: 0.625 * INCH },
  { upTo: 150 * POUND, diameter: 0.75 * INCH },
  { upTo: 300 * POUND, diameter: INCH },
  { upTo: Number.POSITIVE_INFINITY, diameter: 1.25 * INCH },
] as const;

/** Diameter of hold-down bolt usual for a ram, m. @param ramMass kg, positive */
export const sizeOfBolt = (ramMass: number): number => (STEPS.find((step) => ramMass <= step.upTo * (1 + 1e-9)) ?? STEPS[3]).diameter;

/** What bolts ask for beyond their size. */
export const BOLT_ADVICE = [
  'Nip them again after one hour and after ten: they settle.',
  'Through bolts or bonded anchors; an expanding anchor near an edge splits the concrete.',
  'Loose twice in an hour is the base or the bedding, not the nut.',
] as const;

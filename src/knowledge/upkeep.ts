/** Something done again and again: by running hours, by months, whichever comes first, or at every session. */
export interface UpkeepTask {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly hours?: number;
  readonly months?: number;
  readonly eachSession?: boolean;
  /** Looks that must all be taken again, or jobs of which one must be done again, for it to count as done. */
  readonly doneBy: { readonly looks?: readonly string[]; readonly jobs?: readonly string[] };
  readonly source: string;
}

/** The rhythm of the trade; editable defaults. */
export const UPKEEP_TASKS: readonly UpkeepTask[] = [
  { id: 'keys-and-bolts', title: 'Keys, dies and bolts', words: 'Ram blocked: tap each die and key, try every nut of dies, guide, caps and foot.', eachSession: true, doneBy: { looks: ['keys.secure', 'hold-down-bolts.state'] }, source: 'common-practice' },
  { id: 'oil-round', title: 'Oil round', words: 'Every point of the oiling round, as many drops and as often as it says; never the dovetails, and no belt.', eachSession: true, doneBy: {}, source: 'common-practice' },
  { id: 'look-over', title: 'Look over after 50 hours or half a year', words: 'Keys, bolts, pins, what springs, clutch, oil ways and guards, with the power locked off.', hours: 50, months: 6, doneBy: { looks: ['keys.secure', 'hold-down-bolts.state', 'oil-ways.open', 'spring-bolt.lock'] }, source: 'common-practice' },
  { id: 'dress-dies', title: 'Dress the dies', words: 'Faces flat and edges round again; measure the heights before and after.', months: 6, doneBy: { jobs: ['dies.dress', 'dies.grind-pair', 'dies.new-upper', 'dies.new-lower'] }, source: 'page-dies' },
];

/** Running hours after a repair at which keys and bolts are tried again. */
export const AFTER_REPAIR_HOURS: readonly number[] = [1, 10, 50];

/** Months after which a reading is taken again: the yearly full measuring. */
export const MEASURE_MONTHS = 12;

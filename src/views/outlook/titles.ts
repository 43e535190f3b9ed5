export const OUTLOOK_IDS = ['capacity', 'oiling', 'power', 'ground', 'moving'] as const;
export type OutlookId = (typeof OUTLOOK_IDS)[number];

/** What each sheet is called and whom it is for, in the order in which somebody needs them. */
export const OUTLOOK_TITLES: Readonly<Record<OutlookId, { readonly title: string; readonly words: string }>> = {
  capacity: { title: 'What it forges', words: 'Largest bar, what a blow takes off, blows in a heat, each with its interval. For the smith and the buyer.' },
  oiling: { title: 'Oiling round', words: 'Numbered points on the drawing, what goes where, how much and how often, and what to open first. For whoever starts it.' },
  power: { title: 'Power', words: 'Motor, currents, converter and belt, and what to beware of. To take to the electrician.' },
  ground: { title: 'Ground and neighbours', words: 'What it stands on, how far that moves, what may be felt next door, and a block to talk about. For whoever lays the floor.' },
  moving: { title: 'Moving it', words: 'Weight, centre of gravity, the lean at which it goes over, slings, floor and door. To take to the rigger.' },
};

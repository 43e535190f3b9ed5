import type { Dimension } from '../methods/quantity/index.ts';

/** A figure of practice that a sum needs and that no reading gives: an editable default, with its source and its doubt. */
export interface Practice {
  readonly id: string;
  readonly title: string;
  readonly dimension: Dimension;
  /** Shop text; ± is the half-width of a 95 % interval. */
  readonly text: string;
  readonly source: string;
  readonly note: string;
}

export const PRACTICE: readonly Practice[] = [
  {
    id: 'practice.linkage-margin',
    title: 'clearance to keep between linkage and guide',
    dimension: 'length',
    text: '3/8 in ± 1/64',
    source: 'common-practice',
    note: 'Where the linkage just touches the guide with the dies closed, owners work nothing thinner than about 3/8 in.',
  },
  {
    id: 'practice.stop-hard',
    title: 'stopping distance, die on die cold',
    dimension: 'length',
    text: '0.5 mm ± 0.2',
    source: 'from-memory',
    note: 'Elastic give of dies, seat and frame together; not measured on any hammer here.',
  },
  {
    id: 'practice.stop-hot',
    title: 'stopping distance, hot work',
    dimension: 'length',
    text: '4 mm ± 2',
    source: 'from-memory',
    note: 'Reduction of a hot bar by one full blow on a small hammer.',
  },
  {
    id: 'practice.seat-share',
    title: 'share of the iron\'s compressive strength that repeated blows may use',
    dimension: 'ratio',
    text: '0.2 ± 0.05',
    source: 'from-memory',
    note: 'Kept low because the blows repeat by the hundred thousand and the edges of a die carry more than the mean.',
  },
  {
    id: 'practice.restitution-hot',
    title: 'rebound ratio of speeds on hot steel',
    dimension: 'ratio',
    text: '0.25 ± 0.1',
    source: 'from-memory',
    note: 'Forging about 0.25, stamping about 0.5.',
  },
  {
    id: 'practice.restitution-cold',
    title: 'rebound ratio of speeds, die on die cold',
    dimension: 'ratio',
    text: '0.6 ± 0.1',
    source: 'from-memory',
    note: 'Cold die on die 0.5 to 0.7.',
  },
  {
    id: 'practice.journal-clearance',
    title: 'journal clearance to set, per inch of shaft',
    dimension: 'taper',
    text: '0.0015 ± 0.0005',
    source: 'sleeve-bearing-table',
    note: '0.001 to 0.002 in per inch of shaft when set.',
  },
  {
    id: 'practice.belt-slip',
    title: 'slip of a flat belt in good order',
    dimension: 'ratio',
    text: '0.03 ± 0.01',
    source: 'common-practice',
    note: '2 to 4 % is usual.',
  },
  {
    id: 'practice.whip',
    title: 'impact speed over crank-pin speed of a healthy spring hammer',
    dimension: 'ratio',
    text: '2.25 ± 0.5',
    source: 'own-model',
    note: 'From the program\'s own motion model of healthy spring-and-toggle hammers at set speed (2.2 to 2.3); not compared with a measured hammer.',
  },
];

import type { Dimension } from '../methods/quantity/index.ts';

/** A figure of shop practice that a drawing needs and that no reading gives. */
export interface ShopFigure {
  readonly id: string;
  readonly title: string;
  readonly dimension: Dimension;
  /** Shop text; ± is the half-width of a 95 % interval. */
  readonly text: string;
  readonly source: string;
}

/** Every one of them is practice, not law; a maker's drawing or the old part wins where there is one. */
export const SHOP_FIGURES: readonly ShopFigure[] = [
  { id: 'edge-radius', title: 'radius of the edges of a flat die, 1/16 to 1/8 in', dimension: 'length', text: '3/32 in', source: 'common-practice' },
  { id: 'rim-gap', title: 'room between the shoulder of a die and the rim of its seat', dimension: 'length', text: '1/32 in', source: 'common-practice' },
  { id: 'root-radius', title: 'radius in the root of a dovetail', dimension: 'length', text: '1/16 in', source: 'common-practice' },
  { id: 'key-thickness', title: 'least section of a sturdy key', dimension: 'length', text: '3/8 in', source: 'page-keys' },
  { id: 'key-weak', title: 'section at and below which keys bend', dimension: 'length', text: '5/16 in', source: 'page-keys' },
  { id: 'key-projection', title: 'key left standing out at each end, 1/2 to 1 in', dimension: 'length', text: '3/4 in', source: 'common-practice' },
  { id: 'key-taper', title: 'taper of a key in one foot, 1/8 to 1/4 in', dimension: 'length', text: '1/8 in ± 1/16', source: 'common-practice' },
  { id: 'plate-room', title: 'room left round a filler plate, both sides together', dimension: 'length', text: '1/64 in', source: 'common-practice' },
  { id: 'plate-thin', title: 'thickness below which a plate curls', dimension: 'length', text: '1/8 in', source: 'common-practice' },
  { id: 'pin-clearance-least', title: 'least clearance of a linkage pin', dimension: 'length', text: '0.002 in', source: 'common-practice' },
  { id: 'pin-clearance-most', title: 'most clearance of a new linkage pin', dimension: 'length', text: '0.005 in', source: 'common-practice' },
  { id: 'rod-clearance-least', title: 'least clearance of the rod on the crank pin', dimension: 'length', text: '0.003 in', source: 'common-practice' },
  { id: 'rod-clearance-most', title: 'most clearance of the rod on the crank pin, new', dimension: 'length', text: '0.006 in', source: 'common-practice' },
  { id: 'clutch-play-least', title: 'least play of the clutch pulley on its bush', dimension: 'length', text: '0.010 in', source: 'owners-practice' },
  { id: 'clutch-play-most', title: 'most play of the clutch pulley on its bush, new', dimension: 'length', text: '0.015 in', source: 'owners-practice' },
  { id: 'body-step', title: 'step below which a die body is left as wide as its neck', dimension: 'length', text: '1/16 in', source: 'common-practice' },
  { id: 'bush-wall', title: 'wall of a bronze bush', dimension: 'length', text: '1/8 in', source: 'from-memory' },
  { id: 'guide-play', title: 'play of a ram set well in its guide, 0.005 to 0.010 in', dimension: 'length', text: '0.0075 in ± 0.0025', source: 'common-practice' },
  { id: 'travel-kept', title: 'share of a spring’s travel that is kept before it goes solid, 15 to 20 % at least', dimension: 'ratio', text: '0.2', source: 'derived' },
  { id: 'sawn', title: 'what a sawn length may differ by', dimension: 'length', text: '1/2 in', source: 'common-practice' },
  { id: 'prop-slack', title: 'room over a ram prop when it is set', dimension: 'length', text: '1/4 in', source: 'common-practice' },
  { id: 'belt-stretch', title: 'share by which a leather belt is cut short for its stretch, 1/8 in in a foot', dimension: 'ratio', text: '0.0104 ± 0.005', source: 'from-memory' },
  { id: 'face-beyond-belt', title: 'face of a pulley beyond the width of its belt', dimension: 'length', text: '1/2 in', source: 'from-memory' },
  { id: 'crown-share', title: 'crown of a flat-belt pulley, 1/8 in in a foot of face', dimension: 'ratio', text: '0.0104', source: 'common-practice' },
  { id: 'least-pulley-over-belt', title: 'least pulley over the thickness of its belt', dimension: 'ratio', text: '20', source: 'from-memory' },
  { id: 'timber-beyond-base', title: 'timber beyond the base on each side', dimension: 'length', text: '4 in ± 2', source: 'common-practice' },
  { id: 'timber-width', title: 'width of a sole timber, oak beams of 8 by 9 in under a 50 lb hammer', dimension: 'length', text: '8 in', source: 'page-foundation' },
  { id: 'timber-depth', title: 'depth of a sole timber under a 50 lb hammer', dimension: 'length', text: '9 in', source: 'page-foundation' },
  { id: 'timber-depth-light', title: 'depth of a timber pad under a 25 lb hammer', dimension: 'length', text: '3 in', source: 'page-foundation' },
  { id: 'oak-across', title: 'stress that oak stands across its grain, dry', dimension: 'pressure', text: '5 MPa ± 2', source: 'from-memory' },
];

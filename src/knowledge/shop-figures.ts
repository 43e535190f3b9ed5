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
  { id: 'bush-wall-least', title: 'least wall of a bronze bush that is pressed in', dimension: 'length', text: '1/16 in', source: 'from-memory' },
  { id: 'oil-hole', title: 'oil hole of a bush', dimension: 'length', text: '3/16 in', source: 'common-practice' },
  { id: 'chamfer', title: 'chamfer that leads a pressed part in', dimension: 'length', text: '1/16 in', source: 'common-practice' },
  { id: 'helve-clearance-least', title: 'least clearance of a helve on its pivot', dimension: 'length', text: '0.004 in', source: 'from-memory' },
  { id: 'helve-clearance-most', title: 'most clearance of a helve on its pivot, new', dimension: 'length', text: '0.010 in', source: 'from-memory' },
  { id: 'rod-end-play', title: 'end play of the rod on its crank pin', dimension: 'length', text: '1/32 in', source: 'from-memory' },
  { id: 'collar-thickness', title: 'collar of a crank pin', dimension: 'length', text: '3/8 in', source: 'from-memory' },
  { id: 'washer', title: 'washer behind a split pin', dimension: 'length', text: '1/8 in', source: 'from-memory' },
  { id: 'fillet', title: 'fillet where a pin meets its collar', dimension: 'length', text: '1/16 in', source: 'from-memory' },
  { id: 'pin-ahead-of-plate', title: 'plate proud of the shank, so that the nut pulls on the collar', dimension: 'length', text: '1/32 in', source: 'from-memory' },
  { id: 'washer-under-nut', title: 'thickest washer under a nut, over the thread', dimension: 'ratio', text: '0.19', source: 'from-memory' },
  { id: 'slotted-nut-inch', title: 'greatest height of a slotted hex nut of inch thread, over the thread', dimension: 'ratio', text: '0.89', source: 'from-memory' },
  { id: 'slotted-nut-metric', title: 'greatest height of a slotted nut of metric thread, over the thread', dimension: 'ratio', text: '1.25', source: 'from-memory' },
  { id: 'slot-middle', title: 'split pin from the top of its slotted nut, over the thread', dimension: 'ratio', text: '0.12', source: 'from-memory' },
  { id: 'pitch-unread', title: 'pitch of a coarse thread over its diameter, where nobody read it', dimension: 'ratio', text: '0.125', source: 'from-memory' },
  { id: 'eye-roll', title: 'length rolled into an eye over its mean circumference', dimension: 'ratio', text: '0.9 ± 0.1', source: 'from-memory' },
  { id: 'leaf-stress', title: 'bending that a leaf stands, repeated', dimension: 'pressure', text: '600 MPa', source: 'bhandari-springs' },
  { id: 'key-room', title: 'room over a parallel key in its hub', dimension: 'length', text: '0.005 in', source: 'asme-b17-1' },
  { id: 'rod-bush-wall', title: 'wall of a bush over a pin with a collar: room for a chamfer over its fillet', dimension: 'length', text: '3/16 in', source: 'from-memory' },
  { id: 'clean-up', title: 'least that a reamer or bore takes off a worn hole to clean it up, over pin and play', dimension: 'length', text: '0.010 in', source: 'from-memory' },
  { id: 'bush-chamfer', title: 'chamfer outside a bush that leads it in', dimension: 'length', text: '1/32 in', source: 'common-practice' },
  { id: 'bore-left', title: 'left in the bore of a bush before it is pressed in', dimension: 'length', text: '1/64 in', source: 'common-practice' },
  { id: 'key-left-on', title: 'left on a key at its driving end until it is fitted', dimension: 'length', text: '1 in', source: 'common-practice' },
  { id: 'grind-with-pair', title: 'left on the height of a die whose height as made is hearsay, ground off with its pair', dimension: 'length', text: '1/16 in', source: 'common-practice' },
  { id: 'cushion-plate', title: 'steel plate on a face of a rubber cushion', dimension: 'length', text: '1/4 in', source: 'from-memory' },
  { id: 'strap-plate', title: 'steel plate on a face of a strap of belting, at its hole', dimension: 'length', text: '1/8 in', source: 'from-memory' },
  { id: 'strap-rivet', title: 'rivet or bolt through the plates of a strap of belting', dimension: 'length', text: '1/4 in', source: 'from-memory' },
  { id: 'strap-rivet-in', title: 'rivet of a strap from the edges of its plates', dimension: 'length', text: '1/2 in', source: 'from-memory' },
  { id: 'groove-width', title: 'width of an oil groove', dimension: 'length', text: '1/8 in', source: 'from-memory' },
  { id: 'groove-depth', title: 'greatest depth of an oil groove', dimension: 'length', text: '1/16 in', source: 'from-memory' },
  { id: 'groove-land', title: 'bush left whole at the end of an oil groove', dimension: 'length', text: '1/8 in', source: 'from-memory' },
  { id: 'strap-margin', title: 'strap beyond the middle of its hole, over the hole', dimension: 'ratio', text: '2.5', source: 'from-memory' },
  { id: 'end-float', title: 'end float that a thrust washer is made for, low in 0.010 to 0.030 in: it only grows', dimension: 'length', text: '0.015 in', source: 'page-bearings' },
  { id: 'washer-thin', title: 'thickness below which a bronze washer curls', dimension: 'length', text: '1/16 in', source: 'from-memory' },
  { id: 'countershaft-pulley-least', title: 'least driver on a countershaft over its belt’s thickness', dimension: 'ratio', text: '20', source: 'from-memory' },
];

/** kg/m³ of what parts are made from, for a blank's weight. */
export const STOCK_DENSITIES = { steel: 7850, bronze: 8900, iron: 7200, oak: 750, brass: 8500, rubber: 1200, belting: 1150, source: 'from-memory' } as const;

/** Split pins by the pin that they keep: hole, and least distance from its middle to the end, m. */
export interface SplitPin {
  readonly upTo: number;
  readonly hole: number;
  readonly fromEnd: number;
}

export const SPLIT_PINS: { readonly source: string; readonly rows: readonly SplitPin[] } = {
  source: 'iso-2340',
  rows: [
    { upTo: 0.008, hole: 0.002, fromEnd: 0.0035 }, { upTo: 0.01, hole: 0.0032, fromEnd: 0.0045 }, { upTo: 0.012, hole: 0.0032, fromEnd: 0.0055 }, { upTo: 0.016, hole: 0.004, fromEnd: 0.006 },
    { upTo: 0.018, hole: 0.005, fromEnd: 0.007 }, { upTo: 0.022, hole: 0.005, fromEnd: 0.008 }, { upTo: 0.027, hole: 0.0063, fromEnd: 0.009 }, { upTo: 0.04, hole: 0.008, fromEnd: 0.01 },
    { upTo: 0.05, hole: 0.01, fromEnd: 0.012 }, { upTo: 0.06, hole: 0.01, fromEnd: 0.014 }, { upTo: 0.1, hole: 0.013, fromEnd: 0.018 },
  ],
};

/** Split pins that lock a slotted nut, by its thread, m: holes as in ISO 7035 and in the slots of inch nuts, from memory. */
export const NUT_LOCKS: { readonly source: string; readonly rows: readonly { readonly upTo: number; readonly hole: number }[] } = {
  source: 'from-memory',
  rows: [{ upTo: 0.0127, hole: 0.0032 }, { upTo: 0.0226, hole: 0.004 }, { upTo: 0.0278, hole: 0.005 }, { upTo: 0.0383, hole: 0.0063 }, { upTo: 0.053, hole: 0.008 }, { upTo: 0.1, hole: 0.01 }],
};

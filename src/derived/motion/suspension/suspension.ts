/**
 * What hangs the ram from the carrier: one of three families behind one law.
 *
 * All three are reduced to the force on the ram as a function of one displacement q, in metres: how far the ram stands below the place
 * where the suspension pulls neither way. Positive q pulls the ram up and the carrier down. Each law follows from the
 * energy stored in the spring, F = dU/dq, so that a suspension without friction neither makes nor loses energy.
 */
export type Suspension = CoilToggle | BowStrap | Helve;

/** A coil spring across the upper ends of two bell-crank arms, whose lower ends carry the ram by links. */
export interface CoilToggle {
  readonly kind: 'coil-toggle';
  /** m, arm pivot to link pin, positive */
  readonly lowerLimb: number;
  /** m, arm pivot to spring pin, positive */
  readonly upperLimb: number;
  /** m, link pin to ram pin, positive */
  readonly link: number;
  /** rad, the lower limb's lean toward the ram pin when the link is level; -0.15 to 0.05 is usual */
  readonly armAngle: number;
  /** rad, the bend of the bell crank; -0.1 to 0.25 is usual */
  readonly crankOffset: number;
  /** N/m, positive */
  readonly rate: number;
  /** m, by which the nut shortens the spring when the links are level, reckoned on a spring that has not sagged */
  readonly preCompression: number;
  /** m, free length lost */
  readonly sag: number;
  /** m, free length as made to coils touching */
  readonly travel: number;
  /** N/m, beyond touching coils */
  readonly solidRate: number;
}

/** A bow (leaf) spring held at its crown by the carrier, whose tips carry the ram by straps or links. */
export interface BowStrap {
  readonly kind: 'bow-strap';
  /** N/m at one tip, along the tip's path, positive */
  readonly tipRate: number;
  /** m, how far each tip is already drawn in by the straps when they are level */
  readonly tipDraw: number;
  /** m, tip to ram pin, positive */
  readonly strap: number;
  /** rad, how far the tip's path leans downward from level as it is drawn in; -0.6 to 0.6 */
  readonly pathAngle: number;
  /** m, further draw at which the leaves touch the crown or the clip */
  readonly tipTravel: number;
  /** N/m beyond that */
  readonly solidRate: number;
}

/** A pivoted beam with the head at one end, driven through cushions above and below it. */
export interface Helve {
  readonly kind: 'helve';
  /** m, beam pivot to the middle of the head, positive */
  readonly headRadius: number;
  /** m, beam pivot to the cushions, positive */
  readonly cushionRadius: number;
  /** m, beam pivot to the rod pin of the driving frame, positive */
  readonly rodRadius: number;
  /** kg m2, of the beam about the pivot, without head and die */
  readonly beamInertia: number;
  /** N m, moment of the beam's own weight about the pivot, positive where it helps the head down */
  readonly beamMoment: number;
  /** N/m, of one cushion when first squeezed */
  readonly cushionRate: number;
  /** 1/m2, hardening: force = rate x (1 + hardening x^2) x; 0 for a straight spring */
  readonly hardening: number;
  /** m, squeeze of each cushion with the beam at its middle */
  readonly squeeze: number;
  /** m, squeeze at which a cushion is solid */
  readonly solidSqueeze: number;
  /** N/m of one cushion beyond that */
  readonly solidRate: number;
}

/** What a suspension shows at one displacement, for drawing and reporting. */
export interface SuspensionDetail {
  /** N on the ram, up positive, without friction */
  readonly force: number;
  /** J stored beyond what it holds at q = 0 */
  readonly energy: number;
  /** N in the spring (both sides of a coil, one tip, the harder cushion) */
  readonly springForce: number;
  /** m left before the spring is solid; negative where it is already beyond */
  readonly travelLeft: number;
  /** N in one link or strap, 0 for a helve */
  readonly linkForce: number;
}

/** Where in the numbers of a hammer the suspension's own begin. */
export const SUSPENSION_AT = 40;

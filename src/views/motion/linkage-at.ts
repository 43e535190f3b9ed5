import { sineCosine } from '../../methods/numerics/index.ts';
import type { MotionSpec, MotionTrace } from '../../derived/motion/index.ts';
import type { MovingLengths } from './moving-lengths.ts';

/** m, across and up; across from the middle of the dies, up from the face of the lower die. */
export type Place = readonly [x: number, z: number];

interface EveryPose {
  /** m, face of the upper die over that of the lower */
  readonly gap: number;
  /** m the ram hangs below link level */
  readonly hang: number;
  /** rad from top dead centre */
  readonly angle: number;
  readonly crankCentre: Place;
  readonly crankPin: Place;
  /** lower end of the rod, where it takes hold of what carries the ram (the tail of a helve's driving frame) */
  readonly rodEnd: Place;
}

export interface TogglePose extends EveryPose {
  readonly kind: 'coil-toggle';
  /** right side; the left is its mirror image */
  readonly armPivot: Place;
  readonly armLower: Place;
  readonly armUpper: Place;
  readonly ramPin: Place;
  /** m */
  readonly springLength: number;
}

export interface BowPose extends EveryPose {
  readonly kind: 'bow-strap';
  /** right side */
  readonly tip: Place;
  readonly ramPin: Place;
  readonly crown: Place;
}

export interface HelvePose extends EveryPose {
  readonly kind: 'helve';
  readonly pivot: Place;
  /** rad, head up positive */
  readonly beam: number;
  readonly frame: number;
}

/** Where everything that moves stands at one instant. */
export type LinkagePose = TogglePose | BowPose | HelvePose;

/** Height of the ram's pins over its own lower edge, and half the distance between them, m. */
export const ramPinOver = (lengths: MovingLengths): number => lengths.ramHeight + lengths.ramWidth * 0.08;
export const ramPinHalf = (spec: MotionSpec, lengths: MovingLengths): number => (spec.suspension.kind === 'bow-strap' ? Math.max(lengths.ramWidth * 0.24, lengths.bowHalfSpan - spec.suspension.strap) : lengths.ramWidth * 0.22);

/**
 * The linkage at one sample of a trace, to scale from the simulator's own lengths.
 * @param sample 0 to the number of samples less one; beyond is held to that
 */
export function linkageAt(spec: MotionSpec, lengths: MovingLengths, trace: MotionTrace, sample: number): LinkagePose {
  const i = Math.max(0, Math.min(trace.time.length - 1, Math.round(sample)));
  return poseOf(spec, lengths, trace.gap[i] ?? 0, trace.hang[i] ?? 0, trace.angle[i] ?? 0);
}

/** The same from gap, hang and crank angle. */
export function poseOf(spec: MotionSpec, lengths: MovingLengths, gap: number, hang: number, angle: number): LinkagePose {
  const circle = new Float64Array(2);
  sineCosine(angle, circle);
  const across = spec.throw * circle[0]!;
  const up = spec.throw * circle[1]!;
  const reach = Math.sqrt(spec.rodLength ** 2 - across ** 2);
  const every = { gap, hang, angle };
  const s = spec.suspension;
  if (s.kind === 'helve') return helvePose(spec, lengths, every, [across, up, reach]);
  const pinZ = gap + lengths.upperDie + ramPinOver(lengths);
  const half = ramPinHalf(spec, lengths);
  const carried = (carrierZ: number): Pick<EveryPose, 'crankCentre' | 'crankPin' | 'rodEnd'> => ({ rodEnd: [0, carrierZ], crankCentre: [0, carrierZ + reach - up], crankPin: [across, carrierZ + reach] });
  if (s.kind === 'bow-strap') {
    const drawn = tipDraw(s.strap, s.pathAngle, hang);
    const crown: Place = [0, pinZ + hang + lengths.bowRise];
    return { kind: s.kind, ...every, ramPin: [half, pinZ], tip: [half + s.strap - drawn[0], pinZ + hang - drawn[1]], crown, ...carried(crown[1] + lengths.leaf * 4.5) };
  }
  const lean = new Float64Array(2);
  sineCosine(s.armAngle, lean);
  const distance = s.link + s.lowerLimb * lean[0]!;
  const down = s.lowerLimb * lean[1]! + hang;
  const square = distance ** 2 + down ** 2;
  const share = (square + s.lowerLimb ** 2 - s.link ** 2) / (2 * square);
  const off = Math.sqrt(Math.max(0, s.lowerLimb ** 2 / square - share ** 2));
  const inward = share * distance - off * down;
  const below = share * down + off * distance;
  const pivot: Place = [half + distance, pinZ + down];
  const bend = new Float64Array(2);
  sineCosine(s.crankOffset, bend);
  const sin = inward / s.lowerLimb;
  const cos = below / s.lowerLimb;
  const outward = sin * bend[1]! + cos * bend[0]!;
  const still = lean[0]! * bend[1]! + lean[1]! * bend[0]!;
  return {
    kind: s.kind, ...every, ramPin: [half, pinZ], armPivot: pivot, armLower: [pivot[0] - inward, pivot[1] - below],
    armUpper: [pivot[0] + s.upperLimb * outward, pivot[1] + s.upperLimb * (cos * bend[1]! - sin * bend[0]!)],
    springLength: lengths.springLength - 2 * s.upperLimb * (outward - still), ...carried(pivot[1]),
  };
}

/** How far a strap has drawn the bow's end in along its path: across and down, m. */
function tipDraw(strap: number, path: number, hang: number): readonly [number, number] {
  const lean = new Float64Array(2);
  sineCosine(path, lean);
  const b = strap * lean[1]! + hang * lean[0]!;
  const drawn = b - Math.sqrt(Math.max(0, b ** 2 - hang ** 2));
  return [drawn * lean[1]!, drawn * lean[0]!];
}

/** The beam lies level halfway up its stroke; rod and crank stand under its tail. */
function helvePose(spec: MotionSpec, lengths: MovingLengths, every: { readonly gap: number; readonly hang: number; readonly angle: number }, [across, up, reach]: readonly [number, number, number]): HelvePose {
  const s = spec.suspension;
  if (s.kind !== 'helve') throw new Error(`a helve's pose asked of another family: ${s.kind}`);
  const level = spec.frameHeight + spec.stackLoss - (spec.rodLength * s.headRadius) / s.rodRadius;
  const pivotZ = level + lengths.upperDie + lengths.ramHeight * 0.65;
  const frame = (every.gap + every.hang - level) / s.headRadius;
  const tail: Place = [s.headRadius + s.rodRadius, pivotZ - s.rodRadius * frame];
  return { kind: 'helve', ...every, pivot: [s.headRadius, pivotZ], beam: (every.gap - level) / s.headRadius, frame, rodEnd: tail, crankPin: [tail[0] + across, tail[1] - reach], crankCentre: [tail[0], tail[1] - reach + up] };
}

import type { MotionSpec } from '../../derived/motion/index.ts';
import { sineCosine } from '../../methods/numerics/index.ts';
import { coordinate } from '../drawing/svg.ts';
import type { BowPose, HelvePose, LinkagePose, Place, TogglePose } from './linkage-at.ts';
import { ramPinHalf } from './linkage-at.ts';
import type { MovingLengths } from './moving-lengths.ts';

/** One thing that moves, as a path in millimetres, heights downwards. Same ids in the same order at every instant. */
export interface MovingShape {
  readonly id: string;
  readonly pen: 'edge' | 'thin' | 'ghost';
  /** hidden behind the guide where true */
  readonly behind?: boolean;
  readonly d: string;
}

const at = ([x, z]: Place): string => `${coordinate(x * 1000)} ${coordinate(-z * 1000)}`;
const mirror = ([x, z]: Place): Place => [-x, z];

/** Everything of one hammer that moves, at one instant. */
export function movingShapes(spec: MotionSpec, lengths: MovingLengths, pose: LinkagePose): readonly MovingShape[] {
  const own = pose.kind === 'coil-toggle' ? toggleShapes(spec, lengths, pose) : pose.kind === 'bow-strap' ? bowShapes(spec, lengths, pose) : helveShapes(spec, lengths, pose);
  const rod = lengths.ramWidth * 0.09;
  return [...own, { id: 'connecting-rod', pen: 'edge', d: bar(pose.crankPin, pose.rodEnd, rod) }, { id: 'rod-pins', pen: 'edge', d: disc(pose.crankPin, rod * 0.75) + disc(pose.rodEnd, rod * 0.55) }];
}

function ramShapes(lengths: MovingLengths, gap: number): readonly MovingShape[] {
  const bottom = gap + lengths.upperDie;
  return [
    { id: 'upper-die', pen: 'edge', behind: true, d: rectangle(0, gap, lengths.dieWidth, lengths.upperDie) },
    { id: 'ram', pen: 'edge', behind: true, d: rectangle(0, bottom, lengths.ramWidth, lengths.ramHeight) + rectangle(0, bottom + lengths.ramHeight, lengths.ramWidth * 0.6, lengths.ramWidth * 0.16) },
  ];
}

/** Outline of the ram with its die, for a ghost beside the real one. */
export const ramOutline = (lengths: MovingLengths, gap: number): string => ramShapes(lengths, gap).map((shape) => shape.d).join('');

function toggleShapes(spec: MotionSpec, lengths: MovingLengths, pose: TogglePose): readonly MovingShape[] {
  const thick = lengths.ramWidth * 0.09;
  const both = (draw: (side: (place: Place) => Place) => string): string => draw((place) => place) + draw(mirror);
  const { armPivot, armLower, armUpper, ramPin, springLength } = pose;
  const seat = Math.max(springLength, lengths.wire * 2) / 2;
  const line = armUpper[1];
  const radius = lengths.springRadius;
  return [
    ...ramShapes(lengths, pose.gap),
    { id: 'spring-bolt', pen: 'thin', d: `M${at([-armUpper[0], line + radius * 0.22])}L${at([seat, line + radius * 0.22])}M${at([armUpper[0], line - radius * 0.22])}L${at([-seat, line - radius * 0.22])}` },
    { id: 'coil-spring', pen: 'edge', d: coils(lengths, seat, line) },
    { id: 'crosshead', pen: 'edge', d: polygon([[-armPivot[0] - thick, armPivot[1] - thick], [-armPivot[0] - thick, armPivot[1] + thick], [0, armPivot[1] + thick * 1.7], [armPivot[0] + thick, armPivot[1] + thick], [armPivot[0] + thick, armPivot[1] - thick], [0, armPivot[1] - thick * 1.3]]) },
    { id: 'upper-stop', pen: 'edge', d: nose(0, armPivot[1] - thick * 1.3, armPivot[1] - reachOf(spec) + spec.upperStop + lengths.ramWidth * 0.08, lengths.ramWidth * 0.22) },
    { id: 'toggle-arms', pen: 'edge', d: both((side) => bar(side(armPivot), side(armUpper), thick) + bar(side(armPivot), side(armLower), thick)) },
    { id: 'toggle-links', pen: 'edge', d: both((side) => bar(side(armLower), side(ramPin), thick * 0.8)) },
    { id: 'toggle-pins', pen: 'edge', d: both((side) => [armPivot, armLower, ramPin, armUpper].map((pin) => disc(side(pin), thick * 0.45)).join('')) },
  ];
}

/** How far the arms' pivots stand over the ram's pins with the links level, m. */
function reachOf(spec: MotionSpec): number {
  const s = spec.suspension;
  if (s.kind !== 'coil-toggle') return 0;
  const lean = new Float64Array(2);
  sineCosine(s.armAngle, lean);
  return s.lowerLimb * lean[1]!;
}

/** What the ram would meet if it were thrown up: a stem under the carrier. */
const nose = (x: number, from: number, to: number, width: number): string => (to < from ? rectangle(x, to, width, from - to) : rectangle(x, from, width, 0.001));

function bowShapes(spec: MotionSpec, lengths: MovingLengths, pose: BowPose): readonly MovingShape[] {
  const { tip, ramPin, crown } = pose;
  const leaf = lengths.leaf;
  const rise = crown[1] - tip[1];
  const leaves = Array.from({ length: lengths.leaves }, (_, index) => {
    const share = 1 - (index / lengths.leaves) * 0.72;
    return band(tip[0] * share, crown[1] - index * leaf, rise * share ** 2, leaf);
  });
  const pinHalf = ramPinHalf(spec, lengths);
  return [
    ...ramShapes(lengths, pose.gap),
    { id: 'ram-bar', pen: 'edge', d: rectangle(0, ramPin[1] - leaf * 1.2, pinHalf * 2 + leaf * 3, leaf * 2.4) },
    { id: 'bow-spring', pen: 'edge', d: leaves.join('') },
    { id: 'straps', pen: 'edge', d: bar(tip, ramPin, leaf * 0.9) + bar(mirror(tip), mirror(ramPin), leaf * 0.9) },
    { id: 'strap-pins', pen: 'edge', d: [tip, ramPin, mirror(tip), mirror(ramPin)].map((pin) => disc(pin, leaf * 0.8)).join('') },
    { id: 'upper-stop', pen: 'edge', d: nose(0, crown[1] - leaf * lengths.leaves, crown[1] - lengths.bowRise + spec.upperStop + lengths.ramWidth * 0.08, lengths.ramWidth * 0.22) },
    { id: 'crosshead', pen: 'edge', d: rectangle(0, crown[1] - leaf, Math.max(0.05, tip[0] * 0.3), leaf * 4.2) },
  ];
}

function helveShapes(spec: MotionSpec, lengths: MovingLengths, pose: HelvePose): readonly MovingShape[] {
  const s = spec.suspension;
  if (s.kind !== 'helve') throw new Error(`the pose is a helve's and the hammer is not: ${s.kind}`);
  const depth = lengths.beamDepth;
  const [px, pz] = pose.pivot;
  const on = (along: number, over: number, tilt: number): Place => [px - along, pz + along * tilt + over];
  const beamTail = s.cushionRadius + depth * 0.9;
  const free = s.solidSqueeze * 1.5;
  const roof = depth * 0.5 + free - s.squeeze;
  const beamAt = -s.cushionRadius * pose.beam;
  const frameAt = -s.cushionRadius * pose.frame;
  const half = depth * 0.42;
  const cushion = (side: 1 | -1): string => {
    const near = beamAt + side * depth * 0.5;
    const far = frameAt + side * roof;
    const height = Math.max(0.004, Math.min(free, side * (far - near)));
    return rectangle(px + s.cushionRadius, pz + (side === 1 ? far - height : far), half * 2, height);
  };
  return [
    ...ramShapes(lengths, pose.gap),
    { id: 'helve', pen: 'edge', d: polygon([on(s.headRadius + lengths.ramWidth * 0.25, -depth * 0.38, pose.beam), on(s.headRadius + lengths.ramWidth * 0.25, depth * 0.38, pose.beam), on(0, depth * 0.5, pose.beam), on(-beamTail, depth * 0.42, pose.beam), on(-beamTail, -depth * 0.42, pose.beam), on(0, -depth * 0.5, pose.beam)]) },
    { id: 'cushions', pen: 'edge', d: cushion(1) + cushion(-1) },
    { id: 'driving-frame', pen: 'edge', d: [1, -1].map((side) => bar(on(-s.cushionRadius + half * 1.1, side * (roof + depth * 0.08), pose.frame), on(-s.cushionRadius - half * 1.1, side * (roof + depth * 0.08), pose.frame), depth * 0.08)).join('') + bar(on(-s.cushionRadius, roof, pose.frame), on(-s.cushionRadius, -roof, pose.frame), depth * 0.07) + bar(on(-s.cushionRadius, 0, pose.frame), on(-s.rodRadius, 0, pose.frame), depth * 0.1) },
    { id: 'helve-pivot', pen: 'edge', d: disc(pose.pivot, depth * 0.2) },
  ];
}

const rectangle = (centre: number, bottom: number, width: number, height: number): string => polygon([[centre - width / 2, bottom], [centre - width / 2, bottom + height], [centre + width / 2, bottom + height], [centre + width / 2, bottom]]);
const polygon = (places: readonly Place[]): string => `${places.map((place, index) => `${index === 0 ? 'M' : 'L'}${at(place)}`).join('')}Z`;

function disc([x, z]: Place, radius: number): string {
  const r = coordinate(radius * 1000);
  return `M${at([x - radius, z])}A${r} ${r} 0 1 1 ${at([x + radius, z])}A${r} ${r} 0 1 1 ${at([x - radius, z])}Z`;
}

/** A bar with round ends between two pins. */
function bar(from: Place, to: Place, half: number): string {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-9) return disc(from, half);
  const n: Place = [((from[1] - to[1]) / length) * half, ((to[0] - from[0]) / length) * half];
  const r = coordinate(half * 1000);
  const by = ([x, z]: Place, sign: number): Place => [x + sign * n[0], z + sign * n[1]];
  return `M${at(by(from, 1))}L${at(by(to, 1))}A${r} ${r} 0 0 1 ${at(by(to, -1))}L${at(by(from, -1))}A${r} ${r} 0 0 1 ${at(by(from, 1))}Z`;
}

/** One leaf: up in the middle, its ends lower by `rise`. */
function band(half: number, crown: number, rise: number, thickness: number): string {
  const low = crown - rise;
  return `M${at([-half, low])}Q${at([0, crown + rise])} ${at([half, low])}L${at([half, low - thickness])}Q${at([0, crown + rise - thickness])} ${at([-half, low - thickness])}Z`;
}

/** The spring from seat to seat; its coils close up as it shortens. */
function coils(lengths: MovingLengths, seat: number, z: number): string {
  const radius = Math.max(lengths.springRadius, lengths.wire);
  const half = Math.min(lengths.wire / 2, seat / lengths.coils / 1.02);
  const pitch = (2 * seat - 2 * half) / (lengths.coils - 0.5);
  const plates = rectangle(-seat - half * 0.6, z - radius, half * 1.2, 2 * radius) + rectangle(seat + half * 0.6, z - radius, half * 1.2, 2 * radius);
  return plates + Array.from({ length: lengths.coils }, (_, coil) => bar([-seat + half + coil * pitch, z - radius + half], [Math.min(-seat + half + (coil + 0.5) * pitch, seat - half), z + radius - half], half)).join('');
}

import type { MotionSpec } from '../../derived/motion/index.ts';
import { box, circle, line, outline, type Point, type Svg } from '../drawing/svg.ts';
import type { LinkagePose } from './linkage-at.ts';
import type { MovingLengths } from './moving-lengths.ts';

/** What stands still round the moving parts, and how far everything reaches, m: left, bottom, right, top. */
export interface StillParts {
  readonly svg: Svg;
  readonly extent: readonly [left: number, bottom: number, right: number, top: number];
}

const at = (x: number, z: number): Point => [x * 1000, -z * 1000];
const rect = (x: number, z: number, width: number, height: number, fill?: string): Svg => box(x * 1000, -(z + height) * 1000, width * 1000, height * 1000, 'edge', fill);

/** @param poses over one loop, to know how far things reach */
export function stillParts(spec: MotionSpec, lengths: MovingLengths, poses: readonly LinkagePose[]): StillParts {
  const first = poses[0];
  if (first === undefined) throw new Error('a figure needs at least one pose');
  const { seatWidth, dieWidth, lowerDie } = lengths;
  const seat = -lowerDie;
  const stump = lowerDie * 0.9;
  const anvil = outline([at(-seatWidth * 0.9, seat - stump), at(-seatWidth * 0.72, seat), at(-seatWidth / 2, seat), at(-seatWidth / 2, seat + lowerDie * 0.28), at(-dieWidth / 2, seat + lowerDie * 0.28), at(-dieWidth / 2, seat), at(dieWidth / 2, seat), at(dieWidth / 2, seat + lowerDie * 0.28), at(seatWidth / 2, seat + lowerDie * 0.28), at(seatWidth / 2, seat), at(seatWidth * 0.72, seat), at(seatWidth * 0.9, seat - stump)], 'edge', { closed: false });
  const dies = rect(-dieWidth / 2, seat, dieWidth, lowerDie);
  const work = spec.workThickness > 0.0005 ? `<rect class="work" x="${-dieWidth * 800}" y="${-spec.workThickness * 1000}" width="${dieWidth * 1600}" height="${spec.workThickness * 1000}"/>` : '';
  const [cx, cz] = first.crankCentre;
  const plate = Math.max(lengths.crankPlate / 2, spec.throw * 1.3);
  const crank = circle(at(cx, cz), plate * 1000, 'thin') + circle(at(cx, cz), lengths.shaftDiameter * 500, 'edge') + `<circle class="crank-path" cx="${cx * 1000}" cy="${-cz * 1000}" r="${spec.throw * 1000}"/>`;
  const places = poses.flatMap((pose) => [pose.crankPin, pose.rodEnd, ...(pose.kind === 'coil-toggle' ? [pose.armUpper, pose.armLower, pose.armPivot] : pose.kind === 'bow-strap' ? [pose.tip, pose.crown, pose.ramPin] : [pose.pivot])]);
  const reach = Math.max(plate, seatWidth * 0.9, lengths.ramWidth * 0.8, ...places.map(([x]) => Math.abs(x) + 0.02));
  const top = Math.max(cz + plate, ...places.map(([, z]) => z + 0.03));
  if (first.kind === 'helve') {
    const [px, pz] = first.pivot;
    const floor = Math.min(cz - plate - 0.03, seat - stump);
    const post = lengths.beamDepth * 0.9;
    const frame = outline([at(px - post * 1.3, floor), at(px - post * 0.5, pz), at(px + post * 0.5, pz), at(px + post * 1.3, floor)], 'thin', { closed: false });
    const highest = Math.max(pz + lengths.beamDepth * 2.2, ...poses.map((pose) => pose.gap + lengths.upperDie + lengths.ramHeight * 1.2));
    return { svg: anvil + dies + work + frame + crank + line(at(-seatWidth, floor), at(cx + plate, floor), 'edge'), extent: [-Math.max(seatWidth, lengths.ramWidth) * 0.95, floor - 0.02, cx + plate + 0.03, highest + 0.03] };
  }
  const half = lengths.ramWidth / 2;
  const wall = lengths.ramWidth * 0.24;
  const high = Math.max(...poses.map((pose) => pose.gap));
  const low = Math.min(...poses.map((pose) => pose.gap));
  const ramFoot = low + lengths.upperDie;
  const guideTop = ramFoot + lengths.ramHeight - Math.max(0.004, spec.ledgeClearance - spec.stackLoss + low) + lengths.ramWidth * 0.02;
  const guideLow = Math.min(guideTop - lengths.ramHeight * 0.4, Math.max(ramFoot + lengths.ramHeight * 0.12, Math.min(high + lengths.upperDie, guideTop - lengths.ramHeight * 0.5)));
  const guide = [-1, 1].map((side) => rect(side === 1 ? half : -half - wall, guideLow, wall, guideTop - guideLow)).join('');
  const cap = line(at(-half - wall, guideLow + (guideTop - guideLow) * 0.2), at(half + wall, guideLow + (guideTop - guideLow) * 0.2), 'thin') + line(at(-half - wall, guideLow + (guideTop - guideLow) * 0.8), at(half + wall, guideLow + (guideTop - guideLow) * 0.8), 'thin');
  const bottom = seat - stump;
  return { svg: anvil + dies + work + guide + cap + crank + line(at(0, bottom), at(0, top + 0.02), 'centre'), extent: [-reach, bottom, reach, top + 0.02] };
}

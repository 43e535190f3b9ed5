import { box, line, outline, pathOf, type Svg } from '../drawing/svg.ts';
import { pin } from './draw-dies.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/** Where the linkage of one view ends at the top, so that the crank can be drawn on it. */
export interface LinkageTop {
  /** Height at which the rod takes hold, m. */
  readonly rodEnd: number;
}

/**
 * Coil spring and toggles from the front: arms hung on the crosshead, links from their lower ends in to the ram pins,
 * the spring across the top between the upper ends. Drawn hanging a little below the straight line, as it does at rest.
 */
export function drawToggles(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, centre: number): LinkageTop {
  const lower = lengths.of('arm-length');
  const upper = lower * 0.84;
  const link = lengths.of('link-length');
  const half = lengths.of('ram-width') * 0.22;
  const sag = link * 0.16;
  const reach = half + Math.sqrt(link ** 2 - sag ** 2);
  const ramPin = stack.ramTop + half * 0.35;
  const armEnd = ramPin + sag;
  const pivot = armEnd + lower;
  const springLine = pivot + upper;
  const thick = half * 0.42;
  const springLength = Math.min(lengths.of('spring-length'), reach * 1.7);
  const springRadius = lengths.of('spring-diameter') / 2;
  sheet.part('spring-bolt', [centre + reach * 0.96, springLine], ({ fill }) => [
    bar(sheet, centre - reach - thick * 2.4, springLine - thick * 0.4, (reach + thick * 2.4) * 2, thick * 0.8, fill),
    ...[-1, 1].map((side) => bar(sheet, centre + side * (reach + thick * 1.7) - thick * 0.55, springLine - thick * 1.1, thick * 1.1, thick * 2.2, fill)),
  ]);
  sheet.part('coil-spring', [centre, springLine + springRadius], ({ fill }) => drawCoils(sheet, centre - springLength / 2, springLine, springLength, springRadius, lengths.place('coil-spring.wire', springRadius * 0.42), Math.round(lengths.place('coil-spring.coils', 7)), fill));
  sheet.oiled('crosshead', centre, pivot);
  sheet.part('crosshead', [centre - half * 1.6, pivot], ({ fill }) => [
    outline([sheet.at(centre - reach - thick, pivot - thick), sheet.at(centre - reach - thick, pivot + thick), sheet.at(centre - half * 1.5, pivot + thick * 1.7), sheet.at(centre + half * 1.5, pivot + thick * 1.7), sheet.at(centre + reach + thick, pivot + thick), sheet.at(centre + reach + thick, pivot - thick), sheet.at(centre + half * 1.5, pivot - thick * 1.3), sheet.at(centre - half * 1.5, pivot - thick * 1.3)], 'edge', { fill }),
  ]);
  sheet.part('toggle-arms', [centre - reach, pivot - lower * 0.45], ({ fill }) => [-1, 1].map((side) => tapered(sheet, [centre + side * reach, springLine + thick * 0.6], [centre + side * reach, armEnd - thick * 0.5], thick, fill)));
  sheet.part('toggle-links', [centre + half + link * 0.5, armEnd - sag * 0.5], ({ fill }) => [-1, 1].map((side) => tapered(sheet, [centre + side * reach, armEnd], [centre + side * half, ramPin], thick * 0.85, fill)));
  sheet.part('toggle-pins', [centre + reach, armEnd], ({ fill }) => [-1, 1].flatMap((side) => [pin(sheet, centre + side * reach, armEnd, thick * 0.5, fill), pin(sheet, centre + side * half, ramPin, thick * 0.5, fill), pin(sheet, centre + side * reach, pivot, thick * 0.5, fill)]));
  return { rodEnd: pivot + thick * 0.2 };
}

const bar = (sheet: SheetPainter, x: number, z: number, width: number, height: number, fill: string): Svg => {
  const [left, top] = sheet.at(x, z + height);
  sheet.at(x + width, z);
  return box(left, top, width * 1000, height * 1000, 'edge', fill);
};

/** A link with round ends between two points. */
export function tapered(sheet: SheetPainter, from: readonly [number, number], to: readonly [number, number], half: number, fill: string): Svg {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const n = [((from[1] - to[1]) / length) * half, ((to[0] - from[0]) / length) * half] as const;
  const corners = [[from[0] + n[0], from[1] + n[1]], [to[0] + n[0], to[1] + n[1]], [to[0] - n[0], to[1] - n[1]], [from[0] - n[0], from[1] - n[1]]].map(([x, z]) => sheet.at(x ?? 0, z ?? 0));
  const [a, b, c, d] = corners;
  if (a === undefined || b === undefined || c === undefined || d === undefined) throw new Error('a link has four corners');
  const r = half * 1000;
  return pathOf(`M${a[0].toFixed(2)} ${a[1].toFixed(2)}L${b[0].toFixed(2)} ${b[1].toFixed(2)}A${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 ${c[0].toFixed(2)} ${c[1].toFixed(2)}L${d[0].toFixed(2)} ${d[1].toFixed(2)}A${r.toFixed(2)} ${r.toFixed(2)} 0 0 1 ${a[0].toFixed(2)} ${a[1].toFixed(2)}Z`, 'edge', fill);
}

/** A coil spring lying along x, each coil a slanted round bar. */
function drawCoils(sheet: SheetPainter, x: number, z: number, length: number, radius: number, wire: number, coils: number, fill: string): readonly Svg[] {
  const count = Math.min(12, Math.max(3, coils));
  const bar = Math.min(wire / 2, length / count / 2.1);
  const pitch = (length - bar * 2) / (count - 0.5);
  const shapes: Svg[] = [line(sheet.at(x, z + radius), sheet.at(x, z - radius), 'edge'), line(sheet.at(x + length, z + radius), sheet.at(x + length, z - radius), 'edge')];
  for (let coil = 0; coil < count; coil += 1) {
    const start = x + bar + coil * pitch;
    shapes.push(tapered(sheet, [start, z - radius + bar], [Math.min(start + pitch * 0.5, x + length - bar), z + radius - bar], bar, fill));
  }
  return shapes;
}

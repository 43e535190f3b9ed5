import { pathOf } from '../drawing/svg.ts';
import { pin } from './draw-dies.ts';
import { tapered, type LinkageTop } from './front-toggles.ts';
import type { Lengths } from './lengths.ts';
import type { SheetPainter } from './sheet-painter.ts';
import type { StackHeights } from './stack-heights.ts';

/** A bow of leaves from the front: clipped to the rod in the middle, its ends strapped down to the ram. */
export function drawBow(sheet: SheetPainter, lengths: Lengths, stack: StackHeights, centre: number): LinkageTop {
  const half = lengths.of('bow-span') / 2;
  const rise = lengths.of('bow-height');
  const leaf = lengths.place('bow-spring.leaf-thickness', 0.007);
  const leaves = Math.min(12, Math.max(2, Math.round(lengths.place('bow-spring.leaves', 6))));
  const ramPin = stack.ramTop + lengths.of('ram-width') * 0.08;
  const end = ramPin + rise * 0.35;
  const crown = end + rise;
  const ramHalf = lengths.of('ram-width') * 0.28;
  const paper = 'var(--paper,#f6f3ea)';
  sheet.part('bow-spring', [centre - half * 0.55, end + rise * 0.8], ({ fill }) => [
    ...[-1, 1].map((side) => tapered(sheet, [centre + side * (half - leaf), end], [centre + side * ramHalf, ramPin], leaf * 1.2, paper)),
    ...Array.from({ length: leaves }, (_, index) => {
      const share = 1 - (index / leaves) * 0.72;
      return leafPath(sheet, centre, half * share, crown - index * leaf, rise * share ** 2, leaf, fill);
    }),
    tapered(sheet, [centre - half * 0.16, crown + leaf * 1.5], [centre + half * 0.16, crown + leaf * 1.5], leaf * 2.4, paper),
    pin(sheet, centre, crown + leaf * 4.5, leaf, paper),
  ]);
  sheet.oiled('bow-spring', centre - half + leaf, end);
  return { rodEnd: crown + leaf * 4.5 };
}

/** One leaf as a band: up in the middle, its ends lower by `rise`. */
function leafPath(sheet: SheetPainter, centre: number, half: number, crown: number, rise: number, thickness: number, fill: string): string {
  const p = (x: number, z: number): string => sheet.at(x, z).map((one) => one.toFixed(2)).join(' ');
  const low = crown - rise;
  return pathOf(`M${p(centre - half, low)}Q${p(centre, crown + rise)} ${p(centre + half, low)}L${p(centre + half, low - thickness)}Q${p(centre, crown + rise - thickness)} ${p(centre - half, low - thickness)}Z`, 'edge', fill);
}

import type { PrintSystem } from '../../src/derived/index.ts';
import type { PartToMake } from '../../src/derived/making/index.ts';
import { layViews, type LaidOut, type ViewAngle } from '../../src/views/making/index.ts';
import { SCALES } from '../../src/views/making/sheet-paper.ts';

/** Width that a drawing has on A4 and on letter, mm. */
const WIDE = 166;

/**
 * Lays a part at the largest scale at which it fits a room; nothing where it fits at none.
 * @returns for a height of the room, mm; each scale is laid once however often it is asked
 */
export function laidInRoom(part: PartToMake, system: PrintSystem, angle: ViewAngle): (tall: number) => LaidOut | undefined {
  const laid = new Map<number, LaidOut>();
  const at = (scale: number): LaidOut => {
    const held = laid.get(scale) ?? layViews(part, { scale, height: 2.5, system, angle });
    laid.set(scale, held);
    return held;
  };
  return (tall) => {
    for (const [drawing, real] of SCALES) {
      const one = at((1000 * drawing) / real);
      const { least, most } = one.extent;
      if (most[0] - least[0] <= WIDE && most[1] - least[1] <= tall) return one;
    }
    return undefined;
  };
}

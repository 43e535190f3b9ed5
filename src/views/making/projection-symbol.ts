import { circle, line, outline, type Svg } from '../drawing/svg.ts';
import type { ViewAngle } from './lay-views.ts';

/** The truncated cone of ISO 5456-2 that says which way the views lie. */
export function projectionSymbol(angle: ViewAngle, x: number, y: number): Svg {
  const cone = (at: number): Svg => outline([[at, y - 1.5], [at + 7, y - 3], [at + 7, y + 3], [at, y + 1.5]], 'thin', { fill: 'none' }) + line([at - 1, y], [at + 8, y], 'centre');
  const rings = (at: number): Svg => circle([at, y], 3, 'thin', 'none') + circle([at, y], 1.5, 'thin', 'none') + line([at - 4, y], [at + 4, y], 'centre') + line([at, y - 4], [at, y + 4], 'centre');
  return angle === 'third-angle' ? rings(x + 2) + cone(x + 9) : cone(x) + rings(x + 14);
}

import { coordinate, line, textAt, type Point, type Svg } from './svg.ts';

/** A filled arrowhead at `tip`, pointing along the unit vector. */
function arrowhead([x, y]: Point, [ux, uy]: Point, size: number): Svg {
  const half = size * 0.18;
  const points = [[x, y], [x - ux * size - uy * half, y - uy * size + ux * half], [x - ux * size + uy * half, y - uy * size - ux * half]];
  return `<polygon points="${points.map(([px, py]) => `${coordinate(px ?? 0)},${coordinate(py ?? 0)}`).join(' ')}" style="fill:var(--ink,#16181d)"/>`;
}

/**
 * A dimension line with extension lines and arrows, after the habit of ISO 129: the figure stands above its line.
 * @param offset distance of the dimension line from the measured points, to the left of the direction from `from` to `to`
 * @param size height of the figure, drawing units
 */
export function dimensionLine(from: Point, to: Point, offset: number, text: string, size: number): Svg {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return '';
  const u: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const n: Point = [u[1], -u[0]];
  const shift = ([x, y]: Point, by: number): Point => [x + n[0] * by, y + n[1] * by];
  const a = shift(from, offset);
  const b = shift(to, offset);
  const past = offset + Math.sign(offset) * size * 0.4;
  const near = Math.sign(offset) * size * 0.25;
  const arrow = Math.min(size * 0.8, length / 2.5);
  const tight = length < size * 2.2;
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const upright = Math.abs(u[1]) > 0.7;
  const inwardA: Point = tight ? u : [-u[0], -u[1]];
  const inwardB: Point = tight ? [-u[0], -u[1]] : u;
  const textPoint: Point = tight
    ? upright ? [Math.max(a[0], b[0]) + size * 0.45, middle[1] + size * 0.36] : [b[0] + u[0] * size * 1.2, b[1] + u[1] * size * 1.2]
    : upright ? [middle[0] - size * 0.35, middle[1]] : [middle[0], middle[1] - size * 0.35];
  return [
    line(shift(from, near), shift(from, past), 'thin'), line(shift(to, near), shift(to, past), 'thin'),
    tight ? line([a[0] - u[0] * size, a[1] - u[1] * size], [b[0] + u[0] * size, b[1] + u[1] * size], 'thin') : line(a, b, 'thin'),
    arrowhead(a, inwardA, arrow), arrowhead(b, inwardB, arrow),
    textAt(textPoint, text, { size, anchor: tight && upright ? 'start' : 'middle', className: 'figure', ...(upright && !tight ? { turn: -90 } : {}) }),
  ].join('');
}

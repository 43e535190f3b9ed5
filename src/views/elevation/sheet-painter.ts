import { CONDITION_WORDS, conditionFill, type Condition } from '../drawing/hatch.ts';
import { circle, coordinate, group, line, textAt, type Point, type Svg } from '../drawing/svg.ts';
import { partName } from '../sentences/words.ts';
import type { PartCondition } from './part-condition.ts';

/** What a part's shapes may use: its fill by condition, millimetres on the machine, heights upwards. */
export interface PartPen {
  readonly fill: string;
}

/**
 * Gathers the shapes of one view, part by part in drawing order. Lengths go in as metres on the machine, heights upwards;
 * they come out as millimetres, heights downwards, as SVG has it.
 */
export class SheetPainter {
  readonly #parts: Svg[] = [];
  readonly #notes: Svg[] = [];
  readonly #anchors: { readonly part: string; readonly point: Point }[] = [];
  readonly #conditions: ReadonlyMap<string, PartCondition>;
  #least: Point = [Infinity, Infinity];
  #most: Point = [-Infinity, -Infinity];

  constructor(conditions: ReadonlyMap<string, PartCondition>) {
    this.#conditions = conditions;
  }

  /** Machine point in metres to drawing point in millimetres. */
  readonly at = (x: number, z: number): Point => {
    const point: Point = [x * 1000, -z * 1000];
    this.#least = [Math.min(this.#least[0], point[0]), Math.min(this.#least[1], point[1])];
    this.#most = [Math.max(this.#most[0], point[0]), Math.max(this.#most[1], point[1])];
    return point;
  };

  condition(part: string): Condition {
    return this.#conditions.get(part)?.condition ?? 'not-checked';
  }

  /** One part: a group that can be touched and read aloud. `anchor` is where its balloon points. */
  part(id: string, anchor: readonly [x: number, z: number], draw: (pen: PartPen) => readonly Svg[]): void {
    const condition = this.condition(id);
    const inPart = this.#conditions.get(id)?.inPart === true;
    const label = `${partName(id)}: ${CONDITION_WORDS[condition]}${inPart ? ', in part not known yet' : ''}`;
    this.#parts.push(group({ class: `part ${condition}`, 'data-part': id, tabindex: '0', role: 'button', 'aria-label': label }, ...draw({ fill: conditionFill(condition) })));
    const point = this.at(anchor[0], anchor[1]);
    if (!this.#anchors.some((one) => one.part === id)) this.#anchors.push({ part: id, point });
  }

  /** Lines that belong to no part: floor, centre lines, dimensions, notes. */
  note(...shapes: readonly Svg[]): void {
    this.#notes.push(...shapes);
  }

  /** Extent so far, millimetres. */
  extent(): { readonly least: Point; readonly most: Point } {
    return { least: this.#least, most: this.#most };
  }

  /** Balloons in two columns at the sides, each with a leader to its part and the number of the parts list. */
  balloons(numbers: ReadonlyMap<string, number>, radius: number): Svg {
    const { least, most } = this.extent();
    const middle = (least[0] + most[0]) / 2;
    const placed: Svg[] = [];
    for (const side of ['left', 'right'] as const) {
      const mine = this.#anchors.filter((one) => (side === 'left' ? one.point[0] <= middle : one.point[0] > middle)).sort((a, b) => a.point[1] - b.point[1]);
      const x = side === 'left' ? least[0] - radius * 2.4 : most[0] + radius * 2.4;
      const heights = spread(mine.map((one) => one.point[1]), radius * 2.35, least[1] + radius, most[1] - radius);
      mine.forEach((one, index) => {
        const number = numbers.get(one.part);
        const y = heights[index];
        if (number === undefined || y === undefined) return;
        const condition = this.condition(one.part);
        const edge = side === 'left' ? x + radius : x - radius;
        placed.push(group({ class: `balloon ${condition}`, 'data-part': one.part }, line([edge, y], one.point, 'thin'), `<circle class="dot" cx="${coordinate(one.point[0])}" cy="${coordinate(one.point[1])}" r="${coordinate(radius * 0.16)}" style="fill:var(--ink,#16181d)"/>`, circle([x, y], radius, 'thin', condition === 'stand-down' ? 'var(--ink,#16181d)' : 'var(--paper,#f6f3ea)'), textAt([x, y + radius * 0.36], String(number), { size: radius * 1.05, anchor: 'middle', className: condition === 'stand-down' ? 'white' : 'figure' })));
      });
    }
    return placed.join('');
  }

  body(): Svg {
    return this.#parts.join('') + this.#notes.join('');
  }
}

/** Keeps wanted positions in order and at least `apart` from each other, within the bounds where they fit. */
function spread(wanted: readonly number[], apart: number, least: number, most: number): readonly number[] {
  const placed: number[] = [];
  for (const want of wanted) placed.push(Math.max(want, (placed.at(-1) ?? -Infinity) + apart, least));
  const over = (placed.at(-1) ?? most) - most;
  if (over > 0) {
    let limit = most;
    for (let index = placed.length - 1; index >= 0; index -= 1) {
      placed[index] = Math.min(placed[index] ?? limit, limit);
      limit = (placed[index] ?? limit) - apart;
    }
  }
  return placed;
}

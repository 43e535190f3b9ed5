import { CONDITION_WORDS, conditionFill, type Condition } from '../drawing/hatch.ts';
import { textWidth } from '../drawing/figure-text.ts';
import { group, type Point, type Svg } from '../drawing/svg.ts';
import { partName } from '../sentences/words.ts';
import type { PartCondition } from './part-condition.ts';

/** What a part's shapes may use: its fill by condition, millimetres on the machine, heights upwards. */
export interface PartPen {
  readonly fill: string;
}

/** Where a part's leader ends, and the condition that its balloon shows. */
export interface Anchor {
  readonly part: string;
  readonly point: Point;
  readonly condition: Condition;
}

/**
 * Gathers the shapes of one view, part by part in drawing order. Lengths go in as metres on the machine, heights upwards;
 * they come out as millimetres, heights downwards, as SVG has it.
 */
export class SheetPainter {
  #parts: { readonly point: Point; readonly shapes: Svg }[] = [];
  readonly #notes: Svg[] = [];
  #anchors: Anchor[] = [];
  readonly #oiled = new Map<string, Point>();
  readonly #conditions: ReadonlyMap<string, PartCondition>;
  #least: Point = [Infinity, Infinity];
  #most: Point = [-Infinity, -Infinity];

  /**
   * @param size height of the lettering, mm on the machine; 0 for a drawing without letters
   * @param least least height of any letter
   * @param touch whether parts can be touched and reached by keys; a printed drawing's cannot
   */
  constructor(conditions: ReadonlyMap<string, PartCondition>, readonly size: number, private readonly touch: boolean, readonly least = 0) {
    this.#conditions = conditions;
  }

  /** Machine point in metres to drawing point in millimetres. */
  readonly at = (x: number, z: number): Point => {
    const point: Point = [x * 1000, -z * 1000];
    this.reserve(point);
    return point;
  };

  /** Widens the sheet so that a drawing point lies on it. */
  reserve(point: Point): void {
    this.#least = [Math.min(this.#least[0], point[0]), Math.min(this.#least[1], point[1])];
    this.#most = [Math.max(this.#most[0], point[0]), Math.max(this.#most[1], point[1])];
  }

  /** Widens the sheet so that a text that starts, or ends, at a drawing point has room. */
  reserveText([x, y]: Point, text: string, anchor: 'start' | 'end'): void {
    this.reserve([x + (anchor === 'start' ? 1 : -1) * textWidth(text, this.size, this.least), y]);
  }

  condition(part: string): Condition {
    return this.#conditions.get(part)?.condition ?? 'not-checked';
  }

  /** One part: a group that can be touched and read aloud. `anchor` is where its balloon points. */
  part(id: string, anchor: readonly [x: number, z: number], draw: (pen: PartPen) => readonly Svg[]): void {
    const condition = this.condition(id);
    const label = `${partName(id)}: ${this.#conditions.get(id)?.words ?? CONDITION_WORDS[condition]}`;
    const point = this.at(anchor[0], anchor[1]);
    const shapes = group({ class: `part ${condition}`, 'data-part': id, ...(this.touch ? { tabindex: '0', role: 'button' } : { role: 'img' }), 'aria-label': label }, ...draw({ fill: conditionFill(condition) }));
    this.#parts.push({ point, shapes });
    if (!this.#anchors.some((one) => one.part === id)) this.#anchors.push({ part: id, point, condition });
  }

  /** Where the oil of a part goes in, the first view that shows it: a pivot's middle, the top of a bearing. */
  oiled(id: string, x: number, z: number): void {
    if (!this.#oiled.has(id)) this.#oiled.set(id, this.at(x, z));
  }

  /** Lines that belong to no part: floor, centre lines, dimensions, notes. */
  note(...shapes: readonly Svg[]): void {
    this.#notes.push(...shapes);
  }

  /** Where each part is pointed at, the first view that shows it. */
  anchors(): readonly Anchor[] {
    return this.#anchors;
  }

  /** As `anchors`, and at the place of the oil where a part has one. */
  oilAnchors(): readonly Anchor[] {
    return this.#anchors.map((one) => ({ ...one, point: this.#oiled.get(one.part) ?? one.point }));
  }

  /** Cuts the sheet to a window, mm; parts that are pointed at outside it go, so that nobody is led to what cannot be seen. */
  keepWithin(least: Point, most: Point): void {
    const inside = ({ point: [x, y] }: { readonly point: Point }): boolean => x >= least[0] && x <= most[0] && y >= least[1] && y <= most[1];
    this.#parts = this.#parts.filter(inside);
    this.#anchors = this.#anchors.filter(inside);
    this.#least = least;
    this.#most = most;
  }

  /** Extent so far, millimetres. */
  extent(): { readonly least: Point; readonly most: Point } {
    return { least: this.#least, most: this.#most };
  }

  parts(): Svg {
    return this.#parts.map(({ shapes }) => shapes).join('');
  }

  notes(): Svg {
    return this.#notes.join('');
  }
}

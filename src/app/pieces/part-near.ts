/** A piece smaller than a finger, px each way. */
const FINGER = 48;
/** How far beside a small piece a touch still means it, px. */
const REACH = 16;

/**
 * The part that a touch means: what lies under it, or a small piece close by where that is nothing or something large.
 * @param drawing element that holds the drawing
 * @param x position of the touch in the window, px
 * @param y the same
 */
export function partNear(drawing: Element, target: EventTarget | null, x: number, y: number): string | undefined {
  const direct = target instanceof Element ? target.closest<SVGElement>('[data-part]') : null;
  if (direct !== null && (direct.classList.contains('balloon') || isSmall((target as Element).getBoundingClientRect()))) return direct.dataset['part'];
  let nearest = REACH;
  let found = direct?.dataset['part'];
  for (const part of drawing.querySelectorAll<SVGElement>('.part')) {
    for (const piece of part.children) {
      const box = piece.getBoundingClientRect();
      const away = Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
      if (isSmall(box) && away < nearest) {
        nearest = away;
        found = part.dataset['part'];
      }
    }
  }
  return found;
}

const isSmall = ({ width, height }: DOMRect): boolean => Math.min(width, height) < FINGER && width * height < FINGER * FINGER;

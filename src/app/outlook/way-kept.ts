const PLACE = 'tupwise.way';

/** Door and floor as somebody typed them on this device. */
export interface Way {
  readonly width: string;
  readonly height: string;
  readonly floor: string;
}

const NONE: Way = { width: '', height: '', floor: '' };

export function readWay(): Way {
  try {
    const held: unknown = JSON.parse(localStorage.getItem(PLACE) ?? 'null');
    const text = (name: keyof Way): string => (typeof held === 'object' && held !== null && name in held ? String((held as Record<string, unknown>)[name]) : '');
    return { width: text('width'), height: text('height'), floor: text('floor') };
  } catch {
    return NONE;
  }
}

export function writeWay(way: Way): void {
  try {
    localStorage.setItem(PLACE, JSON.stringify(way));
  } catch {
    // A browser that keeps nothing: it is typed again next time.
  }
}

/** A bar to be worked between flat dies. SI. */
export interface Bar {
  readonly section: 'square' | 'round' | 'flat';
  /** side, diameter, or of a flat the thickness that is struck, m */
  readonly size: number;
  /** of a flat, across the blow, m */
  readonly width?: number;
  /** share of the mass, 0.002 for mild steel */
  readonly carbon: number;
}

/** The rectangle that the blow squeezes. */
export interface Section {
  /** m, in the direction of the blow */
  readonly height: number;
  /** m, across it */
  readonly width: number;
}

/**
 * Section of a bar as it is struck. A round one stands as the square of the same area, since it is squared before it is drawn
 * (common practice); its first blows, on two narrow strips, take more off than is reckoned here.
 */
export function sectionOf(bar: Bar): Section {
  switch (bar.section) {
    case 'square':
      return { height: bar.size, width: bar.size };
    case 'round': {
      const side = (bar.size * Math.sqrt(Math.PI)) / 2;
      return { height: side, width: side };
    }
    case 'flat':
      return { height: bar.size, width: bar.width ?? bar.size };
  }
}

/** Volume over surface of a long bar, m, which sets how fast it cools: a quarter of the side or of the diameter. */
export function coolingThickness(bar: Bar): number {
  if (bar.section === 'round') return bar.size / 4;
  const { height, width } = sectionOf(bar);
  return (height * width) / (2 * (height + width));
}

/** Distance round a bar, m. */
export function girth(bar: Bar): number {
  if (bar.section === 'round') return Math.PI * bar.size;
  const { height, width } = sectionOf(bar);
  return 2 * (height + width);
}

import { STOCK_DENSITIES } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import { estimateWarnings, FigureReader, plusMinus, reckon, sized, unknownPlace, type Figure, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { breakLine, centreLine, line, rectangle, type DimensionMark, type Mark, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'helve-cushion';
const TITLE = 'Cushion of the helve';
const ENDS = ['upper', 'lower'] as const;
const SIXTEENTH = 4 * shopNumber('plate-room');

/**
 * Cushions that throw a helve: blocks of rubber as high as made, as wide and long as their boxes.
 * @returns the part; not known where no height was read
 */
export function makeHelveCushions(values: Values, _known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const heights = ENDS.flatMap((end) => {
    const figure = heightOf(reader, end);
    return figure === undefined ? [] : [{ end, ...figure }];
  });
  const [first] = [...heights].sort((a, b) => b.figure.quantity.value - a.figure.quantity.value);
  if (first === undefined) {
    for (const end of ENDS) reader.need(`helve.cushion-height@${end}`);
    return reader.notKnown(KIND, TITLE);
  }
  const across = (place: string): Figure | undefined => ENDS.flatMap((end) => reader.find(`helve.${place}@${end}`) ?? []).sort((a, b) => a.quantity.value - b.quantity.value)[0];
  const [width, span] = [across('cushion-width'), across('cushion-span')];
  const second = heights.find((one) => one.end !== first.end);
  const odd = second !== undefined && first.figure.quantity.value - second.figure.quantity.value > SIXTEENTH / 2;
  const dimensions: MakingDimension[] = [
    sized('height', odd ? `height of the rubber, free, ${first.end}` : 'height of the rubber, free', first.figure, plusMinus(SIXTEENTH), first.why),
    ...(odd ? [sized(`height-${second.end}`, `height of the rubber, free, ${second.end}`, second.figure, plusMinus(SIXTEENTH), second.why)] : []),
    ...(width === undefined ? [] : [sized('width', 'width, across the beam', width, { plus: 0, minus: 2 * SIXTEENTH }, 'as the old one, or its box; rubber swells when it is squeezed and wants room')]),
    ...(span === undefined ? [] : [sized('span', 'length, along the beam', span, { plus: 0, minus: 2 * SIXTEENTH }, 'as the old one, or its box')]),
  ];
  const plate = shopFigure('cushion-plate');
  const whole = reckon('length', [first.figure, plate], (high, thick) => high! + 2 * thick!);
  dimensions.push(
    sized('plate', 'steel plates, thick, two to each', { ...plate, estimate: false }, plusMinus(SIXTEENTH / 2), 'practice; as wide and as long as the rubber'),
    sized('over-plates', 'over both plates', { ...whole, estimate: first.figure.estimate }, plusMinus(0), 'follows: the height is the rubber alone, as it is read standing free'),
  );
  const [h, w, s] = [first.figure.quantity.value, width?.quantity.value, span?.quantity.value];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: ENDS.length, material: 'Natural rubber or neoprene, solid block or sheets laid up and bonded; older ones are stacked leather, or hardwood faced with leather', hardness: 'Rubber of 60 to 70 Shore A, both alike; from memory, the old one’s own where it is still springy', dimensions,
    ...(w === undefined || s === undefined ? {} : { mass: h * w * s * STOCK_DENSITIES.rubber }), shape: cushionShape(h, w, s),
    unknowns: ENDS.flatMap((end) => [...(heights.some((one) => one.end === end) ? [] : [unknownPlace(`helve.cushion-height@${end}`)])]).concat(width === undefined ? [unknownPlace('helve.cushion-width@upper')] : [], span === undefined ? [unknownPlace('helve.cushion-span@upper')] : []),
    disputes: [],
    notes: [
      'Renewed as a pair, of one rubber: a soft and a hard one throw the beam off its blow.',
      'Steel plates of 1/4 in (6 mm), as wide and as long as the rubber, on both faces, bonded or held by the box: the beam cuts bare rubber. They come on top of the height drawn. Where the old cushion had none, the rubber is made lower by both, so that the beam lies as it did.',
      'Faces flat and parallel within 1/32 in (0.8 mm), edges rounded 1/8 in (3 mm). No oil, no grease.',
      'Stiffness is not known from these readings: set the gap anew, and look at how the beam rises before it works.',
    ],
    cautions: ['isolate', 'block-ram'], sources: ['page-other-families', 'common-practice', 'from-memory'],
    warnings: estimateWarnings(dimensions),
  }, context.system);
}

/** As made; else what it measures now and the share that it has lost; else what it measures now, an estimate. */
function heightOf(reader: FigureReader, end: (typeof ENDS)[number]): { readonly figure: Figure; readonly why: string } | undefined {
  const made = reader.find(`helve.cushion-height@${end}#as-made`);
  if (made !== undefined) return { figure: made, why: 'as made; the old one has settled' };
  const now = reader.find(`helve.cushion-height@${end}`);
  const set = reader.find(`helve.cushion-set@${end}`);
  if (now === undefined) return undefined;
  if (set !== undefined && set.quantity.value < 1) return { figure: reckon('length', [now, set], (high, lost) => high! / (1 - lost!)), why: 'what it measures now and the share that it has lost' };
  return { figure: { ...now, estimate: true }, why: 'what the old one measures now; a new one stands higher by what that has lost' };
}

function cushionShape(height: number, width: number | undefined, span: number | undefined): Shape {
  const block = (wide: number | undefined): readonly Mark[] => {
    const across = wide ?? height * 1.4;
    return [...(wide === undefined ? [line([-across / 2, 0], [-across / 2, height]), line([-across / 2, 0], [across / 2, 0]), line([-across / 2, height], [across / 2, height]), ...breakLine(across / 2, 0, height)] : rectangle(-across / 2, 0, across, height)), centreLine([0, 0], [0, height])];
  };
  const half = (wide: number | undefined): number => (wide ?? height * 1.4) / 2;
  const high: DimensionMark = { kind: 'straight', of: 'height', from: [-half(width), 0], to: [-half(width), height], side: 'left', row: 1 };
  return {
    ...(width === undefined || span === undefined ? { broken: 'Cut short: width or length not measured.' } : {}),
    views: [
      { name: 'front', title: 'seen along the beam', marks: block(width), dimensions: [high, ...(width === undefined ? [] : [{ kind: 'straight', of: 'width', from: [-half(width), 0], to: [half(width), 0], side: 'below', row: 1 } as const])] },
      { name: 'right', title: 'seen across the beam', marks: block(span), dimensions: span === undefined ? [] : [{ kind: 'straight', of: 'span', from: [-half(span), 0], to: [half(span), 0], side: 'below', row: 1 }] },
    ],
  };
}

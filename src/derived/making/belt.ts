import { leatherBeltWidth, openBeltLength, openBeltWrap } from '../../methods/elements/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import type { Known } from '../survey/index.ts';
import { printQuantity } from '../print-system.ts';
import { estimateWarnings, FigureReader, type Figure, plusMinus, reckon, sized, unknownPlace, type Values } from './figure.ts';
import { ALONE, type MakingContext } from './making-context.ts';
import type { Making, MakingDimension } from './part-to-make.ts';
import { possible } from './possible.ts';
import { circle, cross, line, type Shape } from './shape.ts';
import { shopFigure, shopNumber } from './shop-figures.ts';

const KIND = 'belt';
const TITLE = 'Flat belt';

/** The pulley at the motor's end of the hammer's own belt. */
export const smallPulleyKeys = (known: Known): string => (known.looks['drive-line.kind']?.answer === 'countershaft' ? 'drive-line.countershaft-driver' : 'motor.pulley');

/**
 * Length of an open flat belt round both pulleys, along its middle, and the length to cut; width between what the power asks for by two
 * rules of thumb and what the pulley's face holds.
 * @returns the part; not known without pulleys and centres; cannot be where the pulleys would touch or the belt is wider than its pulley
 */
export function makeBelt(values: Values, known: Known, context: MakingContext = ALONE): Making {
  const reader = new FigureReader(values);
  const small = reader.need(smallPulleyKeys(known));
  const large = reader.need('pulley.diameter');
  const centres = reader.need('belt.centre-distance');
  const old = reader.need('belt.width#as-made|belt.width');
  if (small === undefined || large === undefined || centres === undefined || old === undefined) return reader.notKnown(KIND, TITLE);
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, context.system);
  const cannot = (because: string, problem: string): Making => ({ state: 'cannot-be', kind: KIND, title: TITLE, because, problem });
  const [d, D, c] = [small.quantity.value, large.quantity.value, centres.quantity.value];
  if (c <= (d + D) / 2) return cannot('At this distance the two pulleys would touch: one of the readings is wrong.', `The centre distance must be above half of both pulleys together; above ${print((d + D) / 2)} is allowed: ${print(c)}`);
  const face = reader.find('pulley.face');
  const width = wideEnough(reader, old, face, context);
  if (face !== undefined && width.quantity.value > face.quantity.value) return cannot('A belt wider than its pulley runs off the edge.', `The belt is wider than the face of its pulley; up to ${print(face.quantity.value)} is allowed: ${print(width.quantity.value)}`);
  const thick = reader.find('belt.thickness#as-made|belt.thickness');
  const taped = reader.find('belt.run');
  const least = reckon('length', [small, large, centres], (a, b, apart) => openBeltLength(a!, b!, apart!));
  const inside = taped ?? least;
  // Over an idler the way is longer, and by how much only a tape says.
  const idler = known.looks['belt-idler.fitted']?.answer === 'yes';
  const unknownRun = idler && taped === undefined;
  const middle = thick === undefined ? inside : reckon('length', [inside, thick], (round, t) => round! + Math.PI * t!);
  const stretch = shopFigure('belt-stretch');
  const leather = ['single-leather', 'double-leather'].includes(known.looks['belt.material']?.answer ?? '');
  const cut = leather ? reckon('length', [middle, stretch], (round, share) => round! * (1 - share!)) : middle;
  const dimensions: MakingDimension[] = [
    sized('length', unknownRun ? 'least length, without the idler' : 'length, along the middle', middle, plusMinus(unknownRun ? 0 : shopNumber('sawn') / 2), `${taped === undefined ? 'two straight runs and what each pulley takes round it' : 'round the run, by tape'}${thick === undefined ? ', thickness not measured and left out' : ', and 3.14 times the thickness'}`),
    ...(unknownRun ? [] : [sized('cut-length', 'length to cut for a butt joint', { ...cut, estimate: cut.estimate && leather }, { plus: shopNumber('sawn'), minus: 0 }, leather ? 'leather is cut a hundredth short, an estimate: it stretches; what is too long is cut off, what is too short is scrap' : 'as the length; this belt hardly stretches. What is too long is cut off, what is too short is scrap')]),
    sized('width', 'width', width, plusMinus(2 * shopNumber('plate-room')), width === old ? 'as the old belt' : `wide enough for the new motor, ${context.motor?.words ?? ''}`),
    ...(thick === undefined ? [] : [sized('thickness', 'thickness', thick, plusMinus(shopNumber('plate-room')), 'as the old belt')]),
    sized('centre-distance', 'between the shafts', centres, plusMinus(0), 'as measured'),
    sized('small-pulley', 'small pulley', small, plusMinus(0), 'as measured'),
    sized('large-pulley', 'hammer pulley', large, plusMinus(0), 'as measured'),
  ];
  return possible({
    state: 'to-make', kind: KIND, id: KIND, title: TITLE, quantity: 1, material: materialWords(known.looks['belt.material']?.answer), hardness: 'Does not apply', dimensions,
    shape: beltShape(d, D, c), unknowns: unknownRun ? [unknownPlace('belt.run')] : [], disputes: [],
    notes: [
      idler ? 'Lay a tape where the belt runs, over the idler too, idler down and motor in the middle of its slide, before the belt is cut: the tape wins.' : 'Lay a tape round both pulleys where the belt runs, motor in the middle of its slide, before the belt is cut: the tape wins.',
      `Cemented lap: add the lap, tip away from the run. Laced or metal joint: cut square, no lap.${sideWords(known.looks['belt.material']?.answer)}`,
      ...widthNotes(reader, known, width.quantity, print, context),
    ],
    cautions: ['isolate', 'pinch'], sources: ['belt-arithmetic', 'leather-belt-rules', 'from-memory'],
    warnings: [
      ...(unknownRun ? ['An idler is fitted, so no length to cut is given: the length drawn is the least, without the way over the idler. Measure with a tape, idler down.'] : []),
      ...(thick !== undefined && d < shopNumber('least-pulley-over-belt') * thick.quantity.value ? [`The small pulley is less than twenty times as large as the belt is thick: a thinner belt lasts longer on ${print(d)}.`] : []),
      ...estimateWarnings(dimensions),
    ],
  }, context.system);
}

/** Quarters of an inch, or whole centimetres by halves: belts are sold no finer. */
const BELT_STEP = { inch: 0.0254 / 4, metric: 0.005 } as const;

/** Widths that the power asks for by two rules that do not agree; for the motor that will be there once the open jobs are done. */
function widthsWanted(reader: FigureReader, { motor }: MakingContext): { readonly light: number; readonly heavy: number; readonly words: string } | undefined {
  const power = reader.find('motor.power|class.motor-power');
  const speed = reader.find('drive.belt-speed');
  const wrap = reader.find('drive.wrap');
  if (power === undefined || speed === undefined || wrap === undefined) return undefined;
  const wanted = (rule: 'single-1000' | 'single-800') => leatherBeltWidth(motor?.power ?? power.quantity.value, speed.quantity.value, wrap.quantity.value, rule);
  return { light: wanted('single-1000'), heavy: wanted('single-800'), words: motor !== undefined ? `the new motor, ${motor.words},` : power.estimate ? 'the usual power of the class' : 'the motor’s power' };
}

/** The old width, or what a new motor asks for by the lighter rule where that is more; never more than the pulley's face holds. */
function wideEnough(reader: FigureReader, old: Figure, face: Figure | undefined, context: MakingContext): Figure {
  const wanted = context.motor === undefined ? undefined : widthsWanted(reader, context)?.light;
  if (wanted === undefined || wanted <= old.quantity.value) return old;
  const step = BELT_STEP[context.system];
  const up = Math.ceil(wanted / step - 1e-6) * step;
  return { ...old, quantity: { ...old.quantity, value: face === undefined ? up : Math.max(old.quantity.value, Math.min(up, face.quantity.value)), uncertainty: 0 } };
}

/** Width that the power asks for by two rules, against the one that is taken. */
function widthNotes(reader: FigureReader, known: Known, width: Quantity, print: (value: number) => string, context: MakingContext): readonly string[] {
  const wanted = widthsWanted(reader, context);
  if (wanted === undefined) return [];
  const { light, heavy, words } = wanted;
  const leather = ['single-leather', 'double-leather'].includes(known.looks['belt.material']?.answer ?? '');
  return [`For ${words} ${leather ? '' : 'by the rules for leather, since this kind has none of its own here, '}single leather wants ${print(light)} by one rule, 1000 ft/min (5.1 m/s), and ${print(heavy)} by another, 800 ft/min (4.1 m/s); this one has ${print(width.value)}${width.value < light ? ', too little for either' : ''}.${leather ? '' : ' The maker of the belt has a table for its kind: that wins.'}`];
}

/** Which side of the belt runs on the pulley. */
function sideWords(answer: string | undefined): string {
  if (answer === 'rubber') return '';
  return answer === 'synthetic' ? ' Leather side to the pulley.' : ' Leather runs grain side to the pulley.';
}

function materialWords(answer: string | undefined): string {
  switch (answer) {
    case 'single-leather':
      return 'Single leather, oak tanned';
    case 'double-leather':
      return 'Double leather, oak tanned';
    case 'rubber':
      return 'Rubber and canvas, flat';
    case 'synthetic':
      return 'Synthetic flat belt, leather faced';
    default:
      return 'Flat belt, leather or leather-faced synthetic; nobody said what the old one was';
  }
}

function beltShape(d: number, D: number, c: number): Shape {
  const lean = Math.PI / 2 - openBeltWrap(d, D, c) / 2;
  const touch = (side: number) => [Math.sin(lean), side * Math.cos(lean)] as const;
  const runs = [1, -1].map((side) => {
    const [x, y] = touch(side);
    return line([(D / 2) * x, (D / 2) * y], [c + (d / 2) * x, (d / 2) * y]);
  });
  return {
    views: [{
      name: 'front', title: 'the run', marks: [circle([0, 0], D / 2), circle([c, 0], d / 2), ...cross([0, 0], D / 2), ...cross([c, 0], d / 2), ...runs],
      dimensions: [
        { kind: 'straight', of: 'centre-distance', from: [0, -D / 2], to: [c, -d / 2], side: 'below', row: 1 },
        { kind: 'straight', of: 'large-pulley', from: [0, -D / 2], to: [0, D / 2], side: 'left', row: 1, sign: 'Ø' },
        { kind: 'straight', of: 'small-pulley', from: [c, -d / 2], to: [c, d / 2], side: 'right', row: 1, sign: 'Ø' },
        { kind: 'leader', of: 'length', at: [c * 0.5, D * 0.25 + d * 0.25], toward: [1.5, 2.5] },
      ],
    }],
  };
}

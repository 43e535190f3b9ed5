import type { Quantity } from '../../methods/quantity/index.ts';
import { bowDraw, strapLonger } from '../linkage/index.ts';
import { printQuantity, type PrintSystem } from '../print-system.ts';
import type { Targeted } from './setting-line.ts';

type Lookup = (key: string) => Quantity | undefined;

const SOURCES = ['bhandari-springs', 'own-model'];

/** Whole sixteenths or millimetres, downwards: what somebody reads on a rule beside a running bow. */
const readable = (length: number, system: PrintSystem): number => {
  const step = system === 'inch' ? 0.0254 / 16 : 0.001;
  return Math.floor(length / step + 1e-6) * step;
};

/** How far the bow may flex in full stroke, by the flex that was read and what its leaves stand. */
export function bowTarget(known: Lookup, system: PrintSystem): Targeted {
  const draw = bowDraw(known);
  if (draw === undefined) return { missing: ['bow-spring.deflection', 'bow-spring.span', 'bow-spring.leaf-width', 'bow-spring.leaf-thickness', 'bow-spring.leaves'] };
  const most = readable(draw.most, system);
  const over = draw.over > 0 ? ' What was read is further: a new leaf set up so is bent as the cracked one was.' : '';
  return { target: { to: { dimension: 'length', value: most, uncertainty: 0 }, basis: 'worked-out', sentence: `Beyond ${printQuantity({ dimension: 'length', value: most, uncertainty: 0 }, system)} a leaf is bent further than it stands.${over} The whole change of its height in full stroke, straps and stroke together.`, sources: SOURCES }, missing: [] };
}

/** How long both straps are to be: the shorter one as read, let out by as much as the bow was drawn in too far. */
export function strapTarget(known: Lookup, system: PrintSystem): Targeted {
  const read = ['left', 'right'].flatMap((end) => known(`bow-spring.strap-length@${end}`) ?? []).sort((a, b) => a.value - b.value);
  const [shorter] = read;
  if (shorter === undefined) return { missing: ['bow-spring.strap-length@left', 'bow-spring.strap-length@right'] };
  const draw = bowDraw(known);
  const longer = draw === undefined ? 0 : strapLonger(draw);
  const length: Quantity = { ...shorter, value: shorter.value + longer, uncertainty: 0 };
  const print = (value: number): string => printQuantity({ dimension: 'length', value, uncertainty: 0 }, system);
  const sentence = longer === 0 ? 'As read, both alike: a strap only stretches, so that the shorter one counts.' : `The shorter one as read, ${print(shorter.value)}, and ${print(longer)} more, which is what the bow was drawn in too far; both alike. Read the flex again on the trial.`;
  return { target: { from: length, to: length, basis: 'worked-out', sentence, sources: SOURCES }, missing: draw === undefined ? ['bow-spring.deflection'] : [] };
}

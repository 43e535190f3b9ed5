import { readQuantity } from '../../methods/quantity/index.ts';

const THIRTY_SECOND = 0.0254 / 32;
/** How far from a mark a figure still stands on it, marks. */
const ON_IT = 0.01;

/** Where a length stands on a rule with thirty-seconds: whole inches, and the mark after them. Undefined where it stands on no mark. */
export function onTheRule(text: string): { readonly whole: number; readonly mark: number } | undefined {
  const read = readQuantity(text, { dimension: 'length', defaultUnit: 'in' });
  if (text.trim() === '' || !read.ok || read.quantity.value < 0) return undefined;
  const marks = Math.round(read.quantity.value / THIRTY_SECOND);
  if (Math.abs(read.quantity.value / THIRTY_SECOND - marks) > ON_IT) return undefined;
  return { whole: Math.floor(marks / 32), mark: marks % 32 };
}

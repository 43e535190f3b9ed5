import { clearedLetters } from './cleared-letters.ts';
import { printableText } from './printable-text.ts';

/** Inks of the drawing on white paper; the off-white of the sheet is the paper itself. */
const INKS: Readonly<Record<string, string>> = { paper: '#ffffff', ink: '#000000', chalk: '#b3261e', pencil: '#5b87b8' };
/** A CSS pixel, mm (CSS Values and Units, section 6.2). */
const PIXEL = 25.4 / 96;

/** A drawing as the typesetter understands it, and how large it wants to be. */
export interface PrintSvg {
  readonly svg: string;
  /** Width over height. */
  readonly aspect: number;
  /** Width in mm where the drawing states it, for drawings to scale. */
  readonly statedWidth: number | undefined;
}

/**
 * The print variant of a drawing made for the screen: page variables become inks, lines that keep their width on a screen
 * get that width at the size printed, and what is only for a pointer goes.
 * @param svg a whole SVG document with a viewBox
 * @param width width on paper, mm; the drawing's stated width where it has one
 */
export function printSvg(svg: string, width?: number): PrintSvg {
  const box = viewBoxOf(svg);
  const statedWidth = lengthOf(svg, 'width');
  const unitsPerPixel = (box.width / (width ?? statedWidth ?? 180)) * PIXEL;
  const inked = clearedLetters(inkVariables(svg), INKS['paper'] ?? '#ffffff');
  const scaled = inked.replace(/(<style[^>]*>)([\s\S]*?)(<\/style>)/gu, (_, open: string, rules: string, close: string) => open + scaleRules(rules, unitsPerPixel) + close)
    .replace(/<[a-z][^>]*vector-effect[^>]*>/gu, (tag) => scaleElement(tag, unitsPerPixel));
  const still = scaled.replace(/ (?:tabindex|role|aria-label|data-[a-z-]+)="[^"]*"/gu, '').replace(/>([^<]+)<\/text>/gu, (_, text: string) => `>${printableText(text)}</text>`);
  return { svg: still, aspect: box.width / box.height, statedWidth };
}

/** Resolves `var(--name, fallback)`, also one inside another. */
function inkVariables(svg: string): string {
  let text = svg;
  for (let depth = 0; depth < 4 && text.includes('var('); depth += 1) {
    text = text.replace(/var\(\s*--([a-z-]+)\s*(?:,\s*([^()]*(?:\([^()]*\))?[^()]*))?\)/gu, (_, name: string, fallback: string | undefined) => INKS[name] ?? fallback?.trim() ?? 'currentColor');
  }
  return text;
}

/** In a style sheet of ours every dash and every line with a fixed width is in pixels. */
function scaleRules(rules: string, unitsPerPixel: number): string {
  const fixed = rules.includes('non-scaling-stroke');
  return rules.replace(/\{([^}]*)\}/gu, (_, body: string) => `{${fixed && /non-scaling-stroke|stroke-dasharray/u.test(body) ? scaleDeclarations(body, unitsPerPixel) : body}}`);
}

function scaleDeclarations(body: string, unitsPerPixel: number): string {
  return body.replace(/(stroke-width|stroke-dasharray)\s*:\s*([^;]+)/gu, (_, name: string, value: string) => `${name}:${scaleNumbers(value, unitsPerPixel)}`).replace(/;?vector-effect\s*:\s*non-scaling-stroke/gu, '');
}

function scaleElement(tag: string, unitsPerPixel: number): string {
  if (!tag.includes('non-scaling-stroke')) return tag;
  return scaleDeclarations(tag.replace(/ vector-effect="non-scaling-stroke"/gu, ''), unitsPerPixel)
    .replace(/ (stroke-width|stroke-dasharray)="([^"]*)"/gu, (_, name: string, value: string) => ` ${name}="${scaleNumbers(value, unitsPerPixel)}"`);
}

const scaleNumbers = (text: string, by: number): string => text.replace(/(\d*\.?\d+)(?:px)?/gu, (_, number: string) => String(Math.round(Number(number) * by * 1000) / 1000));

function viewBoxOf(svg: string): { readonly width: number; readonly height: number } {
  const numbers = /<svg[^>]*\sviewBox="([^"]*)"/u.exec(svg)?.[1]?.trim().split(/[\s,]+/u).map(Number) ?? [];
  const [, , width = 0, height = 0] = numbers;
  if (!(width > 0 && height > 0)) throw new Error(`a drawing for paper needs a viewBox with a width and a height above nothing: ${JSON.stringify(numbers)}`);
  return { width, height };
}

/** A length of the outermost element, mm, where it is stated in mm or cm. */
function lengthOf(svg: string, name: 'width' | 'height'): number | undefined {
  const found = new RegExp(`<svg[^>]*\\s${name}="([0-9.]+)(mm|cm)"`, 'u').exec(svg);
  return found === null ? undefined : Number(found[1]) * (found[2] === 'cm' ? 10 : 1);
}

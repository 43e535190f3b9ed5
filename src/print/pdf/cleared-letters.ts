import { textWidth } from '../../views/index.ts';

/**
 * On a screen letters stand on a rim of paper, so that a line which passes under them does not cross them out. A typesetter
 * paints that rim over the letters and eats them: here each such text gets a piece of paper behind it in its place.
 */
export function clearedLetters(svg: string, paper: string): string {
  const classes = new Set<string>();
  const bare = svg.replace(/(<style[^>]*>)([\s\S]*?)(<\/style>)/gu, (_, open: string, rules: string, close: string) => open + rules.replace(/([^{}]*)\{([^}]*)\}/gu, (whole: string, selectors: string, body: string) => {
    if (!body.includes('paint-order')) return whole;
    for (const [, name = ''] of selectors.matchAll(/\.([\w-]+)(?: tspan)?(?=\s*(?:,|$))/gu)) classes.add(name);
    return `${selectors}{${body.split(';').filter((one) => !/^\s*(?:paint-order|stroke|vector-effect)/u.test(one)).join(';')}}`;
  }) + close);
  if (classes.size === 0) return svg;
  return bare.replace(/<text([^>]*)>([\s\S]*?)<\/text>/gu, (whole: string, attributes: string, inner: string) =>
    (/ class="([^"]*)"/u.exec(attributes)?.[1] ?? '').split(' ').some((name) => classes.has(name)) ? behind(attributes, inner.replace(/<[^>]*>/gu, ''), paper) + whole : whole);
}

/** Share of the letters' height above and below the line that they stand on. */
const ABOVE = 0.78;
const BELOW = 0.2;

function behind(attributes: string, text: string, paper: string): string {
  const number = (name: string): number => Number(new RegExp(` ${name}="([^"]*)"`, 'u').exec(attributes)?.[1]);
  const [x, y, size] = [number('x'), number('y'), number('font-size')];
  if (![x, y, size].every(Number.isFinite) || text.trim() === '') return '';
  const width = textWidth(text.replace(/&[^;]*;/gu, 'x'), size);
  const anchor = / text-anchor="(\w+)"/u.exec(attributes)?.[1];
  const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
  const turn = / transform="[^"]*"/u.exec(attributes)?.[0] ?? '';
  const round = (value: number): string => String(Math.round(value * 1000) / 1000);
  return `<rect x="${round(left)}" y="${round(y - size * ABOVE)}" width="${round(width)}" height="${round(size * (ABOVE + BELOW))}" fill="${paper}"${turn}/>`;
}

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5', '⅘': '4/5', '⅙': '1/6', '⅚': '5/6',
  '⅐': '1/7', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅑': '1/9', '⅒': '1/10',
};

/**
 * Returns what a person wrote, with every way of typing one sign made the same: vulgar fractions, dashes and minus signs, primes and
 * quotation marks, degree signs, middle dots, powers, wide and thin spaces, `+/-`. Nothing is judged here.
 * A vulgar fraction keeps a space before it, so that 1½ does not become eleven halves.
 */
export function plainText(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/²/g, '^2').replace(/³/g, '^3')
    .replace(/[″“”„‟〃]/g, '"').replace(/[′‘’‚‛´`ʹʼ]/g, "'")
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(/[‐‑‒–—―−﹣]/g, '-')
    .replace(/⁄|∕/g, '/')
    .replace(/[·⋅∙•×*]/g, '·')
    .replace(/μ/g, 'µ')
    .replace(/''/g, '"')
    .replace(/\+\s*\/\s*-|\+-|\bplus or minus\b/gi, '±')
    .replace(/\s+/g, ' ')
    .trim();
}

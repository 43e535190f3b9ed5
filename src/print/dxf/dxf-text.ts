const SIGNS: Readonly<Record<string, string>> = { 'Ø': '%%c', '±': '%%p', '°': '%%d', '−': '-', '’': "'", '≈': '~', '×': 'x' };

/** A text as drawing files carry it in plain ASCII: control codes for diameter, degree and plus-minus, `\U+` and four digits for the rest. */
export const dxfText = (words: string): string =>
  [...words.replaceAll('%', '%%%')].map((sign) => SIGNS[sign] ?? (sign >= ' ' && sign <= '~' ? sign : `\\U+${(sign.codePointAt(0) ?? 0x3f).toString(16).toUpperCase().padStart(4, '0')}`)).join('');

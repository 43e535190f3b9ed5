/** The digits of a plain decimal at the start of what is written; empty where something else stands there. */
export const readDigits = (text: string): string => /^\s*(\d*\.?\d*)\s*(?:in|thou|mm)?\s*$/.exec(text)?.[1] ?? '';

/**
 * What is written after one more key.
 * @param text as it stands; anything but a plain decimal with its unit is begun again
 * @param key a digit, `.` or `⌫`
 * @param unit written behind the digits
 */
export function pressDigit(text: string, key: string, unit: string): string {
  const held = readDigits(text);
  const next = key === '⌫' ? held.slice(0, -1) : key === '.' ? (held.includes('.') ? held : `${held === '' ? '0' : held}.`) : `${held === '0' ? '' : held}${key}`;
  return next === '' ? '' : `${next} ${unit}`;
}

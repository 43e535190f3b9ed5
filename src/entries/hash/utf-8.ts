/**
 * Bytes of a text in UTF-8. A surrogate without its partner becomes the replacement sign U+FFFD, as the standard
 * encoder does. Source: RFC 3629, section 3.
 * @param text any text
 */
export function utf8Bytes(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length * 3);
  let used = 0;
  for (const letter of text) {
    const raw = letter.codePointAt(0) ?? 0;
    const code = raw >= 0xd800 && raw <= 0xdfff ? 0xfffd : raw;
    if (code < 0x80) bytes[used++] = code;
    else if (code < 0x800) {
      bytes[used++] = 0xc0 | (code >> 6);
      bytes[used++] = 0x80 | (code & 63);
    } else if (code < 0x10000) {
      bytes[used++] = 0xe0 | (code >> 12);
      bytes[used++] = 0x80 | ((code >> 6) & 63);
      bytes[used++] = 0x80 | (code & 63);
    } else {
      bytes[used++] = 0xf0 | (code >> 18);
      bytes[used++] = 0x80 | ((code >> 12) & 63);
      bytes[used++] = 0x80 | ((code >> 6) & 63);
      bytes[used++] = 0x80 | (code & 63);
    }
  }
  return bytes.slice(0, used);
}

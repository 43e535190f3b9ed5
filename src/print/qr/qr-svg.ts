import QRCode from 'qrcode';

/** Quiet zone on each side, modules (ISO/IEC 18004). */
const QUIET = 4;
/** Longest address that still gives squares of a size that a phone reads from a small print. */
export const LONGEST_ADDRESS = 300;

/**
 * A QR code (ISO/IEC 18004, error correction M) as an SVG of black modules on white, one path, one user unit a module.
 * @param address text to encode; not empty, at most 300 characters
 * @returns the SVG, or undefined where the address is empty or too long to be read from a card
 */
export function qrSvg(address: string): string | undefined {
  if (address === '' || address.length > LONGEST_ADDRESS || /\p{Cs}/u.test(address)) return undefined;
  const { modules } = QRCode.create(address, { errorCorrectionLevel: 'M' });
  const side = modules.size + 2 * QUIET;
  let path = '';
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column) === 0) continue;
      let run = 1;
      while (column + run < modules.size && modules.get(row, column + run) !== 0) run += 1;
      path += `M${column + QUIET} ${row + QUIET}h${run}v1h${-run}z`;
      column += run;
    }
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges"><rect width="${side}" height="${side}" fill="#fff"/><path d="${path}" fill="#000"/></svg>`;
}

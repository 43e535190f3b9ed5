/** Whole inches and thirty-seconds as shop notation in lowest terms: 2 and 24 give `2 3/4 in`. */
export function composeFraction(whole: number, thirtySeconds: number): string {
  if (thirtySeconds === 0) return `${whole} in`;
  let top = thirtySeconds;
  let bottom = 32;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${whole === 0 ? '' : `${whole} `}${top}/${bottom} in`;
}

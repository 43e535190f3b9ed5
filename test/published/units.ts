// SI sizes of the units in which the sources print their figures. Written again here, so that a slip in the program's own conversions cannot hide.
export const mm = 1e-3;
export const MPa = 1e6;
export const GPa = 1e9;
export const kN = 1e3;
export const inch = 0.0254;
export const foot = 0.3048;
export const lbf = 4.4482216152605;
export const psi = 6894.757293168361;
export const ksi = 1e3 * psi;
export const hp = 745.6998715822702;
export const rpm = (2 * Math.PI) / 60;
export const feetPerMinute = foot / 60;
export const degree = Math.PI / 180;
export const micrometre = 1e-6;

/** The record if it is there and known; otherwise the test fails with what came instead. */
export const known = <T extends { readonly state: string }>(outcome: T): Extract<T, { readonly state: 'known' }> => {
  if (outcome.state !== 'known') throw new Error(`A known value was expected: ${JSON.stringify(outcome)}`);
  return outcome as Extract<T, { readonly state: 'known' }>;
};

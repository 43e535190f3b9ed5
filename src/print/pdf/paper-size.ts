/** Sizes of paper that everything prints on. */
export type Paper = 'letter' | 'a4';

/** Name that the typesetter knows, and width and height upright, mm. */
export const PAPER_SIZES: Readonly<Record<Paper, { readonly name: string; readonly width: number; readonly height: number }>> = {
  letter: { name: 'us-letter', width: 215.9, height: 279.4 },
  a4: { name: 'a4', width: 210, height: 297 },
};

/** A look whose answers say that a part is not there. */
interface LeftOut {
  readonly look: string;
  readonly answers: readonly string[];
  /** Not heeded where this other look was answered: what was seen of the part itself goes before. */
  readonly unlessSeen?: string;
}

const NO_CLUTCH: readonly LeftOut[] = [
  { look: 'clutch-facing.kind', answers: ['none'] },
  { look: 'drive-line.kind', answers: ['idler-belt', 'tyre-wheel'], unlessSeen: 'clutch-facing.kind' },
  { look: 'belt-idler.fitted', answers: ['yes'], unlessSeen: 'clutch-facing.kind' },
];

/**
 * Parts that not every hammer has. A belt that an idler tightens is the clutch itself, and so is a wheel pressed on a drum:
 * such a hammer has no facing, no pulley that runs loose on the shaft, and no yoke. One phase needs no converter.
 */
const LEFT_OUT: Readonly<Record<string, readonly LeftOut[]>> = {
  'clutch-facing': NO_CLUTCH,
  'clutch-pulley': NO_CLUTCH,
  shipper: NO_CLUTCH,
  brake: [{ look: 'brake.fitted', answers: ['none'] }],
  'belt-idler': [
    { look: 'belt-idler.fitted', answers: ['no'] },
    { look: 'drive-line.kind', answers: ['motor-flat-belt', 'motor-v-belt', 'countershaft', 'line-shaft', 'tyre-wheel'], unlessSeen: 'belt-idler.fitted' },
  ],
  'tyre-wheel': [{ look: 'drive-line.kind', answers: ['motor-flat-belt', 'motor-v-belt', 'countershaft', 'line-shaft', 'idler-belt', 'none'] }],
  'phase-converter': [
    { look: 'phase-converter.fitted', answers: ['none'] },
    { look: 'motor.phase', answers: ['single', 'three', 'direct-current'], unlessSeen: 'phase-converter.fitted' },
  ],
  'filler-plate': [{ look: 'filler-plate.state', answers: ['none'] }],
  'sow-block': [{ look: 'sow-block.fitted', answers: ['none-by-design'] }],
};

/** Answers by look, as far as anybody looked. */
export type AnswersOf = Readonly<Record<string, { readonly answer: string } | undefined>>;

/**
 * The look that says that this hammer has not got the part.
 * @param part id of the part; @param looks what was looked at on this hammer
 * @returns id of the look; undefined where the part is there, or where nobody looked
 */
export const saysLeftOut = (part: string, looks: AnswersOf): string | undefined =>
  LEFT_OUT[part]?.find(({ look, answers, unlessSeen }) => answers.includes(looks[look]?.answer ?? '') && (unlessSeen === undefined || looks[unlessSeen] === undefined))?.look;

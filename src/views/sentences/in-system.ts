import { inOtherUnits, type PrintSystem } from '../../derived/index.ts';
import { formatQuantity, readQuantity, type Dimension, type UnitName } from '../../methods/quantity/index.ts';

const NUMBER = String.raw`\d[\d,]*(?:\.\d+)?(?: \d+\/\d+)?|\d+\/\d+|\.\d+`;
const NUMBERED = new RegExp(String.raw`(?<![\w./])(${NUMBER})(?:( to | by | or | and | x |-)(${NUMBER}))? ?(inch(?:es)?|in|thou|ft|feet|lb|lbf|psi|ksi|hp)(?![\w·])(?! class)(?! \d)`, 'g');

interface Meaning {
  readonly dimension: Dimension;
  readonly reads: string;
  /** Units to print in, with the SI size from which each is used, the largest first. */
  readonly prints: readonly (readonly [from: number, unit: UnitName])[];
}
const LENGTH = [[1.5, 'm'], [0, 'mm']] as const;
const MEANINGS: Readonly<Record<string, Meaning>> = {
  in: { dimension: 'length', reads: 'in', prints: LENGTH }, inch: { dimension: 'length', reads: 'in', prints: LENGTH }, inches: { dimension: 'length', reads: 'in', prints: LENGTH },
  thou: { dimension: 'length', reads: 'thou', prints: LENGTH }, ft: { dimension: 'length', reads: 'ft', prints: LENGTH }, feet: { dimension: 'length', reads: 'ft', prints: LENGTH },
  lb: { dimension: 'mass', reads: 'lb', prints: [[0, 'kg']] }, lbf: { dimension: 'force', reads: 'lbf', prints: [[2000, 'kN'], [0, 'N']] },
  psi: { dimension: 'pressure', reads: 'psi', prints: [[0, 'MPa']] }, ksi: { dimension: 'pressure', reads: 'ksi', prints: [[0, 'MPa']] }, hp: { dimension: 'power', reads: 'hp', prints: [[0, 'kW']] },
};
/** Lengths that are said without a figure, as a person who measures in millimetres says them. */
const SAID: readonly (readonly [RegExp, string])[] = [
  [/\bten feet\b/g, 'three metres'], [/\bone foot\b/g, '300 mm'], [/\bone inch\b/gi, '25 mm'], [/\b((?:in|of|to) )a foot\b(?= of | round |[.,;)]|$)/g, '$1300 mm'], [/\bhalf an inch to an inch\b/gi, '13 to 25 mm'], [/\bhalf an inch\b/gi, '13 mm'], [/\ban inch\b/gi, '25 mm'], [/\ba quarter inch\b/gi, '6 mm'], [/\ba quarter of an inch\b/gi, '6 mm'],
  [/\bclearance per inch of shaft\b/gi, 'clearance for the shaft’s diameter'], [/\b(each|per) inch\b/gi, '$1 25 mm'], [/\bthousandths of an inch\b/gi, 'hundredths of a millimetre'],
];
/** Rounded to this share of the value: as finely as words are meant. */
const FINE = 0.05;

/**
 * Words with the shop's own units, for readers of the other system. Words are written in inches and pounds; a class such as `50 lb class` is a name and stays.
 * @param text sentences of the knowledge, not what somebody wrote at the machine
 */
export function inSystem(text: string, system: PrintSystem): string {
  return text.split(system === 'inch' ? METRIC_BESIDE : WRITTEN).map((part, index) => (index % 2 === 1 ? part : wordsIn(part, system))).join('');
}

/** What somebody wrote is quoted as he wrote it. */
const WRITTEN = /(\(written [^)]*\))/u;
/** A figure of the source's own units, behind that in the reader's. */
const METRIC_BESIDE = /((?<=\b(?:F|in|thou|psi|hp|lb|ft) )\([^)]*\)|\(written [^)]*\))/u;

function wordsIn(text: string, system: PrintSystem): string {
  if (system === 'inch') return text.replace(METRIC_WORDS, (whole: string, number: string, unit: string) => inInches(whole, number, unit));
  const figures = text.replace(NUMBERED, (whole: string, first: string, between: string | undefined, second: string | undefined, unit: string) => {
    const meaning = MEANINGS[unit];
    if (meaning === undefined) return whole;
    const values = [first, second].flatMap((one) => (one === undefined ? [] : [one.replaceAll(',', '')])).map((one) => readQuantity(`${one} ${meaning.reads}`, { dimension: meaning.dimension }));
    const sizes = values.flatMap((one) => (one.ok ? [Math.abs(one.quantity.value)] : []));
    if (sizes.length !== values.length) return whole;
    const most = Math.max(...sizes);
    const printed = meaning.prints.find(([from]) => most >= from)?.[1];
    if (printed === undefined) return whole;
    const least = Math.min(...sizes.filter((size) => size > 0));
    const [one = '', two] = sizes.map((value) => figure(value, least, meaning.dimension, printed));
    return two === undefined ? one : `${one.replace(/ \S+$/, '')}${between ?? ' to '}${two}`;
  });
  return SAID.reduce((said, [words, metric]) => said.replace(words, metric), figures);
}

/** The few figures that the knowledge says in metric units, for readers of inches. */
const METRIC_WORDS = /(?<![\w./])(\d+(?:\.\d+)?) (°C|MPa)(?![\w·])/gu;

function inInches(whole: string, number: string, unit: string): string {
  const reading = readQuantity(`${number} ${unit}`, { dimension: unit === 'MPa' ? 'pressure' : 'temperature' });
  if (!reading.ok) return whole;
  const { dimension, value } = reading.quantity;
  return formatQuantity({ dimension, value, uncertainty: unit === 'MPa' ? value / 20 : 5 }, { system: 'inch', doubt: false });
}

/** @param least the smallest figure that stands with it, SI: both ends of a range are rounded alike */
function figure(value: number, least: number, dimension: Dimension, unit: UnitName): string {
  if (!Number.isFinite(least)) return formatQuantity({ dimension, value, uncertainty: 0 }, { unit, doubt: false });
  const resolution = 10 ** Math.floor(Math.log10(least * FINE));
  return formatQuantity({ dimension, value: Math.round(value / resolution) * resolution, uncertainty: 0 }, { unit, doubt: false, resolution });
}

/** A figure that comes as `12 thou (0.305 ± 0.026 mm)` with the reader's own units first. */
export function ownUnitsFirst(shown: string, system: PrintSystem): string {
  const [, written = '', printed = ''] = /^([^()]+) \(([^()]+)\)$/.exec(shown) ?? [];
  return printed !== '' && inOtherUnits(written, system) && !inOtherUnits(printed, system) ? `${printed} (written ${written})` : shown;
}

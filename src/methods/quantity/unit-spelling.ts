import { DIMENSION_WORDS, type Dimension } from './dimension.ts';
import { UNITS, unitsFor, type Unit, type UnitName } from './units.ts';

/** Units in which small and capital letters mean a factor of a thousand million: never guessed from the wrong one. */
const CAPITALS_COUNT: ReadonlySet<UnitName> = new Set(['MN', 'mV', 'mA', 'mPa-s', 'kHz']);

const HARDNESS = 'write HRC from a conversion table for that steel, for scales of hardness do not convert exactly';

/** Spellings that mean different things to different people, with what to write instead. */
const NOT_PLAIN: Readonly<Record<string, string>> = {
  mil: 'write thou or mm, for a mil is a thousandth of an inch to some and a millimetre to others',
  mils: 'write thou or mm, for a mil is a thousandth of an inch to some and a millimetre to others',
  ton: 'write lb, kg or t, for a ton is 2000 lb, 2240 lb or 1000 kg',
  tons: 'write lb, kg or t, for a ton is 2000 lb, 2240 lb or 1000 kg',
  mPa: 'write MPa for megapascal',
  HB: HARDNESS, HBW: HARDNESS, BHN: HARDNESS, HV: HARDNESS, HRB: HARDNESS,
  cSt: 'write the dynamic viscosity in mPa·s, which is cSt times the density in g/cm³',
};

/** One unit text made plain: no full stops, one kind of joining mark, no spaces about strokes. */
const plainUnit = (text: string): string =>
  text.trim().replace(/\.(?=\s|$|\/|-)/g, '').replace(/\s*·\s*|\s*-\s*/g, '-').replace(/\s*\/\s*/g, '/').replace(/^-|-$/g, '').replace(/\s+/g, ' ').replace(/\^/g, '');

const forms = (text: string): readonly string[] => {
  const plain = plainUnit(text);
  return [plain, plain.replaceAll(' ', '-')];
};

/** The spellings of each unit made plain once, as they stand and without capitals. */
const PLAIN: ReadonlyMap<Unit, { readonly exact: ReadonlySet<string>; readonly folded: ReadonlySet<string> }> = new Map(Object.values(UNITS).map((unit) => {
  const exact = unit.spellings.map(plainUnit);
  return [unit, { exact: new Set(exact), folded: new Set(exact.map((one) => one.toLowerCase())) }];
}));

const spelled = (unit: Unit, text: string, fold: boolean): boolean => {
  const { exact, folded } = PLAIN.get(unit)!;
  return forms(text).some((form) => (fold ? folded.has(form.toLowerCase()) : exact.has(form)));
};

/** Returns the unit of the dimension that the text spells, or undefined. Capitals count only where they change the meaning. */
export function unitSpelled(text: string, dimension: Dimension): UnitName | undefined {
  if (NOT_PLAIN[plainUnit(text)] !== undefined) return undefined;
  const names = unitsFor(dimension);
  return names.find((name) => spelled(UNITS[name], text, false))
    ?? names.find((name) => !CAPITALS_COUNT.has(name) && spelled(UNITS[name], text, true));
}

/** Returns the best advice on a unit text that does not spell a unit of the dimension: what it is instead, or what was likely meant. */
export function unitAdvice(text: string, dimension: Dimension): string {
  const plain = plainUnit(text);
  const warned = NOT_PLAIN[plain] ?? NOT_PLAIN[plain.toLowerCase()];
  if (warned !== undefined) return `"${plain}" is not plain: ${warned}`;
  const other = (Object.keys(UNITS) as UnitName[]).find((name) => spelled(UNITS[name], text, false));
  if (other !== undefined) return `${plain} measures ${DIMENSION_WORDS[UNITS[other].dimensions[0]!]}, not ${DIMENSION_WORDS[dimension]}`;
  const near = nearestSpelling(plain, dimension);
  return `"${plain}" is not a unit that is known here${near === undefined ? '' : `; did you mean ${near}?`}`;
}

/** Returns a few units that would do, for the end of a sentence: `in, ft, thou, mm or m`. */
export function unitsThatDo(dimension: Dimension): string {
  const symbols = unitsFor(dimension).map((name) => UNITS[name].symbol).filter((symbol) => symbol !== '').slice(0, 7);
  return symbols.length < 2 ? (symbols[0] ?? 'no unit') : `${symbols.slice(0, -1).join(', ')} or ${symbols.at(-1)}`;
}

function nearestSpelling(text: string, dimension: Dimension): string | undefined {
  const ranked = unitsFor(dimension)
    .filter((name) => !CAPITALS_COUNT.has(name))
    .flatMap((name) => UNITS[name].spellings.filter((one) => one.length > 1))
    .map((one) => ({ one, far: distance(text.toLowerCase().slice(0, 24), one.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
  const best = ranked[0];
  return best !== undefined && best.far <= Math.max(1, Math.floor(best.one.length / 2)) ? best.one : undefined;
}

/** Number of letters to add, drop or change (Levenshtein). */
function distance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let line = 1; line <= a.length; line += 1) {
    const now = [line];
    for (let column = 1; column <= b.length; column += 1) {
      now.push(Math.min(above[column]! + 1, now[column - 1]! + 1, above[column - 1]! + (a[line - 1] === b[column - 1] ? 0 : 1)));
    }
    above = now;
  }
  return above[b.length]!;
}

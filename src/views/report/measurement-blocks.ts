import { atName, PARTS } from '../../hammer/index.ts';
import { takenAs, type Picture, type Value } from '../../derived/index.ts';
import { inSystem } from '../sentences/in-system.ts';
import { shownValue } from '../sentences/words.ts';
import type { Block, TableRow } from './block.ts';

/**
 * Everything that was read, and everything worked out from it: the last pages, to look things up in.
 * @param further values of the outlook: what they say of the blow goes before the quick estimate of the picture, so that one hammer has one blow
 */
export function measurementBlocks(picture: Picture, further: Picture['values'] = {}): readonly Block[] {
  const shown: Picture = { ...picture, values: Object.fromEntries(Object.entries(picture.values).map(([key, value]) => [key, key.startsWith('capacity.') ? (further[key] ?? value) : value])) };
  const values = Object.values(shown.values);
  const readings = inSurveyOrder(values.filter((value) => value.evidence.length > 0 && value.standing !== 'as-made' && value.formula === undefined));
  const made = inSurveyOrder(values.filter((value) => value.standing === 'as-made'));
  const worked = values.filter((value) => value.standing === 'worked-out' && value.outcome.state === 'known');
  return [
    { kind: 'heading', level: 2, text: 'Readings' },
    { kind: 'table', caption: 'As written by whoever took them; ± is the half-width of a 95 % interval', columns: ['What', 'As written', 'Taken as', 'How known, and when'], rows: readings.map((value) => readingRow(picture, value)), dense: true },
    ...(made.length === 0 ? [] : [{ kind: 'table', caption: 'As made', columns: ['What', 'As written', 'Taken as', 'From'], rows: made.map((value) => ({ cells: [placeWords(value), value.asWritten ?? '', takenAs(value, picture.system), value.words ?? ''] })), dense: true } as const]),
    { kind: 'heading', level: 2, text: 'Worked out from them' },
    { kind: 'table', caption: 'Consequences; an estimate rests on a figure that nobody read on this hammer', columns: ['What', 'Value', 'How'], rows: worked.map((value) => ({ cells: [placeWords(value), shownValue(shown, value.key), inSystem(value.formula ?? '', picture.system)] })), dense: true },
  ];
}

/** Readings in the order of a careful survey, part by part, so that a reader finds them where the hammer has them. */
function inSurveyOrder(values: readonly Value[]): readonly Value[] {
  const places = PARTS.flatMap((part) => part.places.map((place) => place.id));
  const rank = (value: Value): number => {
    const at = places.indexOf(value.key.split(/[@#]/)[0] ?? value.key);
    return at < 0 ? places.length : at;
  };
  return [...values].sort((a, b) => rank(a) - rank(b));
}

function readingRow(picture: Picture, value: Value): TableRow {
  const printed = takenAs(value, picture.system);
  const past = picture.known.history[value.key] ?? [];
  const parted = picture.known.contradictions.find((one) => one.key === value.key);
  const earlier = past.slice(0, -1).map((one) => `${one.asWritten} on ${one.when.slice(0, 10)}`);
  return { cells: [`${placeWords(value)}${value.words === undefined ? '' : ` (${value.words})`}`, value.asWritten ?? '', printed, `${value.standing}, ${value.when?.slice(0, 10) ?? 'no day'}${earlier.length === 0 ? '' : `; earlier ${earlier.join(', ')}`}${parted === undefined ? '' : `; ${parted.other.standing} ${parted.other.words} on ${parted.other.when.slice(0, 10)}, at odds`}`] };
}

const placeWords = (value: Value): string => {
  const at = value.key.split('#')[0]?.split('@')[1];
  return at === undefined || value.title.includes(at) ? value.title : `${value.title}, ${atName(at)}`;
};

/** What somebody told, which nobody checked. */
export function toldBlocks(picture: Picture): readonly Block[] {
  const told = picture.known.statements;
  return told.length === 0 ? [] : [
    { kind: 'heading', level: 2, text: 'Told, not seen' },
    { kind: 'list', ordered: false, items: told.map((one) => `${one.when.slice(0, 10)}, ${one.saidBy ?? one.by}: ${one.words}`) },
  ];
}

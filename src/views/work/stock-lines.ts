import { isOpen, type BuyLine, type Picture } from '../../derived/index.ts';
import { stockBesides, stockOf, stockWords, together, type Making, type PartKind } from '../../derived/making/index.ts';
import { beltSizes, motorSizes } from './bought-sizes.ts';

/** For each part that is drawn, the things to buy that it is cut from: the first of them that an open job asks for. */
const BOUGHT_AS: Readonly<Partial<Record<Making['kind'], readonly string[]>>> = {
  'lower-key': ['key-steel', 'lower-die-blank'], 'upper-key': ['key-steel', 'upper-die-blank'], 'filler-plate': ['filler-plate'], 'lower-die': ['lower-die-blank'], 'upper-die': ['upper-die-blank'], 'clutch-pulley-bushing': ['pulley-bush'],
  'crank-pin': ['crank-pin'], 'rod-bushing': ['rod-bush', 'crank-pin'], 'crosshead-pin': ['crosshead-bush'], 'crosshead-bushing': ['crosshead-bush'], 'toggle-pin': ['pin-set'], 'toggle-bushing': ['pin-set'], 'bow-leaf': ['spring-leaf'], 'bow-strap': ['strap-belting'],
  'bow-eye-pin': ['eye-bushes'], 'bow-eye-bushing': ['eye-bushes'], 'bow-clip-pin': ['eye-bushes'], 'bow-clip-bushing': ['eye-bushes'], 'helve-pin': ['pivot-bushes'], 'helve-bushing': ['pivot-bushes'], 'helve-cushion': ['cushions'],
  'treadle-pin': ['treadle-bushes'], 'treadle-bushing': ['treadle-bushes'], 'thrust-washer': ['thrust-washers'], belt: ['flat-belt'], 'coil-spring': ['coil-spring'], 'guide-shims': ['shim-stock'],
  'shim-retainer': ['retainer'], 'brake-band': ['brake-kit'], 'brake-lining': ['brake-lining'], 'head-bolts': ['head-bolts'], 'guide-bolts': ['guide-bolts'], 'cap-bolts': ['cap-bolts'], 'return-spring': ['return-spring'], 'spring-bolt': ['spring-bolt'], 'bow-clip': ['clip-bolts'],
  'toggle-links': ['link-pair'], 'toggle-arms': ['arm-pair'], 'connecting-rod': ['rod-stock'], 'shipper-joint': ['yoke-pins'],
};

/**
 * Behind each line to buy, what it must measure so that the drawn parts can be cut from it; where that is not known, what to
 * measure first. Never a size that is not worked out from the drawing.
 */
export function stockBehind(picture: Picture, makings: readonly Making[]): (line: BuyLine) => string {
  const partsOf = new Map(picture.worksheet.jobs.filter(isOpen).map((job) => [job.job, job.parts]));
  const asked = new Set([...partsOf.values()].flat().map((part) => part.id));
  const sayings = (ids: readonly string[]): string => {
    const here = makings.filter((making) => {
      const from = BOUGHT_AS[making.kind]?.find((id) => asked.has(id));
      return from !== undefined && ids.includes(from);
    });
    const stocks = here.flatMap((making) => (making.state === 'to-make' ? (stockOf(making, picture.system) ?? []) : []));
    const one = together(stocks);
    if (stocks.length > 1 && stocks.length === here.length && one.length === 1 && here.every((making) => making.state !== 'to-make' || stockBesides(making, picture.system).length === 0)) return `: ${stockWords(one[0]!, picture.system)}`;
    const said = here.flatMap((making) => sayingOf(picture, making));
    const other = elsewhere(ids);
    return said.length === 0 ? '' : `: ${said.length === 1 && other.length === 0 ? said[0]!.words : said.map((one) => `${one.of}, ${one.words}`).concat(other).join('; ')}`;
  };
  /** Parts that this line names too and that another line has, as a bush that a job of its own asks for. */
  const elsewhere = (ids: readonly string[]): readonly string[] => makings.flatMap((making) => {
    const named = BOUGHT_AS[making.kind] ?? [];
    const from = named.find((id) => asked.has(id));
    return from !== undefined && !making.kind.endsWith('-key') && !ids.includes(from) && named.some((id) => ids.includes(id)) ? [`${partName(making)} by its own line`] : [];
  });
  return (line) => {
    if (line.kind === 'work of others') return '';
    const parts = partsOf.get(line.job) ?? [];
    const motor = parts.some((part) => part.id === 'motor' && (line.kind === 'whole job' || part.words === line.words));
    if (motor) return motorSizes(picture, makings);
    return sayings(line.kind === 'part' ? parts.filter((part) => part.words === line.words).map((part) => part.id) : parts.map((part) => part.id));
  };
}

/** Ordered as drawn, and cut from nothing. */
const BY_ITS_SHEET: ReadonlySet<PartKind> = new Set(['coil-spring', 'guide-shims']);

interface Saying {
  readonly of: string;
  readonly words: string;
}

const partName = (making: Making): string => making.title.replace(/ \(.*\)$/u, '').replace(/^[A-Z]/u, (letter) => letter.toLowerCase());

function sayingOf(picture: Picture, making: Making): readonly Saying[] {
  const { system } = picture;
  const of = partName(making);
  if (making.state === 'not-known') return [{ of, words: `size not known; first measure ${[...new Set(making.missing.map((one) => one.what))].join(', ')}` }];
  if (making.state === 'cannot-be') return [{ of, words: 'size not known; the readings contradict one another' }];
  if (making.state === 'by-pattern') return [{ of, words: 'no size yet; what to read first stands under parts to make' }];
  if (making.state !== 'to-make') return [];
  if (making.kind === 'belt') return [{ of, words: beltSizes(picture, making) }];
  if (BY_ITS_SHEET.has(making.kind)) return [{ of, words: 'by its sheet' }];
  const stock = stockOf(making, system);
  if (stock !== undefined) return [{ of, words: [stockWords(stock, system), ...stockBesides(making, system)].join('; ') }];
  return [{ of, words: `size not known; first measure ${making.unknowns.length === 0 ? 'what its sheet leaves open' : [...new Set(making.unknowns.map((one) => one.what))].join(', ')}` }];
}

import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { paperFonts } from './paper-fonts.ts';
import { printableData } from './printable-text.ts';

/** A folder that need not exist: the typesetter sees only the files that it is handed. */
const WORKSPACE = '/tupwise-paper';
/** Above this many different signs without a letter, everything beyond Latin is written as codes at once. */
const MOST_UNKNOWN = 200;

/** What goes into one paper: the layout as Typst source, and the words as plain data, which are never read as layout. */
export interface PaperSource {
  readonly layout: string;
  readonly data: Readonly<Record<string, unknown>>;
  /** Drawings and photographs by the name that the data call them. */
  readonly files: ReadonlyMap<string, Buffer>;
  /** Data that set the paper closer or wider, in the order in which they are tried, where the last page would hold only a few lines. */
  readonly settings?: readonly Readonly<Record<string, unknown>>[];
}

/** mm from the upper edge: a last page that ends above this holds fewer than six lines or so. */
const FEW_LINES = 42;

let held: Promise<NodeCompiler> | undefined;

function theCompiler(): Promise<NodeCompiler> {
  held ??= paperFonts().then((fonts) => NodeCompiler.create({ workspace: WORKSPACE, fontArgs: [{ fontBlobs: [...fonts] }] }));
  return held;
}

/**
 * Sets one paper as PDF/UA-1: tagged, titled, fonts embedded. All texts reach the layout as data, so nothing that a person
 * wrote can act as layout. A sign that no font at hand can draw is written as its code, `[U+1F528]`.
 * @throws where the layout itself is refused: a mistake of ours
 */
export async function typeset(source: PaperSource): Promise<Buffer> {
  const compiler = await theCompiler();
  const unknown = new Set<string>();
  let all = false;
  for (;;) {
    const answer = setBest(compiler, source, codesFor(unknown, all));
    if (answer.pdf !== undefined) return answer.pdf;
    const fresh = refusedSigns(answer.refusal).filter((sign) => !unknown.has(sign));
    if (all || !answer.refusal.includes('PDF/UA-1 error: the text')) throw new Error(`the typesetter refused a paper: ${answer.refusal.slice(0, 2000)}`);
    for (const sign of fresh) unknown.add(sign);
    all = fresh.length === 0 || unknown.size > MOST_UNKNOWN;
  }
}

interface Answer { readonly pdf: Buffer | undefined; readonly refusal: string; /** Whether the last of several pages holds only a few lines. */ readonly few?: boolean }

/** The paper as it stands; where its last page would hold only a few lines, the first of its other settings whose last page does not. */
function setBest(compiler: NodeCompiler, source: PaperSource, replace: (text: string) => string): Answer {
  const plain = setOnce(compiler, source, replace);
  if (plain.few !== true) return plain;
  for (const setting of source.settings ?? []) {
    const other = setOnce(compiler, { ...source, data: { ...source.data, ...setting } }, replace);
    if (other.pdf !== undefined && other.few !== true) return other;
  }
  return plain;
}

function setOnce(compiler: NodeCompiler, { layout, data, files, settings }: PaperSource, replace: (text: string) => string): Answer {
  compiler.resetShadow();
  try {
    compiler.mapShadow(`${WORKSPACE}/data.json`, Buffer.from(JSON.stringify(printableData(data, replace))));
    for (const [name, bytes] of files) compiler.mapShadow(`${WORKSPACE}/${name}`, name.endsWith('.svg') ? Buffer.from(replace(bytes.toString())) : bytes);
    const result = compiler.compile({ mainFileContent: layout });
    const document = result.result;
    if (document === null) return { pdf: undefined, refusal: JSON.stringify(result.takeError()?.shortDiagnostics) };
    return { pdf: withoutSuspects(compiler.pdf(document, { pdfStandard: 'ua-1' })), refusal: '', few: settings !== undefined && endsEarly(compiler.query(document, { selector: '<end>', field: 'value' })) };
  } catch (refusal) {
    return { pdf: undefined, refusal: refusal instanceof Error ? refusal.message : String(refusal) };
  } finally {
    compiler.resetShadow();
    compiler.evictCache(0);
  }
}

/** @param found page and height of the paper's end, as the layout states them */
function endsEarly(found: unknown): boolean {
  const [page, height] = Array.isArray(found) && Array.isArray(found[0]) ? found[0].map(Number) : [];
  return page !== undefined && height !== undefined && page > 1 && height < FEW_LINES;
}

/** Some readers complain about `/Suspects false`, which is what holds where nothing is said (ISO 32000-1, table 321): blanks instead, at the same length. */
function withoutSuspects(pdf: Buffer): Buffer {
  const said = '/Suspects false';
  const at = pdf.lastIndexOf(said, undefined, 'latin1');
  if (at >= 0) pdf.fill(' ', at, at + said.length, 'latin1');
  return pdf;
}

/** Signs named in the complaint; printed there as a quoted text with `\u{...}` escapes, and quoted once more as a whole. */
function refusedSigns(refusal: string): readonly string[] {
  return [...refusal.replace(/\\(["\\])/gu, '$1').matchAll(/the text (?:contains the disallowed codepoint )?`"((?:[^"\\]|\\.)*)"`/gu)].flatMap(([, quoted = '']) =>
    [...quoted.replace(/\\u\{([0-9a-f]+)\}/gu, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16))).replace(/\\(["'\\])/gu, '$1')].filter((sign) => (sign.codePointAt(0) ?? 0) > 0x7e));
}

/** Writes signs as codes: those refused so far, or at the last try everything beyond the Latin letters that the typeface surely has. */
function codesFor(unknown: ReadonlySet<string>, all: boolean): (text: string) => string {
  if (!all && unknown.size === 0) return (text) => text;
  const code = (sign: string): string => `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;
  return (text) => (/[^\0-~]/u.test(text) ? [...text].map((sign) => (unknown.has(sign) || (all && !/[\0-~\u00a0-\u00ac\u00ae-\u017f\u200b\u2013-\u2026\u2044\u2212]/u.test(sign)) ? code(sign) : sign)).join('') : text);
}

/**
 * Whether the typesetter can unpack a picture.
 * @param name file name with its ending
 * @returns width over height, or undefined where it cannot
 */
export async function canSet(name: string, bytes: Buffer): Promise<number | undefined> {
  const compiler = await theCompiler();
  compiler.resetShadow();
  try {
    compiler.mapShadow(`${WORKSPACE}/${name}`, bytes);
    const layout = `#set page(width: auto, height: auto, margin: 0pt)\n#context { let size = measure(image("${name}")); [#metadata(str(size.width / size.height)) <aspect>] }`;
    const result = compiler.compile({ mainFileContent: layout });
    if (result.result === null) return undefined;
    const found: unknown = compiler.query(result.result, { selector: '<aspect>', field: 'value' });
    const aspect = Array.isArray(found) ? Number(found[0]) : Number.NaN;
    return aspect > 0 && Number.isFinite(aspect) ? aspect : undefined;
  } finally {
    compiler.resetShadow();
    compiler.evictCache(0);
  }
}

import { Hono, type Context } from 'hono';
import { outlook, pictureToday, type Picture, type PrintSystem } from '../derived/index.ts';
import { partsToMake, type PartToMake } from '../derived/making/index.ts';
import { instantMs, writeSurveyFile, type Entry } from '../entries/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { makingDxf } from '../print/dxf/index.ts';
import { logJson, partPdf } from '../print/hand-over/index.ts';
import { cardHtml, cardPdf, fontFace, reportHtml, reportPdfParts, wholeReport, withFont, type Paper, type Photographs } from '../print/index.ts';
import { START } from '../stores/index.ts';
import { elevation, limitsCard, OUTLOOK_IDS, outlookSheet, type MovingAsked, type ReportTree } from '../views/index.ts';
import { makingSheets } from '../views/making/index.ts';
import { calendarOf, drawnParts, handOverSheet, SHEET_IDS } from '../views/work/index.ts';
import type { ServerSettings } from './server-settings.ts';
import { wayAsked } from './way-asked.ts';

/** A hammer's log and what follows from it, and how the paper was asked for. */
interface Asked {
  readonly found: Picture;
  readonly entries: readonly Entry[];
  readonly paper: Paper;
  /** Door and floor on the way of a move. */
  readonly moving: MovingAsked | undefined;
}

/** Papers of one hammer, made afresh from the log at each request. The choices are `?units=metric` and `?paper=a4`, and for a move `?door` and `?floor`, SI. */
export function paperRoutes({ store, now, version }: ServerSettings): Hono {
  const routes = new Hono();
  const program = version === undefined ? {} : { program: version };
  const withPicture = async (context: Context, answer: (asked: Asked) => Response | Promise<Response>): Promise<Response> => {
    const hammer = context.req.param('hammer') ?? '';
    const asOf = now();
    const until = instantMs(asOf) ?? Number.POSITIVE_INFINITY;
    const entries = (await store.readSince(START)).entries.filter((entry) => entry.hammer === hammer && (instantMs(entry.at) ?? Number.POSITIVE_INFINITY) <= until);
    const system: PrintSystem = context.req.query('units') === 'metric' ? 'metric' : 'inch';
    const found = pictureToday(entries, knowledge, asOf, 1, system);
    const paper = (context.req.query('paper') ?? (system === 'metric' ? 'a4' : 'letter')).toLowerCase();
    if (found === undefined) return context.text(`No hammer of this id is in the yard: ${hammer}\n`, 404);
    if (paper !== 'a4' && paper !== 'letter') return context.text(`No such paper is printed; letter or A4: ${paper}\n`, 400);
    return answer({ found, entries, paper, moving: wayAsked(context.req.query('door'), context.req.query('floor')) });
  };
  const withPart = (context: Context, answer: (asked: Asked, part: PartToMake) => Response | Promise<Response>): Promise<Response> =>
    withPicture(context, (asked) => {
      const kind = context.req.param('part') ?? '';
      const part = drawnParts(partsToMake(asked.found)).find((one) => one.id === kind);
      return part === undefined ? context.text(`No open job asks for a drawing of this part: ${kind}\n`, 404) : answer(asked, part);
    });
  const photographs: Photographs = async (sha256) => store.getBlob(sha256);

  const sheet = (id: string, tree: (asked: Asked) => ReportTree): void => {
    routes.get(`/:hammer/${id}`, (context) => withPicture(context, async (asked) => context.html(reportHtml(tree(asked), { fontFace: await fontFace() }))));
    routes.get(`/:hammer/${id}.pdf`, (context) => withPicture(context, (asked) => pdfInParts(asked.found, id, reportPdfParts(tree(asked), { paper: asked.paper, photographs }))));
  };
  sheet('report', ({ found }) => wholeReport(found, knowledge, program));
  routes.get('/:hammer/card', (context) => withPicture(context, async ({ found }) => context.html(cardHtml(limitsCard(found), { fontFace: await fontFace() }))));
  routes.get('/:hammer/card.pdf', (context) => withPicture(context, async ({ found, paper }) => pdf(found, 'limits-card', await cardPdf(limitsCard(found), { paper }))));
  routes.get('/:hammer/elevation.svg', (context) => withPicture(context, async ({ found }) => svg(withFont(elevation(found), await fontFace()))));
  routes.get('/:hammer/survey.yaml', (context) => withPicture(context, ({ found, entries }) => kept(found, 'survey.yaml', 'application/yaml; charset=utf-8', writeSurveyFile(entries))));
  routes.get('/:hammer/log.json', (context) => withPicture(context, ({ found, entries }) => kept(found, 'log.json', 'application/json; charset=utf-8', logJson(found, entries))));
  routes.get('/:hammer/calendar.ics', (context) => withPicture(context, ({ found, entries }) => kept(found, 'calendar.ics', 'text/calendar; charset=utf-8', calendarOf(found, entries))));
  for (const id of SHEET_IDS) sheet(id, ({ found, entries }) => handOverSheet(id, { picture: found, entries, knowledge }));
  for (const id of OUTLOOK_IDS) sheet(id, ({ found, moving }) => outlookSheet(id, { picture: found, outlook: outlook(found, found.provenance.seed), knowledge, ...program, ...(moving === undefined ? {} : { moving }) }));
  routes.get('/:hammer/part/:part/drawing.pdf', (context) => withPart(context, async ({ found, paper }, part) => pdf(found, part.id, await partPdf(found, part, paper))));
  routes.get('/:hammer/part/:part/drawing.dxf', (context) => withPart(context, ({ found }, part) => kept(found, `${part.id}.dxf`, 'image/vnd.dxf', makingDxf(found, part))));
  routes.get('/:hammer/part/:part/drawing.svg', (context) => withPart(context, async ({ found, paper }, part) => {
    const sheets = makingSheets(found, part, { paper: paper === 'a4' ? 'A4' : 'letter' });
    const number = context.req.query('sheet') ?? '1';
    const sheet = /^\d$/.test(number) ? sheets[Number(number) - 1] : undefined;
    return sheet === undefined ? context.text(`The drawing of this part has sheets 1 to ${sheets.length}; one of them: ${number}\n`, 404) : svg(withFont(sheet, await fontFace()));
  }));
  routes.get('/:hammer/*', (context) => context.text(`There is no such paper: ${context.req.path.split('/').slice(3).join('/')}\n`, 404));
  return routes;
}

const plainTag = (found: Picture): string => found.known.identity.tag.replace(/[^A-Za-z0-9-]+/g, '-');

const pdfHeaders = (found: Picture, name: string): Record<string, string> => ({ 'content-type': 'application/pdf', 'content-disposition': `inline; filename="${plainTag(found)}-${name}.pdf"` });

const pdf = (found: Picture, name: string, bytes: Uint8Array): Response => new Response(new Uint8Array(bytes), { headers: pdfHeaders(found, name) });

/** A paper that is sent piece by piece. The first piece is waited for, so that what cannot be set is an error and not half a file. */
async function pdfInParts(found: Picture, name: string, parts: AsyncGenerator<Uint8Array, void, undefined>): Promise<Response> {
  let waiting: IteratorResult<Uint8Array, void> | undefined = await parts.next();
  return new Response(new ReadableStream<Uint8Array>({
    pull: async (stream) => {
      const part = waiting ?? await parts.next();
      waiting = undefined;
      if (part.done === true) stream.close();
      else stream.enqueue(part.value);
    },
    cancel: async () => { await parts.return(); },
  }), { headers: pdfHeaders(found, name) });
}

const svg = (drawing: string): Response => new Response(drawing, { headers: { 'content-type': 'image/svg+xml' } });

/** A file that the browser keeps rather than shows. */
const kept = (found: Picture, name: string, type: string, text: string): Response =>
  new Response(text, { headers: { 'content-type': type, 'content-disposition': `attachment; filename="${name === 'survey.yaml' ? `${plainTag(found)}.yaml` : `${plainTag(found)}-${name}`}"` } });

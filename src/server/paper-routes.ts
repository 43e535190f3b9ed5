import { Hono, type Context } from 'hono';
import { picture, type Picture, type PrintSystem } from '../derived/index.ts';
import { writeSurveyFile, type Entry } from '../entries/index.ts';
import { knowledge } from '../knowledge/index.ts';
import { cardHtml, fontFace, reportHtml } from '../print/index.ts';
import { START } from '../stores/index.ts';
import { elevation, limitsCard, reportTree } from '../views/index.ts';
import type { ServerSettings } from './server-settings.ts';

/** Papers of one hammer, made afresh from the log at each request. */
export function paperRoutes({ store, now }: ServerSettings): Hono {
  const routes = new Hono();
  const withPicture = async (context: Context, answer: (found: Picture, entries: readonly Entry[]) => Response | Promise<Response>): Promise<Response> => {
    const hammer = context.req.param('hammer') ?? '';
    const entries = (await store.readSince(START)).entries.filter((entry) => entry.hammer === hammer);
    const system: PrintSystem = context.req.query('units') === 'metric' ? 'metric' : 'inch';
    const found = picture(entries, knowledge, now(), 1, system);
    return found === undefined ? context.text(`No hammer of this id is in the yard: ${hammer}\n`, 404) : answer(found, entries);
  };
  routes.get('/:hammer/report', (context) => withPicture(context, async (found) => context.html(reportHtml(reportTree(found, knowledge, { elevation: elevation(found) }), { fontFace: await fontFace() }))));
  routes.get('/:hammer/card', (context) => withPicture(context, async (found) => context.html(cardHtml(limitsCard(found), { fontFace: await fontFace() }))));
  routes.get('/:hammer/elevation.svg', (context) => withPicture(context, (found) => context.body(elevation(found), 200, { 'content-type': 'image/svg+xml' })));
  routes.get('/:hammer/survey.yaml', (context) => withPicture(context, (found, entries) => context.body(writeSurveyFile(entries), 200, { 'content-type': 'application/yaml; charset=utf-8', 'content-disposition': `attachment; filename="${found.known.identity.tag.replace(/[^A-Za-z0-9-]+/g, '-')}.yaml"` })));
  return routes;
}

import { Hono } from 'hono';
import { DamagedBlob, type Store } from '../stores/index.ts';

const KEPT = /^(image\/(jpeg|png|webp|heic|heif)|audio\/[a-z0-9.+-]+|video\/[a-z0-9.+-]+)$/;

/** Photographs and recordings by SHA-256. Only pictures and sounds are kept, so that nothing stored here can run as a page. */
export function blobRoutes(store: Store): Hono {
  const routes = new Hono();
  routes.post('/', async (context) => {
    const mediaType = (context.req.header('content-type') ?? '').split(';')[0]?.trim() ?? '';
    if (!KEPT.test(mediaType)) return context.json({ problems: [{ field: 'file', value: mediaType, message: 'this kind of file is not kept', expected: 'a photograph (JPEG, PNG, WebP, HEIC) or a recording' }] }, 415);
    const bytes = new Uint8Array(await context.req.arrayBuffer());
    if (bytes.length === 0) return context.json({ problems: [{ field: 'file', value: '', message: 'the file is empty', expected: 'a photograph or a recording' }] }, 422);
    return context.json({ sha256: await store.putBlob(bytes, mediaType) });
  });
  routes.get('/:sha256{[0-9a-f]{64}}', async (context) => {
    try {
      const blob = await store.getBlob(context.req.param('sha256'));
      if (blob === undefined) return context.notFound();
      return new Response(new Uint8Array(blob.bytes), { headers: { 'content-type': blob.mediaType, 'cache-control': 'private, max-age=31536000, immutable' } });
    } catch (failure) {
      if (failure instanceof DamagedBlob) return context.text(`${failure.message}\n`, 500);
      throw failure;
    }
  });
  return routes;
}

import { closeSync, fsyncSync, openSync } from 'node:fs';
import type { PGlite } from '@electric-sql/pglite';
import { NodeFS } from '@electric-sql/pglite/nodefs';

type EngineOptions = Parameters<NodeFS['init']>[1];

/** The parts of the compiled engine's insides that syncing leans on. */
interface Insides {
  readonly NODEFS?: { readonly stream_ops?: Record<string, unknown>; realPath?(node: unknown): string };
}

/**
 * The embedded engine's files with a real fsync. As it comes, the engine asks for none and its file layer drops any,
 * so that it outlasts a kill but not a power cut.
 */
export class SyncingNodeFS extends NodeFS {
  /** How many times the disk was made to hold what it was given. */
  syncs = 0;

  override async init(pg: PGlite, options: EngineOptions): Promise<{ emscriptenOpts: EngineOptions }> {
    const { emscriptenOpts } = await super.init(pg, options);
    const hook = (insides: unknown): void => {
      const files = (insides as Insides).NODEFS;
      if (files?.stream_ops === undefined || files.realPath === undefined || !('write' in files.stream_ops))
        throw new Error('the embedded database has no place for the fsync hook any more; only the version pinned in package.json may be used');
      files.stream_ops['fsync'] = (stream: { nfd?: number; node: unknown }): number => {
        this.syncs += 1;
        if (stream.nfd !== undefined) fsyncSync(stream.nfd);
        else syncByPath(files.realPath!(stream.node));
        return 0;
      };
    };
    return { emscriptenOpts: { ...emscriptenOpts, preRun: [...(emscriptenOpts.preRun ?? []), hook] as never } };
  }
}

/** A folder is opened by the engine without a descriptor of its own. */
function syncByPath(path: string): void {
  const descriptor = openSync(path, 'r');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

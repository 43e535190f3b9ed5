// Which room may import which: the picture of the house that the direction tests hold.

/** For each room the rooms that it may import. Nothing else may be imported from another room. */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  methods: [],
  hammer: ['methods'],
  entries: ['methods', 'hammer'],
  knowledge: ['methods', 'hammer'],
  derived: ['methods', 'hammer', 'entries', 'knowledge'],
  views: ['methods', 'hammer', 'entries', 'knowledge', 'derived'],
  print: ['methods', 'hammer', 'entries', 'knowledge', 'derived', 'views'],
  stores: ['entries'],
  'sound-files': ['methods'],
  server: ['methods', 'hammer', 'entries', 'knowledge', 'derived', 'views', 'print', 'stores', 'sound-files'],
  cli: ['methods', 'hammer', 'entries', 'knowledge', 'derived', 'views', 'print', 'stores', 'sound-files', 'server'],
  app: ['methods', 'hammer', 'entries', 'knowledge', 'derived', 'views', 'stores', 'sound-files'],
};

/** Rooms without input, output, clock or chance of their own. */
export const CORE: readonly string[] = ['methods', 'hammer', 'entries', 'knowledge', 'derived', 'views'];

/** Inside these rooms the smaller ones stand in order: each may import only those before it, by their index. */
export const INNER_ORDER: Readonly<Record<string, readonly string[]>> = {
  methods: ['quantity', 'numerics', 'integrate', 'signal', 'chance', 'elements', 'forming', 'ground', 'power', 'ordering'],
  derived: [
    'survey',
    'stack',
    'linkage',
    'seat',
    'spring',
    'journals',
    'motion',
    'drive',
    'sound',
    'capacity',
    'moving',
    'ground',
    'power',
    'oiling',
    'noise',
    'condition',
    'diagnosis',
    'duty',
    'worksheet',
    'upkeep',
    'making',
  ],
};

/** Files of `derived` that see all of its rooms, and into them; no room inside imports them. */
export const SEES_ALL: readonly string[] = ['src/derived/picture.ts', 'src/derived/outlook.ts', 'src/derived/index.ts'];

/** Packages by room. A trailing `/` stands for everything below. `entries/survey-file` is a room of its own in this. */
export const MAY_USE: Readonly<Record<string, readonly string[]>> = {
  methods: [],
  hammer: [],
  entries: [],
  'entries/survey-file': ['yaml'],
  knowledge: [],
  derived: [],
  views: ['qrcode'],
  print: ['node:', 'qrcode', '@myriaddreamin/typst-ts-node-compiler', '@tarikjabiri/dxf'],
  stores: ['node:', 'pg', '@electric-sql/pglite', '@electric-sql/pglite/'],
  'sound-files': ['node:', '@audio/decode-amr'],
  server: ['node:', 'hono', 'hono/', '@hono/node-server', '@hono/node-server/'],
  cli: ['node:', 'commander'],
  app: ['svelte', 'svelte/', '@fontsource/', 'qrcode'],
};

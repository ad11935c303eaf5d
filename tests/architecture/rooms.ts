/** Which room may import which, and which packages: the one place that says so. */

export interface Allowed {
  /** Rooms, or path prefixes where only a part of a room is open. The room itself is always allowed. */
  readonly rooms: readonly string[];
  /** Packages; `node:*` allows every module of Node. */
  readonly packages: readonly string[];
}

const BELOW_COMMANDS = [
  'units',
  'reply',
  'text',
  'hazards',
  'layout',
  'trim',
  'prep',
  'figures',
  'workers',
  'input',
  'handbook',
  'language',
  'project',
  'accounts',
  'chat',
  'drawing',
];
const PLATFORMS = ['platforms/discord', 'platforms/slack', 'platforms/terminal', 'platforms/web'];
const ALL = [...BELOW_COMMANDS, 'commands', 'storage', 'documents', 'platforms', ...PLATFORMS];
/** What platforms and the session that they share may import. */
const SHARED = [
  'src/storage/types.ts',
  'src/input/command-shape.ts',
  'src/input/reading.ts',
  'accounts',
  'chat',
  'reply',
  'text',
  'drawing',
  'workers',
];
const PLATFORM = [...SHARED, 'platforms'];

/** Rooms from the leaves up, each importing only rooms above it in this list; `main` alone may import all, and nobody imports it. */
export const ROOMS: Readonly<Record<string, Allowed>> = {
  units: { rooms: [], packages: [] },
  reply: { rooms: [], packages: [] },
  text: { rooms: ['reply'], packages: [] },
  hazards: { rooms: [], packages: [] },
  layout: { rooms: ['units'], packages: ['clipper2-ts'] },
  trim: { rooms: ['units', 'layout'], packages: [] },
  prep: { rooms: ['units', 'layout'], packages: [] },
  figures: { rooms: ['units', 'reply', 'layout', 'trim', 'prep'], packages: [] },
  workers: { rooms: ['layout', 'trim'], packages: ['highs', 'piscina', 'node:*'] },
  input: {
    rooms: ['units', 'reply', 'text', 'hazards', 'layout', 'trim', 'prep', 'workers'],
    packages: ['zod', 'mathjs', 'fraction.js', 'fastest-levenshtein', 'node:module'],
  },
  project: {
    rooms: ['units', 'reply', 'text', 'hazards', 'figures', 'input', 'src/storage/types.ts'],
    packages: ['zod'],
  },
  handbook: { rooms: ['units', 'reply', 'text', 'figures', 'input'], packages: [] },
  language: {
    rooms: ['units', 'reply', 'text', 'hazards', 'layout', 'workers', 'input', 'project'],
    packages: ['fastest-levenshtein', 'node:*'],
  },
  accounts: { rooms: ['text', 'hazards', 'input', 'project', 'src/storage/types.ts'], packages: ['zod', 'node:*'] },
  chat: {
    rooms: [
      'reply',
      'text',
      'hazards',
      'figures',
      'workers',
      'input',
      'handbook',
      'language',
      'project',
      'accounts',
      'src/storage/types.ts',
    ],
    packages: ['zod', 'fastest-levenshtein', 'node:*'],
  },
  drawing: {
    rooms: ['units', 'reply', 'text', 'layout', 'trim', 'prep', 'workers', 'input'],
    packages: ['@resvg/resvg-js', 'piscina', 'dejavu-fonts-ttf', 'fontkit', 'node:*'],
  },
  commands: { rooms: [...BELOW_COMMANDS, 'src/storage/types.ts'], packages: ['zod', 'fastest-levenshtein'] },
  storage: {
    rooms: [],
    packages: ['keyv', 'lmdb', 'pg', '@keyv/postgres', '@keyv/redis', 'rate-limiter-flexible', 'node:*'],
  },
  documents: {
    rooms: ['reply', 'text', 'drawing', 'workers', 'input', 'chat'],
    packages: ['pdfkit', 'csv-stringify', 'piscina', 'node:*'],
  },
  platforms: { rooms: SHARED, packages: ['node:*'] },
  'platforms/discord': {
    rooms: PLATFORM,
    packages: ['discord.js', 'discord-interactions', 'zod', 'undici', 'node:*'],
  },
  'platforms/slack': { rooms: PLATFORM, packages: ['@slack/bolt', '@slack/oauth', 'zod', 'node:*'] },
  'platforms/terminal': { rooms: PLATFORM, packages: ['string-width', 'node:*'] },
  'platforms/web': { rooms: [...PLATFORM, 'handbook'], packages: ['hono', 'rate-limiter-flexible', 'node:*'] },
  server: {
    rooms: ALL,
    packages: ['zod', 'hono', '@hono/node-server', 'fastest-levenshtein', 'pino', 'prom-client', 'node:*'],
  },
  main: { rooms: [...ALL, 'server'], packages: ['node:*'] },
  bench: {
    rooms: [
      ...ALL,
      'server',
      'tests/outside/',
      'tests/golden/',
      'tests/language/',
      'tests/chat/asked.ts',
      'tests/reading/cpu.ts',
      'tests/chat/asked.ts',
      'tests/discord/',
      'tests/slack/',
      'tests/web/',
      'tests/server/',
    ],
    packages: ['lmdb', 'pg', '@keyv/redis', 'discord.js', '@slack/bolt', 'node:*'],
  },
  tools: { rooms: [...ALL, 'server'], packages: ['dejavu-fonts-ttf', 'node:*'] },
};

/** The room of a file: its folder under src (a platform is a room of its own), or the top folder; undefined for a loose file. */
export function roomOf(path: string): string | undefined {
  if (path === 'src/main.ts') return 'main';
  if (path.startsWith('tests/bench/')) return 'bench';
  if (path.startsWith('deploy/tools/')) return 'tools';
  const [top, second, third, ...deeper] = path.split('/');
  if (top !== 'src') return second === undefined ? undefined : top;
  if (third === undefined) return undefined;
  if (second !== 'platforms') return second;
  return deeper.length > 0 ? `${second}/${third}` : second;
}

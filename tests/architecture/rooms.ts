/** Which room may import which, and which packages: the table that DEVELOPERS.md shows. */

export interface Allowed {
  /** Rooms, or path prefixes where only a part of a room is open. The room itself is always allowed. */
  readonly rooms: readonly string[];
  /** Packages; `node:*` allows every module of Node. */
  readonly packages: readonly string[];
}

const BELOW_COMMANDS = [
  'queue',
  'core',
  'reply',
  'words',
  'trade',
  'hazards',
  'measure',
  'solve',
  'draw',
  'project',
  'bot',
];
const ALL = [...BELOW_COMMANDS, 'commands', 'store', 'sheet', 'discord', 'slack', 'terminal', 'web', 'host'];
const PLATFORM = ['queue', 'src/store/types.ts', 'src/measure/command-shape.ts', 'bot', 'reply', 'words', 'draw'];

/** Rooms in the order of the path that a message takes back; `main` alone may import all, and nobody imports it. */
export const ROOMS: Readonly<Record<string, Allowed>> = {
  queue: { rooms: [], packages: ['node:*'] },
  core: { rooms: [], packages: ['clipper2-ts'] },
  reply: { rooms: [], packages: [] },
  words: { rooms: ['reply'], packages: [] },
  trade: { rooms: ['core', 'reply'], packages: [] },
  measure: {
    rooms: ['queue', 'core', 'reply', 'words', 'hazards'],
    packages: ['zod', 'mathjs', 'fastest-levenshtein', 'node:module'],
  },
  hazards: { rooms: [], packages: [] },
  draw: {
    rooms: ['queue', 'core', 'reply', 'words', 'src/measure/say', 'src/measure/reading.ts'],
    packages: ['@resvg/resvg-js', 'piscina', 'dejavu-fonts-ttf', 'node:*'],
  },
  solve: { rooms: ['queue', 'core'], packages: ['highs', 'piscina', 'node:*'] },
  project: {
    rooms: ['core', 'reply', 'words', 'trade', 'hazards', 'measure', 'src/store/types.ts'],
    packages: ['zod'],
  },
  bot: {
    rooms: ['src/store/types.ts', 'queue', 'reply', 'words', 'hazards', 'measure', 'trade', 'project'],
    packages: ['zod', 'fastest-levenshtein', 'node:*'],
  },
  commands: { rooms: BELOW_COMMANDS, packages: ['zod', 'fastest-levenshtein'] },
  store: {
    rooms: ['src/bot/ports.ts', 'project'],
    packages: ['keyv', 'lmdb', 'pg', '@keyv/postgres', '@keyv/redis', 'rate-limiter-flexible', 'node:*'],
  },
  sheet: {
    rooms: ['queue', 'reply', 'words', 'draw', 'src/bot/sheet.ts', 'src/bot/handed-files.ts', 'src/measure/zone.ts'],
    packages: ['pdfkit', 'csv-stringify', 'piscina', 'node:*'],
  },
  discord: {
    rooms: [...PLATFORM, 'src/measure/reading.ts'],
    packages: [
      'discord.js',
      '@discordjs/core',
      '@discordjs/rest',
      'discord-api-types',
      'discord-interactions',
      'node:*',
    ],
  },
  slack: { rooms: PLATFORM, packages: ['@slack/bolt', '@slack/oauth', 'zod', 'node:*'] },
  terminal: { rooms: PLATFORM, packages: ['node:*'] },
  web: { rooms: PLATFORM, packages: ['hono', 'rate-limiter-flexible', 'node:*'] },
  host: {
    rooms: ['src/bot/ports.ts', 'src/bot/request.ts', 'src/store/types.ts'],
    packages: ['zod', 'hono', '@hono/node-server', 'fastest-levenshtein', 'pino', 'prom-client', 'node:*'],
  },
  wiring: { rooms: ALL, packages: ['node:*'] },
  main: { rooms: [...ALL, 'wiring'], packages: ['node:*'] },
  bench: {
    rooms: [
      ...ALL,
      'tests/outside/',
      'tests/golden/',
      'tests/plain/',
      'tests/reading/',
      'tests/discord/',
      'tests/slack/',
      'tests/web/',
      'tests/wiring/',
    ],
    packages: [
      'lmdb',
      'pg',
      '@keyv/redis',
      'discord.js',
      '@discordjs/rest',
      'discord-api-types',
      '@slack/bolt',
      'node:*',
    ],
  },
  scripts: { rooms: [...ALL, 'wiring'], packages: ['node:*'] },
};

/** The room of a file: its folder under src, or the top folder; undefined for a loose file. */
export function roomOf(path: string): string | undefined {
  if (path === 'src/main.ts') return 'main';
  const [top, second, ...deeper] = path.split('/');
  if (top !== 'src') return second === undefined ? undefined : top;
  return deeper.length > 0 ? second : undefined;
}

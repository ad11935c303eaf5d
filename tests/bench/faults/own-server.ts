/** Servers of one's own for a fault test: started in a temporary folder on a free port, stopped as by a crash, and cleared away. */

import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface OwnServer {
  readonly url: string;
  readonly port: number;
  /** Starts it, or starts it again; resolves when it takes connections. */
  start(): Promise<void>;
  /** Ends it as a crash does. */
  crash(): Promise<void>;
  /** Ends it and leaves nothing behind. */
  clear(): Promise<void>;
}

export type ServerName = 'postgres' | 'redis';

/** The programs that this machine lacks for a server of one's own; none when it can have one. */
export function missing(name: ServerName): readonly string[] {
  if (name === 'postgres') return postgresFolder() === undefined ? ['postgres'] : [];
  return (process.env.PATH ?? '').split(':').some((folder) => existsSync(join(folder, 'redis-server')))
    ? []
    : ['redis-server'];
}

/** A server in an empty folder, started. */
export async function ownServer(name: ServerName): Promise<OwnServer> {
  const folder = mkdtempSync(join(tmpdir(), `floorhand-${name}-`));
  const port = await freePort();
  const command = name === 'postgres' ? postgres(folder, port) : redis(folder, port);
  let child: ChildProcess | undefined;
  const end = async (signal: NodeJS.Signals) => {
    const running = child;
    child = undefined;
    if (running?.exitCode !== null || running.signalCode !== null) return;
    const ended = once(running, 'exit');
    running.kill(signal);
    await ended;
  };
  const server: OwnServer = {
    url: command.url,
    port,
    async start() {
      child = spawn(command.program, command.words, { stdio: 'ignore', ...command.user });
      await untilReady(port, command.ready);
    },
    crash: () => end(command.crash),
    async clear() {
      await end(command.crash);
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
  await server.start();
  return server;
}

interface Command {
  readonly url: string;
  readonly program: string;
  readonly words: readonly string[];
  readonly user: { uid?: number; gid?: number };
  /** The signal after which nothing is put in order. */
  readonly crash: NodeJS.Signals;
  /** What is sent to a new connection, and what the reply begins with when the server is ready. */
  readonly ready: { readonly send: Buffer; readonly reply: string };
}

function redis(folder: string, port: number): Command {
  const told = { port, bind: '127.0.0.1', dir: folder, appendonly: 'yes', appendfsync: 'always', save: '' };
  return {
    url: `redis://127.0.0.1:${port}/0`,
    program: 'redis-server',
    words: Object.entries(told).flatMap(([name, value]) => [`--${name}`, String(value)]),
    user: {},
    crash: 'SIGKILL',
    ready: { send: Buffer.from('PING\r\n'), reply: '+PONG' },
  };
}

function postgres(folder: string, port: number): Command {
  const programs = postgresFolder() ?? '';
  const user = postgresUser();
  if (user.uid !== undefined && user.gid !== undefined) chownSync(folder, user.uid, user.gid);
  const data = join(folder, 'data');
  const words = ['-D', data, '-U', 'floorhand', '-A', 'trust', '-E', 'UTF8', '--no-sync'];
  execFileSync(join(programs, 'initdb'), words, { stdio: 'ignore', cwd: folder, ...user });
  // The protocol's startup message (version 3.0) for a user; `R` begins the reply of a server that is up, `E` of one that is not yet.
  const told = Buffer.from('\0\0\0\0\0\x03\0\0user\0floorhand\0database\0postgres\0\0', 'latin1');
  told.writeInt32BE(told.length, 0);
  return {
    url: `postgres://floorhand@127.0.0.1:${port}/postgres`,
    program: join(programs, 'postgres'),
    words: ['-D', data, '-p', String(port), '-k', folder, '-c', 'listen_addresses=127.0.0.1'],
    user,
    // The postmaster's immediate shutdown: no checkpoint, as after a crash.
    crash: 'SIGQUIT',
    ready: { send: told, reply: 'R' },
  };
}

/** Postgres refuses to run as root; Debian's packages make a user for it. */
function postgresUser(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (flag: string): number => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  return { uid: id('-u'), gid: id('-g') };
}

/** Where Debian puts the programs of the latest version. */
function postgresFolder(): string | undefined {
  const root = '/usr/lib/postgresql';
  if (!existsSync(root)) return undefined;
  const [latest] = readdirSync(root).sort((a, b) => Number(b) - Number(a));
  const folder = join(root, latest ?? '', 'bin');
  return existsSync(join(folder, 'initdb')) ? folder : undefined;
}

/** A port that nobody listens on. */
export async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}

async function untilReady(port: number, { send, reply }: Command['ready']): Promise<void> {
  for (let tries = 0; tries < 300; tries++) {
    if ((await firstReply(port, send)).startsWith(reply)) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`The server on port ${port} does not come up.`);
}

function firstReply(port: number, send: Buffer): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', port }, () => socket.write(send));
    const end = (text: string) => {
      socket.destroy();
      resolve(text);
    };
    socket.setTimeout(1000, () => end(''));
    socket.once('data', (data) => end(data.toString('latin1')));
    socket.once('error', () => end('')).once('close', () => end(''));
  });
}

/** What the machine gives: Node, folders to write to, ports to listen at. Nothing is written. */

import { constants, promises } from 'node:fs';
import { createServer } from 'node:net';
import { dirname, resolve } from 'node:path';
import { doubt, type Finding, fault, ok } from './doctor.ts';

/** The oldest Node that it runs on (package.json). */
const OLDEST = [20, 19] as const;

/** Node's version, such as 24.1.0. */
export function nodeFinding(version: string): Finding {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [oldest, least] = OLDEST;
  if (major > oldest || (major === oldest && minor >= least)) return ok('Node', version);
  return fault('Node', version, `Install Node ${oldest}.${least} or newer; 24 is what it is tried with most.`);
}

/** Whether a folder can be written to, or made where it is not yet. */
export async function folderFinding(about: string, folder: string, variable: string): Promise<Finding> {
  let there = resolve(folder);
  try {
    for (;;) {
      const found = await promises.stat(there).catch((cause: NodeJS.ErrnoException) => {
        if (cause.code === 'ENOENT') return undefined;
        throw cause;
      });
      if (found?.isDirectory()) break;
      if (found) return fault(about, `${there} is no folder`, `Set ${variable} to a folder.`);
      if (dirname(there) === there) throw new Error('no folder');
      there = dirname(there);
    }
    await promises.access(there, constants.W_OK | constants.X_OK);
  } catch {
    return fault(about, `${folder} cannot be written to`, `Let this user write to it, or set ${variable} to another.`);
  }
  return ok(about, there === resolve(folder) ? folder : `${folder}, which will be made`);
}

/** Whether a port can be had. */
export async function portFinding(
  about: string,
  at: { readonly host: string; readonly port: number },
  variable: string,
): Promise<Finding> {
  const where = `${at.host}:${at.port}`;
  const code = await new Promise<string>((done) => {
    const server = createServer();
    server.once('error', (cause: NodeJS.ErrnoException) => done(cause.code ?? 'unknown'));
    server.listen(at, () => server.close(() => done('')));
  });
  if (code === '') return ok(about, `${where} is free`);
  if (code === 'EADDRINUSE')
    return doubt(about, `${where} is taken`, `Fine if the bot runs already; else set ${variable} to another.`);
  const why = code === 'EACCES' ? 'not allowed to this user' : `not to be had (${code})`;
  return fault(about, `${where} is ${why}`, `Set ${variable} to another, such as one above 1024.`);
}

/** Milliseconds that clocks may be apart before signatures of Slack and Discord, which are refused after minutes, come near to it. */
const SKEW = 30_000;
/** No machine that runs this is set right before then. */
const BEFORE = Date.UTC(2026, 0, 1);

/** This machine's clock, beside another one where there is one. */
export function clockFinding(now: number, other?: { readonly of: string; readonly clock: number }): Finding {
  const about = 'Clock';
  const said = new Date(now).toISOString();
  const todo = 'Let the machine keep its time by NTP: what chats sign is refused when it is minutes off.';
  if (now < BEFORE) return fault(about, `${said} is long gone`, todo);
  if (!other) return ok(about, said);
  const apart = Math.round(Math.abs(now - other.clock) / 1000);
  if (Math.abs(now - other.clock) > SKEW) return fault(about, `${apart} s apart from the clock of ${other.of}`, todo);
  return ok(about, `${said}, as ${other.of} has it`);
}

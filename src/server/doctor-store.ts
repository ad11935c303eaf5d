/** What the doctor finds where projects are kept: whether it answers, in words where it does not, and the clock beside its own. */

import { lookAtStore, type StoreLook } from '../storage/look.ts';
import { dataFolder } from './data-folder.ts';
import { doubt, type Finding, fault, ok } from './doctor.ts';
import { clockFinding, folderFinding } from './doctor-machine.ts';
import type { Environment } from './told-settings.ts';

/** Why it cannot be looked into, by Node's code, SQLSTATE (PostgreSQL, appendix A) or the first word of Redis' refusal. */
const WHY: Readonly<Record<string, string>> = {
  ECONNREFUSED: 'nothing listens at that host and port',
  ENOTFOUND: 'no such host is known',
  EAI_AGAIN: 'the name of the host cannot be looked up just now',
  ETIMEDOUT: 'the host does not answer',
  ECONNRESET: 'the connection was cut',
  Lost: 'it takes the connection and does not answer',
  '28P01': 'it refuses the user or the password',
  '28000': 'it refuses the user or the password',
  '3D000': 'it has no such database',
  '53300': 'it has too many connections already',
  '57P03': 'it is just starting',
  WRONGPASS: 'it refuses the user or the password',
  NOAUTH: 'it wants a password',
  ERR: 'it refuses what it was told, such as a password where it has none',
  NOPERM: 'the user may not do what is needed',
  EACCES: 'this user may not read it',
};

/** Where projects are kept, and the clock beside the store's. */
export async function storeFindings(
  { store: url, data }: { readonly store: string; readonly data: string },
  environment: Environment,
  now: () => number,
): Promise<readonly Finding[]> {
  const folder = dataFolder(data, environment);
  const about = 'Store';
  const place = url === '' ? [await folderFinding('Data folder', folder, 'FLOORHAND_DATA')] : [];
  const of = url === '' ? 'the data folder' : url.startsWith('postgres') ? 'Postgres' : 'Redis';
  let look: StoreLook;
  try {
    look = await lookAtStore({ url, folder });
  } catch (cause) {
    const code = codeOf(cause);
    const todo =
      url === ''
        ? 'Let this user read it, or set FLOORHAND_DATA to another folder.'
        : 'Start it, or mend FLOORHAND_STORE: host, port, user, password, database.';
    const why = WHY[code] === undefined ? code : `${code}: ${WHY[code]}`;
    return [...place, fault(about, `${of} cannot be looked into (${why})`, todo), clockFinding(now())];
  }
  const { doubts, made, clock } = look;
  return [
    ...place,
    ok(about, `${of} answers; ${made ? 'projects are kept there' : 'nothing is kept there yet'}`),
    ...doubts.map((said) => doubt(about, said, 'DEVELOPERS.md says why, under “How saved things stay saved”.')),
    clockFinding(now(), clock === undefined ? undefined : { of, clock }),
  ];
}

/** The code of a failure, Redis' word for it, or its class: its message may hold the address, and so the password. */
function codeOf(cause: unknown): string {
  if (!(cause instanceof Error)) return 'unknown';
  if ('code' in cause && cause.code !== undefined) return String(cause.code);
  // Several addresses of one name were tried.
  if (cause instanceof AggregateError && cause.errors.length > 0) return codeOf(cause.errors[0]);
  const [, word] = /^(WRONGPASS|NOAUTH|NOPERM|ERR)\b/.exec(cause.message) ?? [];
  return word ?? cause.name;
}

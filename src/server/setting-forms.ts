/** The forms that settings come in: a port, a whole number, an address, a list of choices. */

import { z } from 'zod';

/** A port. Kubernetes sets a variable of the same name for a Service called floorhand, which is none of ours. */
export function port(standard: string) {
  return z
    .string()
    .default(standard)
    .superRefine((told, context) => {
      if (/^\d{1,5}$/.test(told) && Number(told) <= 65_535) return;
      const message = told.startsWith('tcp://')
        ? 'this comes from a Service called floorhand: set enableServiceLinks: false in the pod, or FLOORHAND_PORT=3000'
        : 'a port such as 3000';
      context.addIssue({ code: 'custom', message });
    })
    .transform(Number);
}

/** A whole number from `least` to `most`. */
export function whole(standard: number, { least, most }: { readonly least: number; readonly most: number }) {
  const said = `a whole number from ${least} to ${most}, such as ${standard}`;
  return z
    .string()
    .default(String(standard))
    .refine((told) => /^\d{1,9}$/.test(told) && Number(told) >= least && Number(told) <= most, said)
    .transform(Number);
}

/** A text of a form, or empty. */
export function text(form: RegExp, said: string) {
  return z
    .string()
    .default('')
    .refine((told) => told === '' || form.test(told), said);
}

/** The address of a server that keeps projects, or empty. A password with marks in it is easily taken for other parts of the address. */
export const storeAddress = text(/^(?:postgres(?:ql)?|rediss?):\/\/.+$/, 'empty, postgres://… or redis://…').refine(
  // No host at all is Postgres' own way to say: the socket of this machine.
  (told) => !told.includes('://') || URL.canParse(told.replace('@/', '@localhost/')),
  'no whole address; in a user or password, write # as %23, / as %2F, ? as %3F, @ as %40, : as %3A and % as %25',
);

/** An address that tokens are told to or that links begin with: by https, or on this machine. No slash at its end. */
export function safeAddress(said: string) {
  return z
    .string()
    .default('')
    .refine((told) => told === '' || isSafe(told), said)
    .transform((told) => told.replace(/(?<!\/)\/+$/, ''));
}

function isSafe(told: string): boolean {
  if (!URL.canParse(told)) return false;
  const { protocol, hostname, search, hash, username, password } = new URL(told);
  const here = ['localhost', '127.0.0.1', '[::1]'].includes(hostname);
  const bare = [search, hash, username, password].every((part) => part === '');
  return bare && (protocol === 'https:' || (protocol === 'http:' && here));
}

/** `first-last/of`, or `one/of`: the shards of this process, and how many there are. */
export const shards = z
  .string()
  .default('')
  .transform((told, context) => {
    if (told === '') return undefined;
    const [, first = '', last = first, of = ''] = /^(\d{1,4})(?:-(\d{1,4}))?\/(\d{1,4})$/.exec(told) ?? [];
    const read = { first: Number(first), last: Number(last), of: Number(of) };
    if (first !== '' && read.first <= read.last && read.last < read.of) return read;
    context.addIssue({ code: 'custom', message: 'the shards of this process and how many there are, such as 0-3/8' });
    return z.NEVER;
  });

/** `port`, or `host:port`; undefined for none. */
export const listenAt = z
  .string()
  .default('')
  .transform((told, context) => {
    if (told === '') return undefined;
    const [, host = '127.0.0.1', number = ''] = /^(?:(\[[0-9a-f:]+\]|[^\s:/]+):)?(\d{1,5})$/i.exec(told) ?? [];
    if (number !== '' && Number(number) <= 65_535) return { host: host.replace(/^\[|\]$/g, ''), port: Number(number) };
    context.addIssue({ code: 'custom', message: 'a port such as 9464, or a host and a port such as 0.0.0.0:9464' });
    return z.NEVER;
  });

/** A Discord in a process of its own, which sends interactions and times what comes back: what it costs is not the bot's. */

import { press, slash } from '../discord/interactions.ts';
import { buttonsOf, field } from '../discord/json-field.ts';
import { discordLoopback } from '../discord/loopback.ts';

/** What the bench asks for. */
export interface Run {
  readonly ask:
    | { readonly slash: string; readonly given: Readonly<Record<string, string>> }
    | { readonly press: string };
  readonly count: number;
  /** Sent so many a second, whether or not they are answered; without it each waits for the one before. */
  readonly perSecond?: number;
  /** Under way at once, where no pace is set. */
  readonly atOnce?: number;
  /** Each from another person. */
  readonly strangers?: boolean;
}

/** What comes back: milliseconds of each, from the interaction sent to its answer received, and the last answer's buttons. */
export interface Ran {
  readonly times: readonly number[];
  readonly files: number;
  readonly buttons: readonly { readonly id: string; readonly label: string }[];
}

const discord = await discordLoopback({ check: false, keep: 10 });
const begun = new Map<string, { at: number; done: (ran: { time: number; body: unknown; files: number }) => void }>();
discord.onRequest(({ token, body, files, kind }) => {
  const one = token === undefined ? undefined : begun.get(token);
  // A defer is no answer: what replaces it is.
  if (!one || !token || (kind === 'callback' && field(body, 'type') === 5)) return;
  begun.delete(token);
  const ran = { time: performance.now() - one.at, body: field(body, 'data') ?? body, files: files.size };
  // The response to the bot goes out before another interaction does.
  setImmediate(() => one.done(ran));
});

let strangers = 0;
function once({ ask, strangers: others }: Run) {
  strangers += others ? 1 : 0;
  const where = others ? { user: String(200_000_000_000_000_000n + BigInt(strangers)) } : {};
  const interaction = 'slash' in ask ? slash(ask.slash, ask.given, where) : press(ask.press, where);
  return new Promise<{ time: number; body: unknown; files: number }>((done) => {
    begun.set(interaction.token, { at: performance.now(), done });
    discord.dispatch(interaction);
  });
}

async function run(given: Run): Promise<Ran> {
  const { count, perSecond, atOnce = 1 } = given;
  const ran: Awaited<ReturnType<typeof once>>[] = [];
  if (perSecond === undefined) {
    let left = count;
    const lane = async (): Promise<void> => {
      while (left-- > 0) ran.push(await once(given));
    };
    await Promise.all(Array.from({ length: atOnce }, lane));
  } else {
    const under: Promise<unknown>[] = [];
    const start = performance.now();
    for (let sent = 0; sent < count; sent++) {
      const due = start + (sent * 1000) / perSecond - performance.now();
      if (due > 0) await new Promise((resolve) => setTimeout(resolve, due));
      under.push(once(given).then((one) => ran.push(one)));
    }
    await Promise.all(under);
  }
  const last = ran.at(-1);
  return { times: ran.map(({ time }) => time), files: last?.files ?? 0, buttons: buttonsOf(last?.body) };
}

process.on('message', (given: Run) => void run(given).then((ran) => process.send?.({ ran })));
process.on('disconnect', () => process.exit(0));
process.send?.({ api: discord.api });

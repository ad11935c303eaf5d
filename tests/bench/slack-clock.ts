/** A Slack in a process of its own, which sends requests and times what comes back: what it costs is not the bot's. */

import { type Call, loopback, type Responded } from '../slack/loopback.ts';
import { signature } from '../slack/signature.ts';

/** What the bench asks for. */
export interface Run {
  /** Where the bot takes requests, and the secret that they are signed with. */
  readonly url: string;
  readonly secret: string;
  readonly ask:
    | { readonly slash: string }
    | { readonly press: string; readonly value: string }
    | { readonly direct: string }
    | { readonly mention: string };
  readonly count: number;
  /** Sent so many a second, whether or not they are answered; without it each waits for the one before. */
  readonly perSecond?: number;
  /** Under way at once, where no pace is set. */
  readonly atOnce?: number;
  /** Each from another person. */
  readonly strangers?: boolean;
  /** What others ask by, one after the other, as long as it takes. */
  readonly beside?: Run['ask'];
  /** What Slack does with files meanwhile: takes them two seconds later, or limits every other call of a method for as long. */
  readonly files?: 'late' | 'limited';
}

const TROUBLE = 2;

/** What comes back: milliseconds of each, from the request sent to its answer received; the last answer, and the longest acknowledgement. */
export interface Ran {
  readonly times: readonly number[];
  readonly slowestAck: number;
  /** Of what was asked beside them. */
  readonly besides: readonly number[];
  readonly acksBeside: readonly number[];
  readonly last: Readonly<Record<string, unknown>>;
}

/** By its response address, the direct messages or the thread that the answer is for. */
const begun = new Map<string, (body: Readonly<Record<string, unknown>>) => void>();
const slack = await loopback({
  heard(given: Call | Responded, status: number) {
    if (status !== 200) return;
    if ('path' in given) begun.get(given.path)?.(given.body);
    else if (given.method === 'chat.postMessage')
      begun.get(`${given.args.thread_ts ?? given.args.channel}`)?.(given.args);
  },
});

let sent = 0;

/** One request as Slack sends it, and its answer. */
async function once({ url, secret, ask, strangers }: Run): Promise<{ time: number; ack: number; body: Ran['last'] }> {
  sent += 1;
  const response_url = slack.responseUrl();
  const who = { user: strangers ? `U${sent}` : 'U1', trigger: `TR${process.pid}.${sent}` };
  const event = 'direct' in ask || 'mention' in ask ? said(ask, who) : undefined;
  const body =
    event?.body ??
    new URLSearchParams(
      'slash' in ask
        ? slashed(ask.slash, who, response_url)
        : { payload: pressed(ask as { press: string; value: string }, who, response_url) },
    ).toString();
  const path = event?.place ?? new URL(response_url).pathname;
  const answered = new Promise<Ran['last']>((resolve) => begun.set(path, resolve));
  const start = performance.now();
  const headers = {
    'content-type': event ? 'application/json' : 'application/x-www-form-urlencoded',
    ...signature(body, secret, Math.floor(Date.now() / 1000)),
  };
  const response = await fetch(url, { method: 'POST', body, headers });
  await response.text();
  const ack = performance.now() - start;
  if (!response.ok) throw new Error(`a request was answered with ${response.status}`);
  const given = await answered;
  begun.delete(path);
  return { time: performance.now() - start, ack, body: given };
}

interface Who {
  readonly user: string;
  readonly trigger: string;
}

/** A direct message or a mention, and where its answer goes. */
function said(
  ask: { readonly direct: string } | { readonly mention: string },
  { user, trigger }: Who,
): { readonly body: string; readonly place: string } {
  const ts = `${sent}.0002`;
  const direct = 'direct' in ask;
  const channel = direct ? `D${sent}` : 'C1';
  const text = direct ? ask.direct : `<@UBOT> ${ask.mention}`;
  const event = direct
    ? { type: 'message', channel_type: 'im', channel, user, ts, text }
    : { type: 'app_mention', channel, user, ts, text };
  const given = { type: 'event_callback', team_id: 'T1', event_id: trigger, event_time: 1, event };
  const authorizations = [{ team_id: 'T1', enterprise_id: null, user_id: 'UBOT', is_bot: true }];
  return { body: JSON.stringify({ ...given, authorizations }), place: direct ? channel : ts };
}

function slashed(text: string, { user, trigger }: Who, response_url: string): Record<string, string> {
  const place = { team_id: 'T1', channel_id: 'C1' };
  return { command: '/floorhand', text, user_id: user, trigger_id: trigger, response_url, ...place };
}

function pressed(
  { press, value }: { press: string; value: string },
  { user, trigger }: Who,
  response_url: string,
): string {
  const action = { type: 'button', action_id: press, block_id: 'b', value, action_ts: '1.1' };
  const place = {
    team: { id: 'T1' },
    channel: { id: 'C1' },
    container: { type: 'message', message_ts: '1.1', channel_id: 'C1', is_ephemeral: true },
  };
  return JSON.stringify({
    type: 'block_actions',
    user: { id: user },
    trigger_id: trigger,
    response_url,
    actions: [action],
    ...place,
  });
}

async function run(given: Run): Promise<Ran> {
  const { count, perSecond, atOnce = 1, files } = given;
  let asked = 0;
  slack.refuse(({ method }) => {
    if (files === undefined || !method.startsWith('files.')) return undefined;
    asked += 1;
    if (files === 'late') return { late: new Promise((resolve) => setTimeout(resolve, TROUBLE * 1000)) };
    return asked % 2 === 1 ? { retryAfter: TROUBLE } : undefined;
  });
  const times: number[] = [];
  const besides: { readonly time: number; readonly ack: number }[] = [];
  let under = true;
  const others = (async () => {
    while (given.beside && under) {
      besides.push(await once({ ...given, ask: given.beside, strangers: true }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  })();
  let slowestAck = 0;
  let last: Ran['last'] = {};
  const note = ({ time, ack, body }: Awaited<ReturnType<typeof once>>): void => {
    times.push(time);
    slowestAck = Math.max(slowestAck, ack);
    last = body;
  };
  if (perSecond === undefined) {
    let left = count;
    const lane = async (): Promise<void> => {
      while (left-- > 0) note(await once(given));
    };
    await Promise.all(Array.from({ length: atOnce }, lane));
  } else {
    const sending: Promise<unknown>[] = [];
    const start = performance.now();
    for (let one = 0; one < count; one++) {
      const due = start + (one * 1000) / perSecond - performance.now();
      if (due > 0) await new Promise((resolve) => setTimeout(resolve, due));
      sending.push(once(given).then(note));
    }
    await Promise.all(sending);
  }
  under = false;
  await others;
  const [waited, acksBeside] = [besides.map(({ time }) => time), besides.map(({ ack }) => ack)];
  return { times, slowestAck, besides: waited, acksBeside, last };
}

process.on('message', (given: Run) => void run(given).then((ran) => process.send?.({ ran })));
process.on('disconnect', () => process.exit(0));
process.send?.({ api: slack.api });

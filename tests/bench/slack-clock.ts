/** A Slack in a process of its own, which sends requests and times what comes back: what it costs is not the bot's. */

import { type Call, loopback, type Responded } from '../slack/loopback.ts';
import { signature } from '../slack/signature.ts';

/** What the bench asks for. */
export interface Run {
  /** Where the bot takes requests, and the secret that they are signed with. */
  readonly url: string;
  readonly secret: string;
  readonly ask: { readonly slash: string } | { readonly press: string; readonly value: string };
  readonly count: number;
  /** Sent so many a second, whether or not they are answered; without it each waits for the one before. */
  readonly perSecond?: number;
  /** Under way at once, where no pace is set. */
  readonly atOnce?: number;
  /** Each from another person. */
  readonly strangers?: boolean;
}

/** What comes back: milliseconds of each, from the request sent to its answer received; the last answer, and the longest acknowledgement. */
export interface Ran {
  readonly times: readonly number[];
  readonly slowestAck: number;
  readonly last: Readonly<Record<string, unknown>>;
}

const begun = new Map<string, (body: Readonly<Record<string, unknown>>) => void>();
const slack = await loopback({
  heard(given: Call | Responded) {
    if ('path' in given) begun.get(given.path)?.(given.body);
  },
});

let sent = 0;

/** One request as Slack sends it, and its answer at the response address. */
async function once({ url, secret, ask, strangers }: Run): Promise<{ time: number; ack: number; body: Ran['last'] }> {
  sent += 1;
  const response_url = slack.responseUrl();
  const path = new URL(response_url).pathname;
  const who = { user: strangers ? `U${sent}` : 'U1', trigger: `TR${process.pid}.${sent}` };
  const body = new URLSearchParams(
    'slash' in ask ? slashed(ask.slash, who, response_url) : { payload: pressed(ask, who, response_url) },
  ).toString();
  const answered = new Promise<Ran['last']>((resolve) => begun.set(path, resolve));
  const start = performance.now();
  const headers = {
    'content-type': 'application/x-www-form-urlencoded',
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
    container: { type: 'message', message_ts: '1.1', channel_id: 'C1' },
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
  const { count, perSecond, atOnce = 1 } = given;
  const times: number[] = [];
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
    const under: Promise<unknown>[] = [];
    const start = performance.now();
    for (let one = 0; one < count; one++) {
      const due = start + (one * 1000) / perSecond - performance.now();
      if (due > 0) await new Promise((resolve) => setTimeout(resolve, due));
      under.push(once(given).then(note));
    }
    await Promise.all(under);
  }
  return { times, slowestAck, last };
}

process.on('message', (given: Run) => void run(given).then((ran) => process.send?.({ ran })));
process.on('disconnect', () => process.exit(0));
process.send?.({ api: slack.api });

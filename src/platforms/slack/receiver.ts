/** Slack's HTTP requests as a Bolt receiver on the one server: verified by Bolt, and refused where they come twice or from the future. */

import { createHash } from 'node:crypto';
import { type App, type Receiver, type ReceiverEvent, ReceiverMultipleAckError, verifySlackRequest } from '@slack/bolt';
import { CLOCK_MILLISECONDS } from './limits.ts';
import type { SlackPorts } from './types.ts';

interface Gate extends Pick<SlackPorts, 'now' | 'isFresh' | 'fault'> {
  readonly signingSecret: string;
}

/** Bolt's receiver without a server of its own: main hands `handle` to the one there is. */
export class FetchReceiver implements Receiver {
  readonly #gate: Gate;
  readonly #started: number;
  #app: App | undefined;

  constructor(gate: Gate) {
    this.#gate = gate;
    this.#started = gate.now();
  }

  init(app: App): void {
    this.#app = app;
  }

  async start(): Promise<void> {}

  /** From now on nothing is acknowledged: Slack sends it again, to another process or to the next one. */
  async stop(): Promise<void> {
    this.#app = undefined;
  }

  /** Answers a request as soon as a listener has acknowledged it; what the listener does then goes on behind it. */
  readonly handle = async (request: Request): Promise<Response> => {
    const raw = await request.text();
    const form = request.headers.get('content-type')?.startsWith('application/x-www-form-urlencoded') === true;
    const refused = this.#refusal(request.headers, raw);
    // Slack's check of our certificate is not signed: it is answered, and nothing else is read of it.
    if (form && new URLSearchParams(raw).get('ssl_check') === '1') return new Response('', { status: 200 });
    if (refused) return new Response(refused, { status: 401 });
    const body = bodyOf(raw, form);
    if (!body) return new Response('Not readable.', { status: 400 });
    if (body.type === 'url_verification') return Response.json({ challenge: body.challenge });
    return this.#processed(body, request.headers);
  };

  #refusal(headers: Headers, raw: string): string | undefined {
    const { signingSecret, now, isFresh } = this.#gate;
    const [stamp, signature] = [headers.get('x-slack-request-timestamp'), headers.get('x-slack-signature')];
    if (!stamp || !signature || !/^\d{1,12}$/.test(stamp)) return 'Not signed.';
    try {
      verifySlackRequest({
        signingSecret,
        body: raw,
        headers: { 'x-slack-signature': signature, 'x-slack-request-timestamp': Number(stamp) },
        nowMilliseconds: now(),
      });
    } catch {
      return 'Not signed by Slack, or too old.';
    }
    if (Number(stamp) * 1000 > now() + CLOCK_MILLISECONDS) return 'From the future.';
    // What another process had, or this one before it was started again, is told apart by the id of the deed in the store.
    const seen = createHash('sha256').update(`${stamp}:${signature}`).digest('base64url');
    return isFresh(seen) ? undefined : 'Came twice.';
  }

  #processed(body: ReceiverEvent['body'], headers: Headers): Promise<Response> {
    const app = this.#app;
    if (!app) return Promise.resolve(new Response('Not ready.', { status: 503 }));
    return new Promise((resolve) => {
      let acknowledged = false;
      const ack: ReceiverEvent['ack'] = async (given) => {
        if (acknowledged) throw new ReceiverMultipleAckError();
        acknowledged = true;
        resolve(toResponse(given));
      };
      const before = Number(headers.get('x-slack-request-timestamp')) * 1000 < this.#started;
      const number = headers.get('x-slack-retry-num') ?? (before ? '1' : null);
      const reason = headers.get('x-slack-retry-reason');
      const event: ReceiverEvent = {
        body,
        ack,
        ...(number === null ? {} : { retryNum: Number(number) }),
        ...(reason === null ? {} : { retryReason: reason }),
      };
      app.processEvent(event).then(
        // Nothing of ours is for it.
        () => acknowledged || resolve(new Response('', { status: 404 })),
        (cause: unknown) => {
          this.#gate.fault('slack', cause);
          if (!acknowledged) resolve(new Response('', { status: 500 }));
        },
      );
    });
  }
}

function bodyOf(raw: string, form: boolean): ReceiverEvent['body'] | undefined {
  try {
    const fields = form ? Object.fromEntries(new URLSearchParams(raw)) : undefined;
    const body: unknown = fields && fields.payload === undefined ? fields : JSON.parse(fields?.payload ?? raw);
    return typeof body === 'object' && body !== null && !Array.isArray(body) ? body : undefined;
  } catch {
    return undefined;
  }
}

function toResponse(given: unknown): Response {
  if (given === undefined || given === null || given === '') return new Response('', { status: 200 });
  return typeof given === 'string' ? new Response(given) : Response.json(given);
}

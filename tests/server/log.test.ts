/** The log: what a line may hold, and that nothing else gets into one, whatever goes wrong. */

import { describe, expect, it } from 'vitest';
import { asRequest, requestId } from '../../src/chat/request-id.ts';
import { allowedFields, logTo } from '../../src/server/logger.ts';
import { withoutSecrets } from '../../src/server/standard-error.ts';
import { Outage, RecordDamaged } from '../../src/storage/types.ts';

const CANARY = 'kanari my bedroom is 12 x 14';

function logged(level: 'silent' | 'error' | 'warn' | 'info' | 'debug' = 'debug', secrets: readonly string[] = []) {
  const lines: string[] = [];
  const log = logTo({ level, secrets, output: { write: (line) => lines.push(line) } });
  return { log, lines, read: () => lines.map((line): Record<string, unknown> => JSON.parse(line)) };
}
const ask = {
  platform: 'slack',
  command: 'floor planks',
  outcome: 'reply',
  first: 12.345,
  last: 20,
  wait: 3.21,
} as const;

describe('a fault', () => {
  const looksLikeAPlace = new Error(`it broke\n    at ${CANARY} (file:///opt/kanari/x.js:1:2)\n    at kanari.js:1:1`);
  class KanariPlace extends TypeError {}
  const asTyped = new Error('first');
  asTyped.message = CANARY;
  const coded = Object.assign(new Error(CANARY), {
    code: CANARY,
    status: CANARY,
    input: CANARY,
    body: { text: CANARY },
  });
  const renamed = Object.assign(new Error(CANARY), { name: CANARY });
  const noStack = new Error(CANARY);
  delete noStack.stack;
  const circle = new Error(CANARY);
  circle.cause = new Error(CANARY, { cause: circle });

  it.each<[string, unknown]>([
    ['an error', new Error(CANARY)],
    ['one that looks like places', looksLikeAPlace],
    ['one whose message was changed', asTyped],
    ['one with all kinds of fields', coded],
    ['one with another name', renamed],
    ['one without a stack', noStack],
    ['one behind itself', circle],
    ['an outage', new Outage(CANARY, { cause: new Error(CANARY) })],
    ['a damaged record', new RecordDamaged(CANARY, { cause: new SyntaxError(CANARY) })],
    ['several at once', new AggregateError([new Error(CANARY)], CANARY)],
    ['a text', CANARY],
    ['a thing', { message: CANARY, stack: CANARY, cause: CANARY }],
    ['nothing', undefined],
  ])('tells nothing that was said in %s', (_what, cause) => {
    const { log, lines } = logged();
    log.fault('0badcafe', cause);
    log.fault(CANARY, cause);
    expect(lines).toHaveLength(2);
    expect(lines.join('')).not.toMatch(/kanari/i);
  });

  it('tells its class, its code and where it came up, and what is behind it', () => {
    const { log, read } = logged();
    const cause = Object.assign(new KanariPlace(CANARY), { code: 'ECONNREFUSED', status: 503 });
    log.fault('0badcafe', new RangeError(CANARY, { cause }));
    log.fault('store', cause);
    const [first, second] = read();
    expect(first).toMatchObject({
      level: 'error',
      what: 'fault',
      request: '0badcafe',
      error: 'RangeError',
      because: ['KanariPlace ECONNREFUSED'],
    });
    expect(first?.at).toEqual(
      expect.arrayContaining([expect.stringMatching(/^(?:node_modules\/.*|node:.*):\d+:\d+$/)]),
    );
    expect(second).toMatchObject({ where: 'store', error: 'KanariPlace', code: 'ECONNREFUSED', status: 503 });
  });

  it('of a platform tells the platform’s own word for it', () => {
    const { log, read } = logged();
    log.fault(
      'slack',
      Object.assign(new Error(CANARY), {
        code: 'slack_webapi_platform_error',
        data: { ok: false, error: 'invalid_auth' },
      }),
    );
    log.fault('discord', Object.assign(new Error(CANARY), { code: 10062, status: 404 }));
    expect(read()).toMatchObject([{ code: 'invalid_auth' }, { code: '10062', status: 404 }]);
  });

  it('of a rate limit tells of what and for how long, and of several causes each', () => {
    const { log, read } = logged();
    log.fault('slack', Object.assign(new Error(CANARY), { call: 'files.getUploadURLExternal', seconds: 30 }));
    log.fault('slack', Object.assign(new Error(CANARY), { call: CANARY, seconds: CANARY }));
    const revoked = Object.assign(new Error(CANARY), { data: { error: 'token_revoked' } });
    const cause = new AggregateError([revoked, new RangeError(CANARY)], CANARY, { cause: new TypeError(CANARY) });
    log.fault('slack', cause);
    const [limited, forged, several] = read();
    expect(limited).toMatchObject({ call: 'files.getUploadURLExternal', seconds: 30 });
    expect(forged).not.toHaveProperty('call');
    expect(several?.because).toEqual(['TypeError', 'Error token_revoked', 'RangeError']);
  });

  it('has the id of the request under way', () => {
    const { log, read } = logged();
    const id = asRequest(() => {
      log.fault('slack', new Error('x'));
      log.requested(ask);
      return requestId();
    });
    expect(read().map(({ request }) => request)).toEqual([id, id]);
  });
});

describe('a line', () => {
  it('of an ask holds its figures', () => {
    const { log, read } = logged();
    log.requested(ask);
    expect(read()[0]).toMatchObject({
      level: 'info',
      what: 'ask',
      platform: 'slack',
      command: 'floor planks',
      outcome: 'reply',
      first: 12.3,
      ms: 20,
      wait: 3.2,
    });
  });

  it('leaves out what is of no form that it knows, and says that something is left out', () => {
    expect(allowedFields({ request: CANARY, command: CANARY, user: 'U1', ms: 1 })).toEqual({ ms: 1, left: 3 });
    const forged = {
      command: `planks\n{"level":"info"}`,
      platform: 'slack ',
      at: [CANARY],
      because: ['Error', CANARY],
      port: '80',
    };
    expect(allowedFields(forged)).toEqual({ left: 5 });
    expect(allowedFields({ route: '/s/:token', method: 'GET' })).toEqual({ route: '/s/:token', method: 'GET' });
    expect(allowedFields({ route: '/s/A-tokenInThePath_012' })).toEqual({ left: 1 });
    expect(allowedFields({ __proto__: 1, constructor: 'x', toString: 'y' })).toEqual({ left: 2 });
  });

  it.each([
    ['silent', 0],
    ['error', 1],
    ['warn', 2],
    ['info', 4],
    ['debug', 4],
  ] as const)('is written at the level %s: %i of four', (level, count) => {
    const { log, lines } = logged(level);
    log.fault('http', new Error('x'));
    log.fault('http', new Outage('x'));
    log.requested(ask);
    log.state('listening', { port: 3000 });
    expect(lines).toHaveLength(count);
  });

  it('holds no secret, not even in a sentence of our own', () => {
    const { log, lines } = logged('info', ['p"ss\\word', 'xoxb-1']);
    log.doubt('The server at db says p"ss\\word and xoxb-1.');
    expect(lines[0]).toContain('The server at db says (secret) and (secret).');
    expect(withoutSecrets('a xoxb-1 b xoxb-1', ['xoxb-1'])).toBe('a (secret) b (secret)');
  });
});

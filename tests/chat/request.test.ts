/** The id of a request: one from the event that came in to whatever goes wrong behind it, and what is told of an ask. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { defineCommand } from '../../src/chat/command.ts';
import { answer } from '../../src/chat/pipeline.ts';
import type { Ports, RequestMetrics } from '../../src/chat/ports.ts';
import { asRequest, faultReference, requestId, withRequestId } from '../../src/chat/request-id.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { Outage } from '../../src/storage/types.ts';

const ID = /^[0-9a-f]{8}$/;
const ask = (text: string) =>
  ({ asker: { platform: 'slack', id: 'U1' }, preferences: DEFAULT_PREFERENCES, text }) as const;

/** The help command, doing something else. */
function breaking(run: () => never) {
  const help = commands.find(({ name }) => name === 'help');
  if (!help) throw new Error('no help');
  return [defineCommand({ ...help, run })];
}

async function all<T>(answers: AsyncIterable<T>): Promise<readonly T[]> {
  const given: T[] = [];
  for await (const one of answers) given.push(one);
  return given;
}

describe('a request', () => {
  it('has one id throughout, another than the next one, and none outside', async () => {
    expect(requestId()).toBeUndefined();
    const seen = await asRequest(async () => {
      const first = requestId();
      await new Promise((resolve) => setImmediate(resolve));
      return [first, asRequest(requestId), faultReference()];
    });
    expect(seen[0]).toMatch(ID);
    expect(new Set(seen).size).toBe(1);
    expect(asRequest(requestId)).not.toBe(seen[0]);
    expect(requestId()).toBeUndefined();
    expect(faultReference()).toMatch(ID);
  });

  it('holds together what is answered bit by bit, whoever waits for it', async () => {
    async function* two() {
      yield requestId();
      await new Promise((resolve) => setImmediate(resolve));
      yield requestId();
    }
    const [first, second] = await all(withRequestId(two()));
    expect(first).toMatch(ID);
    expect(second).toBe(first);
    expect(await asRequest(async () => [requestId(), ...(await all(withRequestId(two())))])).toEqual([
      expect.stringMatching(ID),
      expect.stringMatching(ID),
      expect.stringMatching(ID),
    ]);
    const within = await asRequest(async () => [requestId(), ...(await all(withRequestId(two())))]);
    expect(new Set(within).size).toBe(1);
  });

  it('is what a fault is told under, to the asker and to whoever runs the bot', async () => {
    const given: string[] = [];
    const ports: Ports = { fault: (reference) => void given.push(reference, requestId() ?? 'none') };
    const broken = breaking(() => {
      throw new Error('a beam fell');
    });
    const [id, [fault]] = await asRequest(
      async () => [requestId(), await all(answer(ask('help'), broken, ports))] as const,
    );
    expect(fault).toEqual({ reference: id, outage: false });
    expect(given).toEqual([id, id]);
  });
});

describe('what is told of an ask', () => {
  async function endedOf(text: string, list = commands): Promise<RequestMetrics> {
    const given: RequestMetrics[] = [];
    await all(answer(ask(text), list, { fault: () => undefined, requested: (ended) => void given.push(ended) }));
    expect(given).toHaveLength(1);
    return given[0] as RequestMetrics;
  }

  it.each([
    ['tape 1 ft + 2 in', 'tape', 'reply'],
    ['tape 1 ft + horse', 'tape', 'problem'],
    ['blorp fnord wibble', undefined, 'problem'],
  ])('“%s”', async (text, command, outcome) => {
    const ended = await endedOf(text);
    expect([ended.platform, ended.command, ended.outcome]).toEqual(['slack', command, outcome]);
    expect(ended.first).toBeGreaterThan(0);
    expect(ended.last).toBeGreaterThanOrEqual(ended.first);
    expect(JSON.stringify(ended)).not.toMatch(/U1|horse|fnord|1 ft/);
  });

  it.each([
    [new Error('a beam fell'), 'fault'],
    [new Outage('no answer'), 'outage'],
  ])('that ends in %s', async (cause, outcome) => {
    const ended = await endedOf(
      'help',
      breaking(() => {
        throw cause;
      }),
    );
    expect(ended).toMatchObject({ command: 'help', outcome });
  });

  it.each([
    ['tape 1 ft + 2 in', 'answer'],
    ['tape 1 ft + horse', 'question'],
    ['how many boxes for a 12x14 room?', 'estimate'],
    ['planks room: 8x9, plank: 7x48 in, 10 per carton', 'assumed'],
    ['200 sq ft, a box covers 23.5', 'estimate'],
    ['how big a gap do i leave at the walls', 'handbook'],
    ['i smell gas', 'hazard'],
    ['hi', 'other'],
  ])('the kind of answer to “%s”', async (text, kind) => {
    expect((await endedOf(text)).answered).toBe(kind);
  });

  it('that an answer was wrong', async () => {
    const given: RequestMetrics[] = [];
    const mistaken = { command: 'tape', told: { lengths: '1 ft' }, said: 'one foot' };
    const ports = { fault: () => undefined, requested: (ended: RequestMetrics) => void given.push(ended) };
    await all(answer({ ...ask(''), mistaken }, commands, ports));
    expect(given).toMatchObject([{ answered: 'mistaken' }]);
  });

  it('that nobody waits for any more', async () => {
    const given: RequestMetrics[] = [];
    const answers = answer(ask('tape 1 + 2'), commands, {
      fault: () => undefined,
      requested: (ended) => void given.push(ended),
    });
    await answers.next();
    await answers.return(undefined);
    expect(given).toMatchObject([{ command: 'tape', outcome: 'reply' }]);
  });
});

/** What every platform must do: show any answer, know its own accounts, start and end, and bring answers to whoever asked. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalog } from '../../commands/index.ts';
import { type Asker, accountKey } from '../../src/accounts/records.ts';
import { loadCommands } from '../../src/chat/catalog.ts';
import type { Understood } from '../../src/chat/command.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import type { Request } from '../../src/chat/ports.ts';
import type { Platform, PlatformConfig, PlatformContext, RunningPlatform } from '../../src/platforms/platform.ts';
import { readConfig } from '../../src/server/config.ts';
import { WRONG } from '../../src/text/reader-text.ts';
import { storeInMemory } from '../storage/shelf-in-memory.ts';
import { bareReply } from '../web/fixture-sheets.ts';
import { anyReply } from './arbitrary-reply.ts';
import { bare } from './renderer-contract.ts';

/** What a person does on a platform under test, and what they see there. */
export interface Visitor {
  /** Whatever the platform must be configured with to reach its other side here. */
  readonly config?: Partial<PlatformConfig>;
  readonly console?: PlatformContext['console'];
  /** Called once the platform runs. */
  ready?(running: RunningPlatform): Promise<void>;
  /** What it says of an answer that takes a while, where its messages cannot all be replaced by a better one. */
  readonly meanwhile?: string;
  /** Types a request. */
  request(text: string): Promise<void>;
  /** Everything shown so far, as words, the latest last. */
  seen(): string;
  /** Presses the button of that label on the last message that has it; a chat has one. */
  press?(label: string): Promise<void>;
  /** What is sent from now on does not arrive by the way it would take first; `false` mends that. A chat has one. */
  lose?(lost: boolean): void;
  close(): Promise<void>;
}

export interface PlatformUnderTest {
  readonly platform: Platform;
  /** Somebody with an account there. */
  readonly asker: Asker;
  /** The words that a reader of the messages sees. */
  words(messages: readonly unknown[]): string;
  /** Opens the other side of the platform; missing for one that is driven by tests of its own alone. */
  visit?(): Promise<Visitor>;
}

/** Keys that are no account of any platform. */
const STRANGE = [
  '',
  'paper',
  'terminal:',
  'discord:x',
  'slack:',
  'web:short',
  'nowhere:1',
  ' discord:1',
  'discord:1\n2',
];

export function platformContract(under: PlatformUnderTest, others: readonly PlatformUnderTest[]): void {
  const { platform, asker, words, visit } = under;
  const shown = async (answer: Answer): Promise<string> => bare(words(await platform.render(answer, 'abcdefghijk')));

  describe(`the platform ${platform.name}`, () => {
    it('shows any reply with its headline whole', async () => {
      await fc.assert(
        fc.asyncProperty(anyReply, async (reply) => {
          expect((await shown(reply)).includes(bare(reply.headline))).toBe(true);
        }),
        { numRuns: 25 },
      );
    });

    it('shows problems, refusals and faults', async () => {
      const problem = { option: 'room', got: '12 x', expected: 'A second length.', fix: 'planks room: 12 x 14' };
      expect(await shown({ problems: [problem] })).toContain(bare(problem.expected));
      const refusal = { why: 'That wall may carry the house.', call: 'An engineer', cautions: [], data: {} } as const;
      expect(await shown(refusal as unknown as Answer)).toContain(bare(refusal.why));
      expect(await shown({ reference: '0badcafe', outage: false })).toContain('0badcafe');
    });

    it('knows its own accounts, and no others', () => {
      expect(accountKey(asker)).toMatch(platform.accountPattern);
      for (const other of others.filter((one) => one.platform.name !== platform.name)) {
        expect(accountKey(other.asker)).not.toMatch(platform.accountPattern);
      }
      for (const key of STRANGE) expect(key).not.toMatch(platform.accountPattern);
    });

    if (visit) live(platform, visit);
  });
}

function live(platform: Platform, visit: () => Promise<Visitor>): void {
  it('starts, brings something soon and then the last answer, and ends', async () => {
    const stage = await started(platform, visit);
    await stage.visitor.request('slow');
    if (platform.runs === 'configured') {
      await expect.poll(stage.visitor.seen, { timeout: 8_000 }).toContain(stage.visitor.meanwhile ?? 'First answer');
      expect(stage.visitor.seen()).not.toContain('Last answer');
    }
    stage.release();
    await expect.poll(stage.visitor.seen, { timeout: 8_000 }).toContain('Last answer');
    expect(stage.running.connected()).toBe(true);
    await stage.close();
  }, 20_000);

  // The terminal has no buttons, and nothing between it and whoever reads it.
  if (platform.runs !== 'configured') return;

  it('answers the request behind a button that is pressed', async () => {
    const stage = await started(platform, visit);
    const { request, press, seen } = stage.visitor;
    await request('quick');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Quick answer');
    await press?.('Go on');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Pressed answer');
    expect(stage.requests).toEqual(['quick', 'pressed']);
    await stage.close();
  }, 20_000);

  it('asks what was wrong with the answer under whose button that is said', async () => {
    const stage = await started(platform, visit);
    const { request, press, seen } = stage.visitor;
    await request('heard');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Heard answer');
    await request('other');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Other answer');
    await press?.(WRONG.label);
    await expect.poll(seen, { timeout: 8_000 }).toContain('What was wrong');
    expect(stage.mistaken).toEqual([UNDERSTOOD]);
    await stage.close();
  }, 20_000);

  it('brings what could not be delivered by another way or with the next answer', async () => {
    const stage = await started(platform, visit);
    const { request, lose, seen } = stage.visitor;
    lose?.(true);
    await request('quick');
    await expect.poll(() => stage.requests, { timeout: 8_000 }).toHaveLength(1);
    await stage.settle();
    lose?.(false);
    await request('other');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Other answer');
    await expect.poll(seen, { timeout: 8_000 }).toContain('Quick answer');
    await stage.close();
  }, 20_000);
}

async function started(platform: Platform, visit: () => Promise<Visitor>) {
  const visitor = await visit();
  const requests: string[] = [];
  const wrong: Understood[] = [];
  let release: () => void = () => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  async function* answer({ text, mistaken }: Request): AsyncGenerator<Answer> {
    if (mistaken) {
      wrong.push(mistaken);
      yield { problems: [{ option: 'ask', got: 'a room', expected: 'What was wrong?' }], complaint: true };
      return;
    }
    const typed = /slow|quick|pressed|other|heard/.exec(text)?.[0] ?? text;
    requests.push(typed);
    if (typed === 'slow') {
      yield reply('First answer');
      await released;
      yield reply('Last answer');
    } else if (typed === 'heard') yield { ...reply('Heard answer'), understood: UNDERSTOOD };
    else yield reply(`${typed.charAt(0).toUpperCase()}${typed.slice(1)} answer`);
  }
  const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 400));
  const context: PlatformContext = {
    config: { ...readConfig({}), ...visitor.config },
    catalog,
    commands: () => loadCommands(catalog),
    ports: { fault: () => {}, store: { ...storeOf(), allowed: () => async () => ({ again: 0, everybody: false }) } },
    answer,
    toPng: async () => Buffer.from('89504e470d0a1a0a', 'hex'),
    makeFile: async () => Buffer.from('file'),
    files: {} as PlatformContext['files'],
    wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
    ...(visitor.console ? { console: visitor.console } : {}),
  };
  const running = await platform.start(context);
  await visitor.ready?.(running);
  const close = async (): Promise<void> => {
    await running.close?.();
    await running.ended;
    await visitor.close();
  };
  return { visitor, requests, mistaken: wrong, running, release, settle, close };
}

const UNDERSTOOD: Understood = { command: 'floor area', told: { room: '12x14' }, said: 'how big is 12x14' };

function storeOf() {
  const { kept, shelf } = storeInMemory();
  return { kept, shelf };
}

function reply(headline: string): Answer {
  return { ...bareReply(headline), actions: [{ label: 'Go on', ask: 'pressed' }] };
}

/** Limits in the pipeline: who is counted, for how much, and what somebody reads who asked too much; nothing is lost. */

import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import type { Asker } from '../../src/accounts/records.ts';
import { defineCommand } from '../../src/chat/command.ts';
import { weightOf } from '../../src/chat/rate-limit.ts';
import { fullName } from '../../src/input/command-shape.ts';
import type { Allowed, Asking } from '../../src/storage/types.ts';
import { Unworked, type Why } from '../../src/workers/queue.ts';
import { answersTo } from './asked.ts';
import { demoPorts } from './demo-flat.ts';

const SLACK: Asker = { platform: 'slack', id: 'U1', workspace: 'T1' };
const FREE: Allowed = { again: 0, everybody: false };

/** Limits that note what they are asked. */
function counting(allowed: Allowed = FREE) {
  const counted: [Asking, number][] = [];
  const port = async (who: Asking, weight: number): Promise<Allowed> => {
    counted.push([who, weight]);
    return allowed;
  };
  return { counted, ports: { allowed: port } };
}

describe('asks that are counted', () => {
  it('are those of an account and its workspace, once an ask, read or not', async () => {
    const { counted, ports } = counting();
    await answersTo('tape 1 + 2', { asker: SLACK, ports });
    await answersTo("planks room: 12' x 14', plank: 6 x 48 in, 10 per carton", { asker: SLACK, ports });
    await answersTo('no such thing at all', { asker: SLACK, ports });
    const who = { person: 'slack:T1:U1', server: 'slack:T1' };
    expect(counted).toEqual([
      [who, 1],
      [who, 2],
      [who, 1],
    ]);
  });

  it('are never those of a terminal, and a guest of a page is counted by their share', async () => {
    const { counted, ports } = counting({ again: 1000, everybody: false });
    expect(await answersTo('tape 1 + 2', { ports })).toMatchObject([{ headline: expect.stringContaining('=') }]);
    expect(counted).toEqual([]);
    await answersTo('tape 1 + 2', { asker: { platform: 'web', id: 'share-hash' }, ports });
    expect(counted).toEqual([[{ person: 'web:share-hash' }, 1]]);
  });

  it('count a person with several accounts once', async () => {
    const { counted, ports } = counting();
    const asker: Asker = { platform: 'discord', id: '1' };
    const demo = await demoPorts(asker, (_, cause) => {
      throw cause;
    });
    await answersTo('tape 1 + 2', { asker, ports: { ...demo, ...ports } });
    const [[who] = [undefined]] = counted;
    expect(who?.person).not.toContain('discord');
    expect(who?.person.length).toBeGreaterThanOrEqual(16);
  });

  it('weigh what they cost, and every weight is of a command that there is', () => {
    const heavy = commands.filter((command) => weightOf(command) > 1).map(fullName);
    expect(heavy).toEqual(expect.arrayContaining(['floor planks', 'floor compare', 'trim list']));
    expect(weightOf(commands.find(({ name }) => name === 'tape'))).toBe(1);
  });
});

describe('somebody who asked too much', () => {
  it.each([
    [{ again: 39_001, everybody: false }, /^That was a lot of questions within a minute: try again in 40 seconds\./],
    [{ again: 1, everybody: true }, /^There were a lot of questions here within a minute: try again in 1 second\./],
  ])('reads when to ask again, and has the ask to ask it with: %o', async (allowed, words) => {
    const { ports } = counting(allowed);
    const text = "planks room: 12' x 14', plank: 6 x 48 in, 10 per carton";
    const [answer, ...more] = await answersTo(text, { asker: SLACK, ports });
    expect(more).toEqual([]);
    expect(answer).toEqual({
      again: true,
      problems: [{ option: 'ask', got: text, expected: expect.stringMatching(words), fix: text }],
    });
  });
});

describe('an ask that could not be worked out', () => {
  const REPLY = {
    headline: 'first',
    blocks: [],
    assumed: ['as told'],
    cautions: [],
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'tape', length: 0 },
  } as const;
  const ended = (first: boolean, why: Why) =>
    defineCommand({
      name: 'work',
      summary: 'Works',
      options: z.object({}),
      examples: [{ ask: 'work', headline: 'first' }],
      run: async function* () {
        if (first) yield REPLY;
        throw new Unworked(why);
      },
    });

  it.each(['crowded', 'own', 'large'] as const)(
    'keeps its first answer and says why it is the last: %s',
    async (why) => {
      const answers = await answersTo('work', { commands: [ended(true, why)] });
      expect(answers).toEqual([
        REPLY,
        { ...REPLY, assumed: ['as told', expect.stringMatching(/^(I’m busy|I’m still working on|That’s as far as)/)] },
      ]);
    },
  );

  it.each(['crowded', 'own', 'large'] as const)(
    'without one has the ask to ask again, and no fault is told: %s',
    async (why) => {
      const [answer, ...more] = await answersTo('work', { commands: [ended(false, why)] });
      expect(more).toEqual([]);
      expect(answer).toMatchObject({ again: true, problems: [{ option: 'ask', got: 'work', fix: 'work' }] });
    },
  );
});

/** Kept answers: theirs who asked, others' only once shown, and gone when their time is over. */

import { describe, expect, it } from 'vitest';
import { accountKey } from '../../src/accounts/records.ts';
import { forgetAnswers, keepAnswer, keptAnswer, mintId, showAnswer } from '../../src/chat/saved-replies.ts';
import { replyTo } from './asked.ts';
import { keptInMemory } from './kept-in-memory.ts';

const ASKER = accountKey({ platform: 'slack', workspace: 'T1', id: 'U1' });
const OTHER = accountKey({ platform: 'slack', workspace: 'T2', id: 'U1' });
const TEXT = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;

async function kept() {
  const store = keptInMemory();
  const answer = { by: ASKER, text: TEXT, reply: await replyTo(TEXT), shown: false };
  const id = mintId();
  await keepAnswer(store, id, answer);
  return { store, answer, id };
}

describe('a kept answer', () => {
  it('comes back whole to who asked, pictures and all', async () => {
    const { store, answer, id } = await kept();
    expect(await keptAnswer(store, id, ASKER)).toEqual(answer);
  });

  it('is not there for the same account number of another workspace', async () => {
    const { store, id } = await kept();
    expect(await keptAnswer(store, id, OTHER)).toBeUndefined();
    expect(await showAnswer(store, id, OTHER)).toBeUndefined();
    expect(await keptAnswer(store, id, OTHER)).toBeUndefined();
  });

  it('is there for others once its asker has shown it', async () => {
    const { store, answer, id } = await kept();
    await showAnswer(store, id, ASKER);
    expect(await keptAnswer(store, id, OTHER)).toEqual({ ...answer, shown: true });
  });

  it('goes when its asker is forgotten, and no other does', async () => {
    const { store, answer, id } = await kept();
    const theirs = mintId();
    await keepAnswer(store, theirs, { ...answer, by: OTHER });
    await forgetAnswers(store, ASKER);
    expect(await store.get(`answer:${id}`)).toBeUndefined();
    expect(await keptAnswer(store, theirs, OTHER)).toMatchObject({ by: OTHER });
  });

  it('goes with its time', async () => {
    const { store, id } = await kept();
    store.pass(7 * 24 * 3600 * 1000 + 1);
    expect(await keptAnswer(store, id, ASKER)).toBeUndefined();
  });

  it('has an id of 64 random bits', () => {
    const ids = new Set(Array.from({ length: 1000 }, mintId));
    expect(ids.size).toBe(1000);
    for (const id of ids) expect(id).toMatch(/^[\w-]{11}$/);
  });
});

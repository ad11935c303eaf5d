/** Messages as people type them, read as a person would: nearly all of them right, and none wrong for certain. */

import { describe, expect, it } from 'vitest';
import { CORPUS } from './corpus.ts';
import { judge, tally } from './judge.ts';
import { floor, type Wanted } from './message.ts';

describe('the corpus', () => {
  it('is of some size, and no message is in it twice', () => {
    expect(CORPUS.length).toBeGreaterThanOrEqual(220);
    expect(new Set(CORPUS.map(({ text }) => text)).size).toBe(CORPUS.length);
  });

  it('is read as a person would', () => {
    const { share, wrong, notes } = tally(CORPUS);
    expect(wrong, notes.join('\n')).toBe(0);
    expect(share, notes.join('\n')).toBeGreaterThanOrEqual(0.95);
  });
});

describe('the judge', () => {
  const message = floor('12x14 room, 6x48 planks, 10 per box', 'room 12 ft x 14 ft', '6 in x 48 in', { count: 10 });
  const wanting = (wanted: Wanted) => judge({ ...message, wanted: { ...message.wanted, ...wanted } }).verdict;

  it('knows a right reading', () => expect(judge(message).verdict).toBe('right'));

  it.each<Wanted>([
    { rooms: 'room 14 ft x 12 ft' },
    { rooms: 'hall 12 ft x 14 ft' },
    { rooms: 'room 12 ft x 14 ft; hall 3 ft x 4 ft' },
    { plank: '7 in x 48 in' },
    { count: 9 },
    { area: '21 sq ft' },
    { price: '100 USD' },
    { options: { gap: '0.25 in' } },
    { back: 'plank' },
    { topic: 'tape' },
  ])('and a wrong one: %j', (wanted) => expect(wanting(wanted)).toBe('wrong'));

  it('and a question where an answer was possible', () => {
    expect(judge({ ...message, text: '12x14 room, 6x48 planks' }).verdict).toBe('asked');
  });
});

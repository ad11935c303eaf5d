/** What sentences ask for, by sentences that nobody wrote phrases from; the floors are below what was measured. */

import { describe, expect, it } from 'vitest';
import { measured } from '../../src/language/measured.ts';
import { hear, modelFrom, modelText, scoreIntents, trainedModel } from '../../src/language/model.ts';
import { train } from '../../src/language/train.ts';
import { type HeldOut, type PastedLabel, sentencesOf } from './kept-out.ts';
import { isRight } from './label-right.ts';

const PREFERENCES = { units: 'imperial', decimal: '.', currency: 'USD' } as const;

describe('sentences kept out', () => {
  it.each([1, 2])('set %i: four in five are heard right, nine in ten among three', (set) => {
    const rows = sentencesOf<HeldOut>(`held-out-${set}.jsonl`);
    const ranks = rows.map(({ text, intent, also }) =>
      scoreIntents(text, trainedModel()).findIndex((one) => one.intent === intent || also.includes(one.intent)),
    );
    expect(ranks.filter((rank) => rank === 0).length / rows.length).toBeGreaterThan(0.8);
    expect(ranks.filter((rank) => rank >= 0 && rank < 3).length / rows.length).toBeGreaterThan(0.9);
  });

  it('are no phrase of anybody’s', async () => {
    const { PHRASES } = await import('../../deploy/tools/reader-model.ts');
    const phrases = new Set(PHRASES.flatMap((one) => one.phrases).map((phrase) => phrase.toLowerCase()));
    const both = [1, 2].flatMap((set) => sentencesOf<HeldOut>(`held-out-${set}.jsonl`));
    const inside = both.filter(({ text }) => phrases.has(text.toLowerCase()));
    // Two words are two words: whoever writes “thanks” writes what everybody does.
    expect(inside.filter(({ text }) => text.split(' ').length > 3)).toEqual([]);
  });
});

describe('a pasted label', () => {
  const labels = sentencesOf<PastedLabel>('labels.jsonl');

  it('is read right in 95 of 100, and never wrongly', () => {
    const read = labels.map((label) => ({ label, plank: measured(label.text, PREFERENCES).plank }));
    expect(read.filter(({ label, plank }) => isRight(label, plank)).length).toBeGreaterThanOrEqual(95);
    expect(read.filter(({ label, plank }) => plank !== undefined && !isRight(label, plank))).toEqual([]);
  });
});

describe('the model', () => {
  const phrases = [
    { intent: 'boxes', phrases: ['how many boxes', 'boxes for a room', 'number of boxes to buy'] },
    { intent: 'gap', phrases: ['gap at the wall', 'how wide a gap', 'leave a gap at walls'] },
  ];

  it('is the same for the same phrases, and survives being written', () => {
    const text = modelText(train(phrases));
    expect(modelText(train(phrases))).toBe(text);
    expect(modelText(modelFrom(text))).toBe(text);
    expect(scoreIntents('boxes to buy', modelFrom(text))[0]?.intent).toBe('boxes');
  });

  it('gives shares that sum to one, and is sure of nothing where no word is known', () => {
    const scores = scoreIntents('wide gap', train(phrases));
    expect(scores.reduce((sum, { score }) => sum + score, 0)).toBeCloseTo(1);
    expect(hear('blorp fnord wibble').score).toBe(0);
  });
});

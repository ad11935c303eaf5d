/** What a sentence asks for: a command, an entry of the handbook, small talk, or nothing that is sure. */

import { wordsOf } from './features.ts';
import { type Scored, scoreIntents, trainedModel } from './model.ts';

export type Heard =
  | (Likeness & { readonly kind: 'command'; readonly name: string })
  | (Likeness & { readonly kind: 'entry'; readonly id: string })
  | (Likeness & { readonly kind: 'talk'; readonly about: string });

interface Likeness {
  readonly score: number;
  /** What else may have been meant, likeliest first. */
  readonly others: readonly Option[];
  /** Entries of the handbook among the likeliest, the first one too where it is one. */
  readonly entries: readonly { readonly id: string; readonly score: number }[];
}

/** Another thing that the sentence may have meant. */
export type Option = { readonly command: string } | { readonly entry: string };

/**
 * From here on an answer stands alone; below it, others are offered beside it. Set on sentences kept out of the training:
 * half of them reach it, and fewer than 2 in 100 are wrong and reach it.
 */
export const SURE_SCORE = 0.999;
/** From here on it is likelier than all the rest. */
export const PROBABLE_SCORE = 0.6;
/** From here on it is answered at all. */
export const LIKELY_SCORE = 0.25;

/** How far down the list an entry may stand. */
const MOST_ENTRIES = 6;

/** Reads a sentence against every intent; the same text is always heard alike. Throws where the model was not built. */
export function hear(text: string): Heard {
  const model = trainedModel();
  const [first, ...rest] = scoreIntents(text, model);
  if (!first) throw new Error('a model without intents');
  const { intent } = first;
  // Of words that nobody ever used for a floor nothing is heard, whatever they look like.
  const score = wordsOf(text).some((word) => model.rows.has(word)) ? first.score : 0;
  const like: Likeness = {
    score,
    others: rest.slice(0, 4).flatMap(optionOf).slice(0, 2),
    entries: [first, ...rest]
      .slice(0, MOST_ENTRIES)
      .flatMap((one) => (one.intent.startsWith('handbook ') ? [{ id: one.intent.slice(9), score: one.score }] : [])),
  };
  if (intent.startsWith('handbook ')) return { kind: 'entry', id: intent.slice(9), ...like };
  if (intent.startsWith('talk ')) return { kind: 'talk', about: intent.slice(5), ...like };
  if (intent.startsWith('other '))
    return { kind: 'talk', about: intent === 'other chat' ? 'chat' : 'other-trade', ...like };
  return { kind: 'command', name: intent, ...like };
}

function optionOf({ intent }: Scored): readonly Option[] {
  if (/^(?:talk|other) /.test(intent)) return [];
  return [intent.startsWith('handbook ') ? { entry: intent.slice(9) } : { command: intent }];
}

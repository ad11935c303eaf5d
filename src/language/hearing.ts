/** What a sentence asks for: a command, an entry of the handbook, small talk, or nothing that is sure. */

import { type Scored, scoreIntents, trainedModel } from './model.ts';

export type Heard =
  | { readonly kind: 'command'; readonly name: string; readonly score: number; readonly others: readonly Option[] }
  | { readonly kind: 'entry'; readonly id: string; readonly score: number; readonly others: readonly Option[] }
  | { readonly kind: 'talk'; readonly about: string; readonly score: number; readonly others: readonly Option[] };

/** Another thing that the sentence may have meant. */
export type Option = { readonly command: string } | { readonly entry: string };

/** From here on an answer is given without a word of doubt; set on sentences kept out of the training. */
export const SURE_SCORE = 0.6;
/** From here on a handbook entry answers with two others beside it. */
export const LIKELY_SCORE = 0.25;

/** Reads a sentence against every intent; the same text is always heard alike. Throws where the model was not built. */
export function hear(text: string): Heard {
  const [first, ...rest] = scoreIntents(text, trainedModel());
  if (!first) throw new Error('a model without intents');
  const others = rest.slice(0, 4).flatMap(optionOf).slice(0, 2);
  const { intent, score } = first;
  if (intent.startsWith('handbook ')) return { kind: 'entry', id: intent.slice(9), score, others };
  if (intent.startsWith('talk ')) return { kind: 'talk', about: intent.slice(5), score, others };
  if (intent.startsWith('other ')) {
    return { kind: 'talk', about: intent === 'other chat' ? 'chat' : 'other-trade', score, others };
  }
  return { kind: 'command', name: intent, score, others };
}

function optionOf({ intent }: Scored): readonly Option[] {
  if (/^(?:talk|other) /.test(intent)) return [];
  return [intent.startsWith('handbook ') ? { entry: intent.slice(9) } : { command: intent }];
}

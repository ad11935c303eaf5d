/** What a sentence is about, by its words and by what is measured in it. */

import {
  CARTON_WORDS,
  FLOOR_WORDS,
  HELP_WORDS,
  LATER_TOPICS,
  QUESTION,
  REQUEST,
  SAFETY_IDIOMS,
  SAFETY_WORDS,
  SOURCE_WORDS,
  word,
} from '../../input/trade-words.ts';
import type { MeasuresInText } from './measures.ts';
import type { Topic } from './said.ts';

const CHEAP_TALK = word('thanks|thank you|thx|cheers|danke|lol|haha');

/** The topic, undefined when nothing is asked of us. `hint` is that of the command typed before the sentence. */
export function topicOf(plain: string, measures: MeasuresInText, hint: Topic | undefined): Topic | undefined {
  const { planks, roomPairs, carton, layout, doubtful } = measures;
  const asks = REQUEST.test(plain) || hint === 'planks';
  const bought = planks.length > 0 || carton.carton;
  if (!bought && roomPairs.length === 0) {
    if (HELP_WORDS.test(plain)) return 'help';
    if (SOURCE_WORDS.test(plain)) return 'sources';
  }
  const risks = SAFETY_WORDS.test(plain.replace(SAFETY_IDIOMS, ' '));
  if (!bought && risks && (QUESTION.test(plain) || hint === 'safety')) return 'safety';
  const later = laterTopic(plain);
  if (later && !bought && !CARTON_WORDS.test(plain) && (asks || QUESTION.test(plain) || roomPairs.length > 0))
    return later;
  const words = FLOOR_WORDS.test(plain) || hint === 'planks';
  if (planks.length > 0 && (roomPairs.length > 0 || asks || carton.carton || doubtful.length > 0)) return 'planks';
  if (carton.carton && (roomPairs.length > 0 || asks)) return 'planks';
  if (roomPairs.length + doubtful.length > 0) {
    const given = MEASURED.test(plain);
    const alone = !/\p{L}{2,}/u.test(measures.rest.replace(CHEAP_TALK, ' '));
    return measures.named || words || asks || alone || given ? 'planks' : undefined;
  }
  if (planks.length > 0 && !/\p{L}{2,}/u.test(measures.rest)) return 'planks';
  const about = words && (asks || layout.options.size > 0) && !PRICE_ONLY.test(plain);
  if (
    about &&
    (CARTON_WORDS.test(plain) || QUANTITY.test(plain) || measures.mentioned || measures.carton.areas.length > 0)
  )
    return 'planks';
  if (layout.options.size > 0 && words && QUESTION.test(plain)) return 'planks';
  return layout.options.size + layout.doubts.length > 0 && asks ? 'planks' : undefined;
}

const MEASURED = /(?<![a-z])(?:measured|measures|measurements?|dimensions?|it'?s (?=\d))/;
const PRICE_ONLY = /(?<![a-z])how much (?:does|do|is|are|did|was)(?![a-z])/;
const QUANTITY = /(?<![a-z])(?:how (?:many|much)|calculate|estimate|quantity|work out|figure out)(?![a-z])/;

/** The first topic that is not worked out yet and that a word of the sentence names. */
export function laterTopic(plain: string): Topic | undefined {
  return LATER_TOPICS.find(([, words]) => words.test(plain))?.[0];
}

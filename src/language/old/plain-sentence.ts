/** A sentence as people type it in a chat, made into an ask in the grammar's own words, or the one fact to ask back. */

import type { Preferences } from '../../input/reading.ts';
import { readRooms } from '../../input/rooms/parse-room.ts';
import { FIGURE_WORDS, TALK, TASK_WORDS } from '../../input/trade-words.ts';
import { aboutNote, sentenceTooLong, speltNote } from '../../text/language-text.ts';
import { cleaned } from './clean.ts';
import { floorSaid } from './floor-said.ts';
import { type MeasuresInText, measuresOf } from './measures.ts';
import type { Plain, ReadLine, Topic } from './said.ts';
import { tapeSaid } from './tape-said.ts';
import { topicOf } from './topic.ts';

const LONGEST_TEXT = 1500;

/**
 * Reads a sentence by grammar and lexicon, without computing anything: every figure in it is told to an option, noted as
 * not used, or asked about. `hint` is the topic of a command typed before it. Never throws.
 */
export function readPlain(text: string, preferences: Preferences, hint?: Topic): Plain {
  if (text.length > LONGEST_TEXT) {
    const why = sentenceTooLong(LONGEST_TEXT);
    return {
      kind: 'ask-back',
      topic: hint ?? 'help',
      optionTexts: new Map(),
      assumed: [],
      missing: 'ask',
      got: text,
      why,
    };
  }
  const clean = cleaned(text, aboutNote(), speltNote);
  const tape = hint === 'planks' ? undefined : tapeSaid(clean.plain, preferences);
  if (tape) return sumSaid(tape);
  const measures = measuresOf(clean, { option: 'room', preferences, note: () => undefined });
  const topic = topicOf(clean.plain, measures, hint);
  if (!topic) return { kind: 'nothing' };
  if (topic === 'planks') return floorSaid(clean.plain, measures, preferences, clean.notes);
  const optionTexts = otherTold(topic, clean.plain, measures, preferences);
  // Another task must not pass for the usual one behind the command’s own name.
  if (topic === 'safety' && hint === topic && optionTexts.size === 0) return { kind: 'nothing' };
  return { kind: 'ask', topic, optionTexts, assumed: clean.notes };
}

function sumSaid({ sum, problem }: NonNullable<ReturnType<typeof tapeSaid>>): Plain {
  if (!problem) return { kind: 'ask', topic: 'tape', optionTexts: new Map([['sum', sum]]), assumed: [] };
  const { got, expected, fix } = problem;
  const mends = fix === undefined ? undefined : new Map([['sum', fix]]);
  return {
    kind: 'ask-back',
    topic: 'tape',
    optionTexts: new Map(),
    assumed: [],
    missing: 'sum',
    got,
    why: expected,
    mends,
  };
}

/** What is told of a topic other than planks. */
function otherTold(topic: Topic, plain: string, measures: MeasuresInText, preferences: Preferences): ReadLine {
  const optionTexts = new Map<string, string>();
  const tell = (option: string, value: string | undefined): void => void (value && optionTexts.set(option, value));
  if (topic === 'safety') tell('task', TASK_WORDS.find(([, words]) => words.test(plain))?.[0]);
  else if (topic === 'sources') tell('about', FIGURE_WORDS.exec(plain)?.[0]);
  else if (topic !== 'help') {
    const { rooms, leftover } = measures;
    const read =
      rooms.given !== '' && readRooms(rooms.given, { option: 'room', preferences, note: () => undefined }).ok;
    tell('room', read ? rooms.given : undefined);
    tell('doors', leftover.doors.join(', '));
  }
  return optionTexts;
}

/** Whether a word is only talk: a greeting, thanks, a filler. */
export function isTalk(word: string): boolean {
  return TALK.test(word);
}

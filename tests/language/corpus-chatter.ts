/** Messages that ask nothing of anybody here: nothing must be read. */

import { chatter, type Message } from './message.ts';

export const CHATTER: readonly Message[] = [
  'thanks!!',
  'my dog ate the tape',
  'lol',
  'ok cool 👍',
  'good morning everyone',
  'that looks amazing, love the color',
  '🎉🎉🎉',
  'brb',
  'we finished the hall today, so happy with it',
  'I watched 3 videos about this last night',
  'see you at 5pm',
  'the couch is 3x7 ft and it does not fit',
  'my back hurts after all that',
  'what a mess haha',
  'is anyone around on saturday?',
  'nailed a 2x4 to the wall',
  'cost me 200 bucks at the store',
  'nope',
  '???',
  'danke dir!',
  'the box is really heavy',
  'vinyl records are the best',
  'it was 95 degrees in there',
  'can someone recommend a good podcast',
].map(chatter);

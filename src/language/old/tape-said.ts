/** A sum of lengths or a conversion in a sentence, put into the words that the tape's reader knows. */

import { readLength } from '../../input/parse-length.ts';
import { UNIT_PATTERN, UNIT_WORDS } from '../../input/parse-number.ts';
import { readTape } from '../../input/parse-tape.ts';
import type { Preferences, Reading } from '../../input/reading.ts';
import { pairPattern } from '../../input/rooms/room-text.ts';
import type { Problem } from '../../reply/reply.ts';

interface TapeSaid {
  readonly sum: string;
  /** Set when it is a sum by its words, and cannot be followed. */
  readonly problem?: Problem;
}

const BEFORE =
  /^(?:(?:hey|hi|hello|hallo|ok|okay|so|um|also|and|sorry|quick q(?:uestion)?|can (?:you|u|someone)(?: tell me)?|could you|(?:does )?any(?:one|body) know|do you know|tell me|i need to know|need|guys|please|pls)[ ,:.\-?]*)+/;
const PHRASE =
  /^(?:calculate|work out|compute|figure out|convert|what(?:'s| is|s| are| does| would)|how (?:much|long|big) (?:is|are|does)|the (?:sum|total) of)[ ,:]+/;
const AFTER =
  /(?<![ ,.?=!])[ ,.?=!]*(?:(?:please|pls|plz|thanks|thank you|thx|ty|danke|equals?|total|make|makes|come to)[ ,.?=!]*)*$/;
const UNIT = UNIT_PATTERN.replace(/\?<[a-z]+>/g, '?:');
const ANY = '(?:sq\\.? ?|square )?[a-z]{1,12}(?:²|2)?';

/** Orders of words that a sum has not, each put into that of a sum. */
const TURNED: readonly (readonly [RegExp, string])[] = [
  [new RegExp(`^how many (${ANY}) (?:is|are|are there|go|fit|make)?(?: ?in(?:to)?)? ?(.*\\d.*)$`), '$2 in $1'],
  [new RegExp(`^(\\D*\\d.*) (?:is|makes|equals|=) how many (${ANY})$`), '$1 in $2'],
  [new RegExp(`^what is (${ANY}) of (.*\\d.*)$`), '$2 in $1'],
  [/^(?:subtract|take|deduct) (.+) (?:from|off|away from) ([\s\S]+)$/, '$2 - $1'],
  [/^(?:divide|split|cut) (.+) (?:by|in|into) (\d+)(?: (?:equal )?(?:parts|pieces|sections))?$/, '$1 / $2'],
  [/^(.+) (?:split|divided|cut) (?:by|in|into) (\d+)(?: (?:equal )?(?:parts|pieces|sections))?$/, '$1 / $2'],
  [/^(\d+ ?\/ ?\d+) of (.+)$/, '$1 x $2'],
  [/^multiply (.+) by ([\s\S]+)$/, '$1 x $2'],
  [/^(.+) (?:take away|less) ([\s\S]+)$/, '$1 - $2'],
];
/** Signs one by one and whole words: no text fits it in two ways, so that one that does not fit is soon given up. */
const ALLOWED = new RegExp(
  `^(?:[\\d\\s.,'"()+*/x·÷½¼¾⅛⅜⅝⅞⅓⅔²^-]|(?<![a-z])(?:${UNIT_WORDS}|plus|minus|times|divided by|multiplied by|half|third|quarter|twice|double|of|to|into|as|and|a|one|by|sq|square)(?![a-z]))+$`,
);
/** Bare sides of which the square is asked: they are in the unit of the answer. */
const BARE_SQUARE = new RegExp(
  `^(\\d+(?:[.,]\\d+)?) ?(?:x|by|times) ?(\\d+(?:[.,]\\d+)?)( (?:in|to|into|as) (?:sq\\.?|square) ?(${UNIT}))$`,
);
const SIGN =
  /[+*/÷·]| - |(?<![a-z])(?:plus|minus|times|divided by|multiplied by|half|third|quarter|twice|double)(?![a-z])/;
const TARGET = new RegExp(` (?:in|to|into|as) (?:sq\\.? ?|square )?${UNIT}(?:²|2)?(?: and inches)?$`);

/** The sum in a plain sentence that is a sum and nothing else; undefined for anything else. */
export function tapeSaid(plain: string, preferences: Preferences): TapeSaid | undefined {
  const bare = plain.replace(BEFORE, '').replace(AFTER, '');
  const core = bare.replace(PHRASE, '');
  const requested = core !== bare;
  const adds = /^(?:add|sum)(?: up)? (.+)$/.exec(core);
  const turned = TURNED.find(([order]) => order.test(core));
  const sum = (
    adds
      ? (adds[1] ?? '').replace(/,? (?:and|to|with) |, /g, ' + ')
      : turned
        ? core.replace(turned[0], turned[1])
        : core
  )
    .trim()
    .replace(BARE_SQUARE, '$1 $4 x $2 $4$3');
  if (sum.length > 200 || !/\d|half|third|quarter/.test(sum) || !ALLOWED.test(sum)) return undefined;
  const signs = SIGN.test(sum) || TARGET.test(sum);
  // Sides side by side are a room unless somebody asks what they come to.
  if (pairPattern().exec(sum)?.index === 0 && !requested && !adds && !turned && !TARGET.test(sum)) return undefined;
  if (!signs && !(requested && pairPattern().test(sum))) return undefined;
  const reading: Reading = { option: 'sum', preferences, note: () => undefined };
  const unit = preferences.units === 'metric' ? 'mm' : 'in';
  if (!requested && !adds && !turned && !TARGET.test(sum) && readLength(sum, reading, unit).ok) return undefined;
  const tape = readTape(sum, reading, unit);
  if (tape.ok) return { sum };
  return requested || adds || turned || TARGET.test(sum) ? { sum, problem: tape.problems[0] } : undefined;
}

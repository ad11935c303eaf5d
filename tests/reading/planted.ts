/** A pattern that once held up everybody, kept to show that what looks for such patterns finds it. */

const UNITS = [
  'met(?:re|er)s?|m',
  'yards?|yds?',
  "feet|foot|ft|'",
  'inch(?:es)?|in|"',
  'centimet(?:re|er)s?|cms?',
  'millimet(?:re|er)s?|mms?',
];
const UNIT = `(?:${UNITS.map((typed) => `(?:${typed})(?:(?<=['"])|(?![a-z])|(?=x *[\\d.,(]))`).join('|')})`;

/** Each mark of feet or inches fits as a sign, and as a unit in two ways: three ways a mark before a word that is no part of a sum. */
export const PLANTED = new RegExp(
  `^(?:[\\d\\s.,'"()+*/x·÷½¼¾⅛⅜⅝⅞⅓⅔²^-]|(?<![a-z])(?:${UNIT}|plus|minus|times|divided by|multiplied by|half|third|quarter|twice|double|of|in|to|into|as|and|a|one|by|sq\\.?|square|inches)(?![a-z]))+$`,
);

/** What of a sentence nobody claimed and could matter: figures, and words that turn a meaning round. */

import { SIDE, TIMES } from '../../input/rooms/room-text.ts';
import type { SentenceSheet } from './sheet.ts';

export interface LeftoverWords {
  /** Figures that tell nothing of a floor by what stands beside them: years, times, heights, doors. */
  readonly unused: readonly string[];
  readonly doors: readonly string[];
}

const NUMBER = '\\d+(?:[.,]\\d+)*';
const UNUSED = [
  `(?<![\\w.,/])(?:(?:built|house|home|from|since|in|circa|year) (?:in |from |of )?)(?:18|19|20)\\d\\d(?![\\w.,/]*\\d)s?`,
  '(?<![\\w.,/])(?:18|19|20)\\d\\ds(?![a-z])',
  `(?<![\\w.,/])\\d+(?:st|nd|rd|th)(?![a-z])(?: floor)?`,
  `(?<![\\w.,/])${NUMBER}[ -]?(?:am|pm|o'clock|hours?|hrs?|days?|weeks?|wks?|months?|years?|yrs?|minutes?|mins?|degrees|people|guys|kids|dogs|cats|videos?|times|stories|miles|lbs?|pounds|kg|[a-z]+ old)(?![a-z])(?: old)?`,
  `(?<![\\w.,/])${NUMBER} ?-? ?mils?(?![a-z])(?: wear ?-?layer)?`,
].map((source) => new RegExp(source));
const HEIGHTS = [
  `(?: ?(?:x|by) ?)(?:${SIDE}) ?-?(?:high|tall|height|ceilings?|walls)(?![a-z])(?: ceilings?)?`,
  `(?<![\\w.,/])(?:${SIDE})[ -]?(?:high |tall )?(?:ceilings?|high|tall)(?![a-z])(?: ceilings?)?`,
  `(?:ceilings?|height)(?: (?:height|is|are|at|of|:|=))* ?(?:${SIDE})`,
].map((source) => new RegExp(source));
const DOORS = [
  new RegExp(
    `(?<![\\w.,/])(?:(?<n>[2-9]|1|an?) )?(?:doors?|doorways?)(?: ?(?:is|are|of|at|:|=|each))* (?<size>${SIDE})(?!${TIMES}\\d)(?: wide| each)*`,
  ),
  /(?<![\w.,/])(?<n>[2-9]|1|an?) (?:doors?|doorways?)(?![a-z])/,
  new RegExp(
    `(?<![\\w.,/])(?:(?<n>[2-9]|1|an?) )?(?<size>${SIDE})[ -]?(?:wide )?(?:doors?|doorways?|door openings?)(?![a-z])`,
  ),
];

/** Claims what has figures and tells nothing of a floor. */
export function claimUnused(sheet: SentenceSheet): LeftoverWords {
  const doors = DOORS.flatMap((pattern) => sheet.claimAll(pattern)).map(({ groups, 0: got }) => {
    const n = Number(groups?.n) || 1;
    return groups?.size === undefined ? got.trim() : `${n} x ${groups.size.trim()}`;
  });
  const unused = [...HEIGHTS, ...UNUSED]
    .flatMap((pattern) => sheet.claimAll(pattern))
    .map(({ 0: got }) => got.replace(/^ ?(?:x|by) /, '').trim());
  return { unused, doors };
}

const BENIGN =
  /(?<![a-z])(?:not sure (?:how|what|if i have enough|which)[a-z ]*|(?:do|does|did|can|could|has|have|is|was|would)(?:n't|nt| not) (?:know|figure|tell|find|understand|get|matter|want to mess|remember)[a-z ]*|no idea|why not|whether or not|if not|isn't it|can't wait|without (?:any )?(?:trim|baseboards?|underlay(?:ment)?|waste)|not bad|or so|or (?:something|whatever)|more or less|box(?:es)? or|how many or|if i'm not mistaken)(?![a-z])/g;
/** Words that leave something out, halve it or offer two choices. */
const TURNS =
  /(?<![a-z])(?:not|[a-z]+n't|except(?: for)?|excluding|excl|apart from|other than|instead(?: of)?|only half|half (?:of |the |my )+[a-z ]*|without|minus|less|part of the|nicht|ohne|außer|plus half|twice|double|another|same size|again)(?![a-z])(?: [a-z]+){0,3}/;

/** A corner left out by its sides is no doubt. */
const CORNER = /(?<![a-z])(?:minus|less|without) ?(?:an? |the )?(?=\u2588)/g;

function blank(found: string): string {
  return ' '.repeat(found.length);
}

/** The first words left that turn a meaning round, undefined when there are none. */
export function turnIn(rest: string): string | undefined {
  return TURNS.exec(rest.replace(BENIGN, blank).replace(CORNER, blank))?.[0].trim();
}

/** The first figure that nobody claimed, with the words round it. */
export function figureIn(
  rest: string,
): { readonly at: number; readonly got: string; readonly side: boolean } | undefined {
  const found =
    /(?<![\p{L}$€£])[\p{L}$€£]*[\d½¼¾⅛⅜⅝⅞⅓⅔][^\s\u2588;,]*(?: ?(?:ft|feet|foot|in|inch|inches|m|cm|mm|yards?)(?![a-z]))?/u.exec(
      rest,
    );
  if (!found) return undefined;
  const got = found[0].replace(/(?<![?.!:)])[?.!:)]+$/, '');
  return { at: found.index, got, side: new RegExp(`^(?:${SIDE})$`).test(got) };
}

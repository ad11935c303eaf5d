/** Figures put for number words, up to ninety-nine and by the dozen. */

const ONES: ReadonlyMap<string, number> = new Map(
  [
    'zero',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
    'thirteen',
    'fourteen',
    'fifteen',
    'sixteen',
    'seventeen',
    'eighteen',
    'nineteen',
  ].map((name, value) => [name, value]),
);
const TENS: ReadonlyMap<string, number> = new Map(
  ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].map((name, i) => [name, 20 + 10 * i]),
);
const GERMAN: ReadonlyMap<string, number> = new Map([
  ['zwei', 2],
  ['drei', 3],
  ['vier', 4],
  ['fünf', 5],
  ['sechs', 6],
  ['sieben', 7],
  ['acht', 8],
  ['neun', 9],
  ['zehn', 10],
  ['zwölf', 12],
]);

const UNDER_TWENTY = [...ONES.keys()].filter((name) => ONES.get(name) !== 0 && name !== 'one').join('|');
const NUMBER = new RegExp(
  `(?<![\\p{L}\\d])(?:(${[...TENS.keys()].join('|')})(?:[ -]?(one|${UNDER_TWENTY}))?|(${UNDER_TWENTY})|(${[...GERMAN.keys()].join('|')}))(?![\\p{L}]|-?(?:thirds?|way))`,
  'giu',
);
/** A lone “one” is a figure only where something is measured or counted by it. */
const ONE =
  /(?<![\p{L}\d])one (?=(?:inch|foot|feet|ft|in|metre|meter|m|cm|mm|spare|door|doorway|bedroom|closet|room|hall)(?!\p{L}))/giu;

/** The text with number words as figures. */
export function withFigures(text: string): string {
  return text
    .replace(/(?<!\p{L})half a dozen(?!\p{L})/giu, '6')
    .replace(/(?<!\p{L})(?:a |one )?dozen(?!\p{L})/giu, '12')
    .replace(/(?<![\p{L}\d] ?)(?:a )?half[ -](?:an? )?(?=inch|in(?!\p{L})|foot|ft)/giu, '1/2 ')
    .replace(/(?<![\p{L}\d] ?)(?:a )?quarter[ -](?:of an? )?(?=inch|in(?!\p{L}))/giu, '1/4 ')
    .replace(ONE, '1 ')
    .replace(NUMBER, (_, ten?: string, unit?: string, low?: string, german?: string) => {
      const of = (known: ReadonlyMap<string, number>, name: string | undefined) =>
        known.get(name?.toLowerCase() ?? '') ?? 0;
      return String(of(TENS, ten) + of(ONES, unit) + of(ONES, low) + of(GERMAN, german));
    });
}

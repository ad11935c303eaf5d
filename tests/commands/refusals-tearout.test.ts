/** No refusal of a tear-out or a lift is talked round by other words for the same facts; what is safe is answered. */

import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readHouseYear, readTested } from '../../src/input/parse-house.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';

/** What came back: a refusal, problems, or an answer. */
async function outcome(ask: string): Promise<'refused' | 'problem' | 'answered'> {
  const given = await answerTo(ask);
  if ('why' in given) return 'refused';
  return 'problems' in given ? 'problem' : 'answered';
}

// RFCI recommended work practices (published): resilient floors, backings and mastics are presumed to hold asbestos unless
// positively certain; OSHA (published) presumes it up to 1980, and its interpretation of 1 August 1997 does not presume later
// ones free of it. Refused up to a margin year, a cautious default: 1989 in the US, 2005 elsewhere.
const OLD_FLOORS = [
  'vinyl',
  'sheet vinyl',
  'Vinyl sheet',
  'vinyl tile',
  'vinyl tiles',
  'VCT',
  'VAT',
  'lino',
  'linoleum',
  'old lino from my grandmother',
  'linolium',
  'vinal tile',
  'resilient floor',
  'cushioned vinyl',
  'peel and stick tiles',
  'self-stick planks',
  'vinyl plank',
  'LVP',
  'plastic floor',
  'pvc',
  'asphalt tile',
  'asbestos tile',
  '9x9 tiles',
  '9 x 9 in tile',
  '9" tiles',
  'nine inch tiles',
  'nine-by-nine squares',
  'old tiles with black glue',
  'tiles, black mastic',
  'floor with black adhesive',
  'old tile, tar underneath',
  'cutback',
  'paper-backed sheet',
  'felt backing',
  'carpet over vinyl',
  'carpet on old lino',
  'carpet glued down with black stuff',
  'carpet, and below it tiles',
  'carpet tiles',
  'glued carpet',
  'laminate over vinyl tile',
  'laminate on top of lino',
  'ceramic tile over vinyl',
  'rubber',
  'tile',
  'some old stuff',
  'no idea',
  'battleship floor',
  'clean floor, trust me',
  'li\u200bno',
  'línoleum',
  'ｖｉｎｙｌ',
  'VINYL!!!',
  'car pet and v i n y l',
];

const OLD_YEARS = [
  '1950',
  '1980',
  '1950s',
  "the 1960's",
  'about 1960',
  'ca. 1975',
  'circa 1982',
  "'79",
  '’79',
  '70s',
  'early 80s',
  'late seventies',
  'before the war',
  'pre-war',
  'before 1990',
  '1979 or 1982',
  '1978-82',
  'between 1975 and 1985',
  'renovated 1995',
  '1995, the flat is older',
  'not 1995',
  '19955',
  '95',
  '40 years ago',
  'unknown',
  'no idea',
  'victorian',
  '1900',
  'nineteen fifty',
  '1980s',
  'after 1970',
  'since 1980',
  '1981',
  '1983',
  '1985',
  '1989',
  'about 1990',
  '1990?',
  'after 1985',
  'since 1985',
  '1985 or later',
];

const YOUNG_YEARS: readonly (readonly [string, number])[] = [
  ['1981', 1981],
  ['1989', 1989],
  ['1990', 1990],
  ['1995', 1995],
  ['built in 1995', 1995],
  ['in the year 1995', 1995],
  ['1990s', 1990],
  ["the 1990's", 1990],
  ['about 1990', 1985],
  ['1990?', 1985],
  ["'95", 1995],
  ['after 1985', 1986],
  ['since 1985', 1985],
  ['1985 or later', 1985],
  ['1990-1995', 1990],
  ['2004', 2004],
  ['１９９５', 1995],
];

describe('an old floor', () => {
  test.each(OLD_FLOORS)('%s: refused where the year is old or not told', async (floor) => {
    expect(await outcome(`tearout room: 12x14, floor: ${floor}`)).toBe('refused');
    expect(await outcome(`tearout room: 12x14, built: 1962, floor: ${floor}`)).toBe('refused');
    expect(await outcome(`plan room: 12x14, built: 1962, floor: ${floor}`)).toBe('refused');
  });

  test.each(OLD_YEARS)('sheet vinyl, built %s: refused', async (built) => {
    expect(await outcome(`tearout room: 12x14, floor: sheet vinyl, built: ${built}`)).toBe('refused');
  });

  test.each(YOUNG_YEARS)('sheet vinyl, built %s: answered only past the margin year', async (built, year) => {
    const given = await outcome(`tearout room: 12x14, floor: sheet vinyl, built: ${built}`);
    expect(given).toBe(year > 1989 ? 'answered' : 'refused');
    expect(await outcome(`tearout room: 12x14, floor: carpet, below: old tiles, built: ${built}`)).toBe(given);
    const read = readHouseYear(built, { option: 'built', preferences: DEFAULT_PREFERENCES, note: () => undefined });
    expect(read).toEqual({ ok: true, value: year });
  });

  test.each([
    'tearout room: 12x14, floor: carpet, below: old tile, built: 1970',
    'tearout room: 12x14, below: black mastic',
    'tearout room: 12x14, below: tar paper',
    'tearout room: 12x14, below: felt and glue',
    'tearout room: 12x14, below: something brown',
    'tearout room: 12x14, below: plywood with black glue on it',
    'tearout 12x14 old lino floor, built: 1950',
    'tearout 12x14 old tiles',
    'tearout room: vinyl room 12x14',
    'prep tearout room: asbestos hall 3x11',
    'plan room: 12x14, below: linoleum',
    'TEAROUT ROOM: 12x14, FLOOR: LINO, BUILT: 1970',
    'tearout room: 12x14\nfloor: lino\nbuilt: 1970',
    'tearout floor: lino; room: 12x14; built: 1970; insurer: yes; trim: none',
  ])('%j: refused', async (ask) => {
    expect(await outcome(ask)).toBe('refused');
  });

  test.each(['black mastic', 'asbestos tile', '9x9 tiles', 'asphalt tile', 'cutback', 'old tiles with black glue'])(
    '%s: refused even in a house of 1995',
    async (floor) => {
      expect(await outcome(`tearout room: 12x14, floor: ${floor}, built: 1995`)).toBe('refused');
    },
  );

  it('says why, what never to do, whom to call, and warns', async () => {
    const given = await answerTo('tearout room: 12x14, floor: lino, built: 1970');
    expect(given).toMatchObject({ why: expect.stringMatching(/test first.*“lino”.*sand.*scrape.*sweep/s) });
    expect(given).toMatchObject({ call: expect.stringMatching(/laboratory.*licensed/) });
    expect(given).toMatchObject({ cautions: expect.arrayContaining([expect.objectContaining({ topic: 'asbestos' })]) });
  });
});

describe('an untested resilient floor past the margin year', () => {
  const late = [
    ['sheet vinyl', 'sheet vinyl'],
    ['vinyl tile', 'vinyl tile'],
    ['vinyl plank', 'vinyl plank'],
    ['carpet over lino', 'carpet over lino'],
    ['carpet, below: linoleum', 'linoleum'],
    ['laminate, below: vinyl tiles', 'vinyl tiles'],
    ['carpet, below: something brown', 'something brown'],
  ] as const;

  test.each(late)('%s: the first line asks for proof of what was told', async (floor, what) => {
    for (const command of ['tearout', 'plan']) {
      const { headline } = await replyTo(`${command} room: 12x14, floor: ${floor}, built: 1995`);
      expect(headline).toMatch(/^Proof first: a laboratory’s report/);
      expect(headline).toContain(`“${what}”`);
    }
  });

  it('no step, tool or figure of it scrapes, whatever the covering; a cleared one is scraped wet', async () => {
    for (const [floor] of late) {
      for (const command of ['tearout', 'plan']) {
        const { blocks } = await replyTo(`${command} room: 12x14, floor: ${floor}, built: 1995`);
        expect(JSON.stringify(blocks), `${command} ${floor}`).not.toMatch(/scrap(?:e|ing|er)\b/i);
      }
    }
    const cleared = JSON.stringify((await replyTo('tearout room: 12x14, floor: sheet vinyl, tested: clear')).blocks);
    expect(cleared).toMatch(/Wet what stays.*scrape/);
    expect((await replyTo('tearout room: 12x14, floor: sheet vinyl, tested: clear')).headline).not.toContain('Proof');
  });

  it('nothing of any tear-out is swept dry', async () => {
    for (const floor of ['carpet', 'laminate', 'click vinyl plank', 'ceramic tile', 'sheet vinyl'])
      expect(JSON.stringify((await replyTo(`tearout room: 12x14, floor: ${floor}, built: 1999`)).blocks)).not.toMatch(
        /sweep/i,
      );
  });

  it('asks for none where nothing told is of such a floor', async () => {
    for (const floor of ['carpet', 'laminate', 'click vinyl plank', 'ceramic tile', 'carpet, below: plywood'])
      expect((await replyTo(`tearout room: 12x14, floor: ${floor}, built: 1962`)).headline).not.toContain('Proof');
  });
});

// The margin is a cautious default of 2005 elsewhere: sale ended in the UK in 1999, in Australia in 2003 (reported).
describe('the year by country', () => {
  test.each([
    ['US', 1989, 1990],
    ['usa', 1989, 1990],
    ['Canada', 2005, 2006],
    ['UK', 2005, 2006],
    ['England', 2005, 2006],
    ['Australia', 2005, 2006],
    ['Germany', 2005, 2006],
    ['elsewhere', 2005, 2006],
  ])('%s: refused up to %i, with proof from %i', async (country, last, next) => {
    const ask = (year: number) => `tearout room: 12x14, floor: sheet vinyl, built: ${year}, country: ${country}`;
    expect(await outcome(ask(last))).toBe('refused');
    expect((await replyTo(ask(next))).headline).toContain('Proof first');
  });

  it('is 2005 in metric with no country named, and says which was taken', async () => {
    expect(await outcome('tearout room: 3 x 4 m, floor: sheet vinyl, built: 2005')).toBe('refused');
    expect(await outcome('tearout room: 3 x 4 m, floor: sheet vinyl, built: 2005, country: US')).toBe('answered');
    const metric = { preferences: { units: 'metric' } } as const;
    expect(await answerTo('tearout room: 3 x 4, floor: sheet vinyl, built: 1999', metric)).toHaveProperty('why');
    const { assumed } = await replyTo('tearout room: 12x14, floor: sheet vinyl, built: 1995');
    expect(assumed.join(' ')).toMatch(/country: assuming US years/);
    expect((await replyTo('tearout room: 3 x 4 m, built: 2010')).assumed.join(' ')).toMatch(
      /country: assuming the latest/,
    );
    expect((await replyTo('tearout room: 12x14, country: UK')).assumed.join(' ')).not.toMatch(/country: assuming/);
  });

  it('a country that is not read is asked back, and one without years of its own is taken as the strictest', async () => {
    expect(await outcome('tearout room: 12x14, country: 7')).toBe('problem');
    const { assumed } = await replyTo('tearout room: 12x14, country: Norway');
    expect(assumed.join(' ')).toContain('Norway has no years of its own here');
  });
});

describe('only “tested: clear” is a way through', () => {
  it('clear answers, asbestos refuses whatever the year and the floor', async () => {
    expect(await outcome('tearout room: 12x14, floor: sheet vinyl, built: 1962, tested: clear')).toBe('answered');
    expect(await outcome('tearout room: 12x14, floor: vinyl tile, built: 1962, tested: CLEAR ')).toBe('answered');
    expect(await outcome('tearout room: 12x14, floor: carpet, built: 1962, tested: asbestos')).toBe('refused');
    expect(await outcome('tearout room: 12x14, floor: laminate, built: 2010, tested: positive')).toBe('refused');
  });

  test.each(['no', 'not yet', 'unknown'])('%s: refused', async (tested) => {
    expect(await outcome(`tearout room: 12x14, floor: lino, built: 1970, tested: ${tested}`)).toBe('refused');
  });

  test.each([
    'cleared',
    'clear I think',
    'looks clear',
    'not clear',
    'yes',
    'negative',
    'no asbestos',
    'ok',
    'my uncle says it is clear',
    'clean',
    'clesr',
    'safe',
    'skip',
    'true',
    'not needed',
  ])('“%s” is asked back, and no way through is offered', async (tested) => {
    const given = await answerTo(`tearout room: 12x14, floor: lino, built: 1970, tested: ${tested}`);
    // What can only mean “no” is refused at once.
    if ('why' in given) return;
    expect(given).toMatchObject({ problems: [{ option: 'tested' }] });
    expect(problemsOf(given)[0]).not.toHaveProperty('fix');
  });

  it('no other text is ever read as clear', () => {
    const reading = { option: 'tested', preferences: DEFAULT_PREFERENCES, note: () => undefined };
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `clear${text}`),
        ),
        (text) => {
          const read = readTested(text, reading);
          if (read.ok && read.value === 'clear') expect(text.trim().toLowerCase()).toBe('clear');
        },
      ),
    );
  });
});

describe('what is safe to work out', () => {
  test.each([
    'tearout room: 12x14',
    'tearout room: 12x14, floor: carpet, built: 1962',
    'tearout room: 12x14, floor: carpet and pad, built: before the war',
    'tearout room: 12x14, floor: wall-to-wall carpet, built: 1962, below: plywood',
    'tearout room: 12x14, floor: old beige carpet on plywood',
    'tearout room: 12x14, floor: dark brown carpet',
    'tearout room: 12x14, floor: black carpet with underlay, below: oak boards',
    'tearout room: 12x14, floor: carpt, built: 1962',
    'tearout room: 12x14, floor: laminate, built: 1962',
    'tearout room: 12x14, floor: floating laminate, built: 1962, below: concrete slab',
    'tearout room: 12x14, floor: click vinyl plank, built: 1962',
    'tearout room: 12x14, floor: ceramic tile, built: 1962',
    'tearout room: 12x14, floor: vinyl tile, built: 1995',
    'tearout room: 12x14, floor: tile, built: 1995',
    'tearout room: black bedroom 12x14',
    'plan room: 12x14, built: 1962',
  ])('%s: answered, with the caution about what may lie below', async (ask) => {
    expect(await answerTo(ask)).toMatchObject({
      headline: expect.any(String),
      cautions: expect.arrayContaining([expect.objectContaining({ topic: 'asbestos' })]),
    });
  });

  it('a carpet in an old house begins with a look below', async () => {
    expect(JSON.stringify(await answerTo('tearout room: 12x14, built: 1962'))).toContain('Lift one corner first');
  });

  it('a floor that is not worked out is a problem in a young house', async () => {
    expect(await outcome('tearout room: 12x14, floor: hardwood, built: 1995')).toBe('problem');
    expect(await outcome('tearout room: 12x14, floor: gravel, built: 1995')).toBe('problem');
  });
});

// NIOSH 94-110 (published): the equation does not hold for these.
describe('a lift for which the equation does not hold', () => {
  test.each([
    'one hand',
    'one-handed',
    'with 1 hand',
    'kneeling',
    'on my knees',
    'squatting',
    'seated',
    'sitting on a chair',
    'in a crawl space',
    'in a tight closet',
    'carrying it upstairs',
    'carry',
    'up a ladder',
    'pushing',
    'dragging it over the floor',
    'wheelbarrow',
    'shovelling',
    'rolls',
    'a roll of carpet',
    'rolled up carpet',
    'a bucket of leveller',
    'half-full bag',
    'unstable load',
    'two people',
    'with a helper',
    'on a slippery floor',
    'wet floor',
    'in the cold garage',
    'very hot day',
    'throwing them on the truck',
    'cartons, two hands, kneeling',
    'boxes, standing, one hand',
  ])('%s: refused', async (way) => {
    expect(await outcome(`lift 45 lb, way: ${way}`)).toBe('refused');
  });

  test.each([
    'lift 45 lb roll',
    'lift a 45 lb roll of carpet',
    'lift weight: 45 lb bucket',
    'lift 20 kg sack of leveller',
  ])('%s: refused', async (ask) => expect(await outcome(ask)).toBe('refused'));

  test.each([
    'lift 45 lb, reach: 30 in',
    'lift 45 lb, to: 80 in',
    'lift 45 lb, twist: 170',
    'lift 45 lb, often: 20 a minute',
  ])('%s: no weight is recommended', async (ask) => expect(await outcome(ask)).toBe('refused'));

  test.each([
    'lift 45 lb',
    'lift 45 lb carton',
    'lift 20 kg box, way: boxes, both hands',
    'lift 45, way: two hands, standing',
  ])('%s: answered', async (ask) => expect(await outcome(ask)).toBe('answered'));

  it('words that are not known are asked back', async () => {
    expect(await outcome('lift 45 lb, way: like a pro')).toBe('problem');
    expect(await outcome('lift 45 lb anvil')).toBe('problem');
  });
});

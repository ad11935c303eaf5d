/** Options and refusals that the subfloor commands share. */

import type { Context } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  BEAD,
  ENGINEERED_JOIST,
  JOIST_DEPTH,
  JOIST_RUN,
  JOIST_SPACING,
  JOIST_WIDTH,
  PANEL_SHEET,
  PANEL_THICKNESS,
  PATCH_MARGIN,
  TUBE,
} from '../../src/figures/subfloor-figures.ts';
import { ASBESTOS_MARGIN, COVERING_NOT_GIVEN, LEAD_YEARS } from '../../src/figures/tearout-figures.ts';
import { choice, length, lengthIfKnown, text } from '../../src/input/options.ts';
import {
  type ParsedBeneath,
  type ParsedCovering,
  readBeneath,
  readCovering,
  suspicionAnywhere,
} from '../../src/input/parse-covering.ts';
import { type Found, readFound, together } from '../../src/input/parse-found.ts';
import { readCountry, readHouseYear, readTested } from '../../src/input/parse-house.ts';
import { readSheet, readTube } from '../../src/input/parse-place.ts';
import { type ParsedRooms, type Read, type Reading, read, unread } from '../../src/input/reading.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { type Country, countryFor, judge, type Tested } from '../../src/prep/old-floor.ts';
import { type Refusal, unsafe } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { ASBESTOS_CALL, asbestosWhy, LAID_OVER, referral } from '../../src/text/found-text.ts';
import { COUNTRY_TAKEN, severalRooms } from '../../src/text/prep-problems-text.ts';
import { NOT_GIVEN } from '../../src/text/tearout-text.ts';
import { feet, inches, ticks } from '../../src/units/length.ts';

export const foundOption = text(
  {
    summary: 'What you found there, in your own words: stain, rot in a joist, sagging, cable, pipe, sewage',
    example: 'water stain',
    standard: 'none',
  },
  readFound,
);

export const spacingOption = length({
  summary: 'Joist spacing, center to center',
  standard: '16 in',
  metric: '400 mm',
  record: JOIST_SPACING,
  example: '24 in',
  least: inches(8),
  most: inches(24.1),
});

export const thicknessOption = length({
  summary: 'Thickness of the subfloor panel',
  standard: '3/4 in',
  metric: '18 mm',
  record: PANEL_THICKNESS,
  example: '5/8 in',
  least: inches(0.25),
  most: inches(2),
});

const nothing = ticks(0);

export const firstJoist = lengthIfKnown({
  summary: 'Center of the first joist from the left wall (from the bottom wall if joists run across)',
  example: '16 in',
  least: nothing,
  most: feet(40),
});

/** Everything else a patch depends on, each with its usual value as the default. */
export const patchOptions = {
  joists: choice(['up', 'across'], {
    summary: 'Do the joists run up the plan or across it?',
    standard: 'up',
    record: JOIST_RUN,
  }),
  room: text(
    {
      summary: 'The room’s sides, if the damage is near a far wall',
      example: `12' x 14'`,
      standard: 'none',
      colons: 'rooms',
    },
    readRoom,
  ),
  margin: length({
    summary: 'Sound wood around the damage',
    standard: '2 in',
    record: PATCH_MARGIN,
    metric: '50 mm',
    example: '3 in',
    least: nothing,
    most: inches(12),
  }),
  'joist-width': length({
    summary: 'How wide a joist is',
    standard: '1 1/2 in',
    record: JOIST_WIDTH,
    metric: '38 mm',
    example: '2 1/2 in',
    least: inches(1),
    most: inches(6),
  }),
  'joist-depth': length({
    summary: 'How deep a joist is; leave it out for the shallowest common one',
    standard: '5 1/2 in',
    record: JOIST_DEPTH,
    metric: '140 mm',
    example: '9 1/4 in',
    least: inches(3),
    most: inches(24),
  }),
  notch: length({
    summary: 'Depth of a notch in a joist there',
    standard: '0',
    example: '1 in',
    least: nothing,
    most: inches(24),
  }),
  'notch-length': length({
    summary: 'Length of the notch along the joist',
    standard: '0',
    example: '2 in',
    least: nothing,
    most: feet(10),
  }),
  'notch-place': choice(['unknown', 'end', 'outer', 'middle'], {
    summary: 'Where the notch is: at an end, in the outer or the middle third of the span',
    standard: 'unknown',
  }),
  hole: length({
    summary: 'Width of a hole through a joist there',
    standard: '0',
    example: '1 in',
    least: nothing,
    most: inches(24),
  }),
  'hole-edge': length({
    summary: 'From the hole to the joist’s nearer edge',
    standard: '0',
    example: '2 in',
    least: nothing,
    most: inches(24),
  }),
  'hole-apart': length({
    summary: 'From the hole to the nearest other hole or notch',
    standard: '0',
    example: '4 in',
    least: nothing,
    most: feet(40),
  }),
  'joist-kind': choice(['solid', 'i-joist', 'truss', 'glued'], {
    summary: 'Solid lumber, or an I-joist, truss or glued beam, which no rule allows to be cut',
    standard: 'solid',
    record: ENGINEERED_JOIST,
    example: 'i-joist',
  }),
  sheet: text(
    {
      summary: 'Size of a panel sheet',
      example: '4 x 8 ft',
      standard: '4 x 8 ft',
      record: PANEL_SHEET,
      metric: '1220 x 2440 mm',
    },
    readSheet,
  ),
  bead: length({
    summary: 'Width of the adhesive bead',
    standard: '3/8 in',
    record: BEAD,
    metric: '10 mm',
    example: '1/4 in',
    least: inches(0.125),
    most: inches(0.75),
  }),
  tube: text(
    {
      summary: 'What a tube of adhesive holds',
      example: '10.1 fl oz',
      standard: '28 fl oz',
      record: TUBE,
      metric: '825 ml',
    },
    readTube,
  ),
};

function readRoom(typed: string, reading: Reading): Read<ParsedRooms | 'none'> {
  if (/^(?:none|no)$/i.test(typed.trim())) return read('none');
  const rooms = readRooms(typed, reading);
  return rooms.ok && rooms.value.rooms.length > 1 ? unread(severalRooms(reading.option, typed)) : rooms;
}

/** `given` is everything found in any option; undefined if none of it is hazardous. */
export function refusalFor(...given: readonly Found[]): Refusal | undefined {
  const { hazards } = together(...given);
  return hazards.length > 0 ? refusal(referral(hazards), hazards[0] ?? 'unsure') : undefined;
}

/** Also refuses a rotten panel: it holds neither screws nor leveling compound. */
export function refusalOnPanel(...given: readonly Found[]): Refusal | undefined {
  return refusalFor(...given) ?? (together(...given).rot ? refusal(referral(['panel']), 'structure') : undefined);
}

/** With the cautions of subfloor work. */
export function refusal({ why, call }: { readonly why: string; readonly call: string }, hazard = 'structure'): Refusal {
  return { why, call, cautions: worded(cautionsFor('subfloor')), data: unsafe(hazard) };
}

export const houseOptions = {
  floor: text(
    {
      summary: 'What comes up: carpet, sheet vinyl, vinyl plank, laminate, tile',
      example: 'laminate',
      standard: 'carpet',
      record: COVERING_NOT_GIVEN,
      names: 'covering',
    },
    readCovering,
  ),
  built: text(
    { summary: 'The year the house was built, or unknown', example: '1995', standard: 'unknown' },
    readHouseYear,
  ),
  tested: text(
    {
      summary: 'Were floor, backing and glue tested for asbestos? clear (by report), asbestos, or no',
      example: 'clear',
      standard: 'no',
    },
    readTested,
  ),
  below: text(
    {
      summary: 'What’s under it, if you looked: plywood, concrete, old tile …',
      example: 'plywood',
      standard: 'unknown',
    },
    readBeneath,
  ),
  country: text(
    {
      summary: 'Where the home is: US, Canada, UK, Australia or another; for the years of old floors and paint',
      example: 'UK',
      standard: 'unknown',
    },
    readCountry,
  ),
  insurer: choice(['no', 'yes'], { summary: 'Is an insurer paying?', standard: 'no' }),
};

interface HouseAsk {
  readonly floor: ParsedCovering;
  readonly built: number | undefined;
  readonly tested: Tested;
  readonly below: ParsedBeneath;
  readonly country: Country | undefined;
  readonly room: Pick<ParsedRooms, 'units'>;
  readonly insurer: 'yes' | 'no';
}

/** Decides which years count. Without a country, it follows the units of the rooms or of the user's settings. */
export function countryOf({ country, room }: HouseAsk, { preferences }: Context): Country {
  return countryFor(country, room.units === 'metric' || preferences.units === 'metric');
}

/**
 * Refuses, or allows the work (`go`), or allows it once a test proves the floor safe (`proof`). A suspicious material counts
 * whichever option mentions it.
 */
export function houseVerdict(ask: HouseAsk, context: Context): Refusal | 'proof' | 'go' {
  const aside = [...context.optionTexts].filter(([option]) => !['floor', 'tested', 'below'].includes(option));
  const margin = ASBESTOS_MARGIN[countryOf(ask, context)].value;
  const verdict = judge({
    year: ask.built,
    tested: ask.tested,
    layers: [ask.floor.suspicion, ask.below.suspicion],
    aside: aside.map(([, given]) => suspicionAnywhere(given)),
    margin,
  });
  if (verdict === 'go' || verdict === 'proof') return verdict;
  const facts = ['floor', 'below', 'built'].flatMap((option) => {
    const given = context.optionTexts.get(option);
    return given ? [`${option} “${given.slice(0, 60)}”`] : [];
  });
  return {
    why: asbestosWhy(verdict, margin, facts.length > 0 ? facts.join(', ') : undefined),
    call: verdict === 'found' ? `${ASBESTOS_CALL} ${LAID_OVER}` : ASBESTOS_CALL,
    cautions: worded(tearoutHazards(ask, context).filter(({ topic }) => topic === 'asbestos' || topic === 'lead')),
    data: unsafe('asbestos'),
  };
}

/** Leaves out lead if the house is new enough. */
export function tearoutHazards(ask: HouseAsk, context: Context) {
  const young = ask.built !== undefined && ask.built >= LEAD_YEARS[countryOf(ask, context)].value;
  return cautionsFor('tear-out').filter(({ topic }) => topic !== 'lead' || !young);
}

/** The doubtful floor as they described it, otherwise what lies under it. */
export function toProve(ask: HouseAsk, context: Context): string {
  const option = ask.floor.suspicion === 'none' ? 'below' : 'floor';
  return context.optionTexts.get(option) ?? option;
}

/** A request for another prep command with the same rooms and house. */
export function sharedAsk(command: string, { optionTexts }: Context): string {
  const shared = ['room', ...Object.keys(houseOptions), 'doors'].filter((option) => optionTexts.has(option));
  return `${command} ${shared.map((option) => `${option}: ${optionTexts.get(option)}`).join(', ')}`;
}

/** Adds a note for each of floor, built and doors that is missing, and for whose years were used. */
export function assumedWith(ask: HouseAsk, context: Context): readonly string[] {
  const { assumed, optionTexts } = context;
  const taken = (['floor', 'built', 'doors'] as const).filter((option) => !optionTexts.get(option));
  const country =
    ask.country === undefined ? [COUNTRY_TAKEN[countryOf(ask, context) === 'us' ? 'us' : 'elsewhere']] : [];
  return [...assumed, ...taken.map((option) => NOT_GIVEN[option]), ...country];
}

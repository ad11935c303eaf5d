/** Problems with prep options that could not be read: level, moisture, lifting, patches, squeaks, noise and tear-out. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';
import { type Got, problem } from './length-problems-text.ts';

export function notReadings(got: Got): Problem {
  return problem(
    got,
    `A reading is a gap over a length, such as “${byUnits('3/16 in over 10 ft', '5 mm over 3 m')}”. Put “high” before it for a hump, and “;” between several. Or a grid: “${byUnits('grid 2 ft: 0 1/8 1/4; 0 1/4 3/8', 'grid 60 cm: 0 3 mm 6 mm; 0 6 mm 9 mm')}”.`,
  );
}

export function gapTooWide(got: Got): Problem {
  return problem(got, 'The gap comes first and the straightedge’s length behind “over”.');
}

export function gapInFeet(typed: string, unit: string): string {
  return `gap of ${typed.trim()} read as ${unit}`;
}

export function readingLow(typed: string): string {
  return `${typed} read as a low spot; type “high” before it for a hump`;
}

export function gridSpacing(got: Got): Problem {
  return problem(got, 'A grid begins with how far its points are apart and a colon, then its rows with ; between.');
}

export function gridFigure(got: Got, token: string): Problem {
  return problem(got, `“${quoted(token)}” in the grid is no depth: figures with spaces or commas between.`);
}

export function gridDoubtful(got: Got, token: string, fix: string): Problem {
  return problem(
    got,
    `Is “${token}” one figure or two? Type ${token.replace(' ', '-')} for one, or commas between all.`,
    fix,
  );
}

export function gridTooDeep(got: Got, token: string): Problem {
  return problem(got, `A depth of ${token} is too deep for leveler: at most ${byUnits('12 in (300 mm)', '300 mm')}.`);
}

export function gridCount(got: Got, most: number): Problem {
  return problem(got, `A grid has from 2 to ${most} rows of from 2 to ${most} figures.`);
}

export function gridUneven(got: Got, first: number, other: number): Problem {
  return problem(got, `Each row needs the same number of figures: one has ${first}, another ${other}.`);
}

export function gridRead(rows: number, columns: number, unit: string): string {
  return `grid read as ${rows} rows of ${columns}, in ${unit} below the line; a minus is above it`;
}

export function notARule(got: Got): Problem {
  return problem(
    got,
    `A rule is floating, nail-down, or a gap in a length from the maker, such as “${byUnits('1/8 in in 6 ft', '3 mm in 2 m')}”.`,
  );
}

export function notARamp(got: Got): Problem {
  return problem(got, 'A ramp is its two sides, a comma and its height at the high end.');
}

export function notAYield(got: Got): Problem {
  return problem(
    got,
    `A bag’s figure is what it fills and weighs, such as “${byUnits('0.45 cu ft per 50 lb”, “13 L per 25 kg', '13 L per 25 kg')}”, or “1.7 kg/m²/mm, 25 kg”.`,
  );
}

export function notALiftWay({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected:
      'The equation is for cartons or boxes, two hands, standing. It doesn’t work for rolls, one hand, kneeling, carrying and the like.',
    fix: undefined,
  };
}

export function notATwist({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'A twist of the body from 0 to 180 degrees.', fix: undefined };
}

export function notAPace({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'How often: “1 a minute”, “3 a minute”, “every 5 minutes”, up to 30 a minute.',
    fix: undefined,
  };
}

export function notAStretch({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'How long you lift in one stretch: up to 8 h.', fix: undefined };
}

export function notMoisture(got: Got, fix?: string): Problem {
  return problem(
    got,
    'Type the readings as numbers, such as “10 11 12”: % for wood; for concrete lb (calcium chloride), % RH (probes in the slab) or % CM (carbide).',
    fix,
  );
}

export function notLikely(got: Got, least: number, most: number): Problem {
  return problem(got, `Readings of this method lie from ${least} to ${most}.`);
}

export function notALimit(got: Got): Problem {
  return problem(got, 'A limit is usual, or the maker’s own figure in the unit of the readings.');
}

/** A limit wetter than wood may ever be. */
export function limitTooWet(got: Got, keepBelow: number): Problem {
  return problem(got, `Wood is kept below ${keepBelow}%: no limit for a wood subfloor is as high.`);
}

const ON: Readonly<Record<'concrete' | 'gypsum' | 'screed' | 'tile', string>> = {
  concrete: 'concrete',
  gypsum: 'a calcium sulfate screed',
  screed: 'a screed',
  tile: 'the slab under the tile',
};

/** Readings on concrete, screed or tile without the kind of test. */
export function whichTest(got: Got, on: keyof typeof ON): Problem {
  return problem(
    got,
    `Which test on ${ON[on]}: probes in the slab (method: rh), calcium chloride (method: chloride) or carbide (method: cm)? The limit for wood does not hold there, and a pin or pinless meter on it only shows where it is wettest.`,
  );
}

export function methodForWood(got: Got): Problem {
  return problem(got, 'That test is for concrete, and you said wood. Which is it?');
}

export function whichScreed(got: Got): Problem {
  return problem(
    got,
    'Which screed is it: cement or concrete (at most 2% CM), or calcium sulfate, also called anhydrite (at most 0.5% CM)? If the flooring’s maker prints a limit, give that as limit.',
  );
}

export function notABase(got: Got): Problem {
  return problem(got, 'What was measured: wood, concrete, a cement or anhydrite screed, or tile.');
}

/** The assumption if neither floor nor method is given and nothing suggests concrete. */
export const METHOD_TAKEN =
  'Assuming a meter on a wood subfloor; on concrete, name the test (method: rh, chloride or cm)';

export function notAMoistureShare(got: Got): Problem {
  return problem(got, 'The flooring’s moisture is a figure from 1 to 40%, or none where it is vinyl.');
}

export function methodUnit(method: string, unit: string, fix: string): Problem {
  return {
    option: 'method',
    got: method,
    expected: `Readings in ${unit} are not of that method.`,
    fix,
  };
}

export function methodRead(unit: string, method: string): string {
  return `readings in ${unit}: method read as ${method}`;
}

export function notWater(got: Got): Problem {
  return problem(
    got,
    'What water was it: none, clean (supply, rain), gray (washing machine, dishwasher), or sewage (toilet, drain, flood)? If you don’t know, type “unsure”.',
    'unsure',
  );
}

export function notAnAge(got: Got): Problem {
  return problem(
    got,
    'How long was it wet? Give hours or days, such as “30 hours” or “3 days”, or “none” if there was no leak.',
  );
}

export function damageSizeMissing(got: Got): Problem {
  return problem(got, 'How large is the damage? Two sides, across and up, with x between them.');
}

export function placeMissing(got: Got): Problem {
  return problem(got, 'Where is the damage? Say how far it is from the left wall and from the bottom wall.');
}

/** A hole and a notch in one joist without their distance. */
export function holeApartNotGiven(least: string): Problem {
  return {
    option: 'hole-apart',
    got: '',
    expected: `How far is the hole from the notch, and from any other hole? Code wants ${least} at least between them.`,
    fix: undefined,
  };
}

export function placeSide(got: Got): Problem {
  return problem(
    got,
    'Distances run from the left and the bottom wall: measure from those, or look at the room the other way round.',
  );
}

/** `expected` says why. */
export function lengthFalse(got: Got, expected: string): Problem {
  return problem(got, expected);
}

export function placeRead(left: string, bottom: string): string {
  return `at ${left}, ${bottom} read as ${left} from the left wall and ${bottom} from the bottom wall`;
}

export function notAPart(got: Got, line: boolean): Problem {
  return problem(
    got,
    `A part of the floor is its two sides with x between them, or its area${line ? ', or one length' : ''}.`,
  );
}

export function partReadIn(typed: string, unit: string): string {
  return `${typed} read as ${unit}`;
}

export function notASheet(got: Got): Problem {
  return problem(got, `A sheet is its two sides, each from ${byUnits('1 to 16 ft (0.3 to 4.9 m)', '0.3 to 4.9 m')}.`);
}

export function notATube(got: Got): Problem {
  return problem(got, 'A tube is what is printed on it: from 1 to 100 fl oz, or 30 to 3000 ml.');
}

export function tubeRead(typed: string): string {
  return `${typed} read as ${typed} fl oz`;
}

export function damageTooLarge(got: string, most: string): Problem {
  return {
    option: 'damage',
    got,
    expected: `A patch is at most ${most} each way: beyond that, replace the whole floor sheet by sheet.`,
    fix: undefined,
  };
}

export function damageBeyond(got: string, room: string): Problem {
  return { option: 'damage', got, expected: `The damage reaches beyond the room of ${room}.`, fix: undefined };
}

export function severalRooms(option: string, got: string): Problem {
  return { option, got: quoted(got), expected: 'Give just the room with the damage.', fix: undefined };
}

export function sheetTooSmall(got: string): Problem {
  return {
    option: 'sheet',
    got: quoted(got),
    expected: `A sheet reaches over three bays between joists and is at least ${byUnits('24 in (610 mm)', '610 mm')} wide.`,
    fix: undefined,
  };
}

const EXAMPLE = 'saw 2 h at 100, vacuum 1 h at 85';

export function notADay({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected: `Noises of a day, each with its time and level in dBA: “${EXAMPLE}”.`,
    fix: undefined,
  };
}

export function dayTooLong({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'These come to more than 24 hours.', fix: undefined };
}

export function areaWithoutSides(got: string): Problem {
  return {
    option: 'area',
    got: quoted(got),
    expected: 'Screws run along joists: give the noisy section’s two sides, or its length along one joist.',
    fix: undefined,
  };
}

export function notACountry(got: Got): Problem {
  return problem(got, 'The country the home is in: US, Canada, UK, Australia, or the name of another.', 'elsewhere');
}

export function countryElsewhere(typed: string): string {
  return `${typed} has no years of its own here: assuming the latest ones for old paint, old floors and glue`;
}

/** Which country's years were assumed. */
export const COUNTRY_TAKEN: Readonly<Record<'us' | 'elsewhere', string>> = {
  us: 'country: assuming US years for asbestos and lead; add “country”, or set it once with “project settings country: …”',
  elsewhere:
    'country: assuming the latest years for asbestos and lead, since your sizes are metric. Add “country”, or set it once with “project settings country: …”',
};

function tearoutProblem({ option, got }: Got, expected: string, fix?: string): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function notACovering(got: Got): Problem {
  return tearoutProblem(
    got,
    'Tear-out is worked out for carpet, sheet vinyl, vinyl plank, laminate and ceramic tile.',
    'carpet',
  );
}

export function notTested(got: Got): Problem {
  return tearoutProblem(
    got,
    'Type “clear” only where a laboratory’s report says so for the floor, its backing and its glue; “asbestos” where it found some; else “no”.',
    'no',
  );
}

export function notDoorways(got: Got): Problem {
  return tearoutProblem(
    got,
    `Doorways are “one a room”, how many and how wide (“${byUnits('2 x 30 in”), their widths (“30 in, 36 in', '2 x 80 cm”), their widths (“80 cm, 90 cm')}”), or none.`,
    'one a room',
  );
}

export function doorwaysTooWide(got: Got): Problem {
  return tearoutProblem(got, 'These doorways are wider than all the walls together.', 'one a room');
}

export function notTrim(got: Got): Problem {
  return tearoutProblem(
    got,
    `Trim to take off is its length and height, such as “${byUnits('40 ft x 3 in; 36 in x 1 in', '12 m x 8 cm; 90 cm x 3 cm')}”, or none.`,
    'none',
  );
}

export function notAHaul(got: Got): Problem {
  return tearoutProblem(
    got,
    `Debris leaves by pickup, by container, or by a trailer with its size: “${byUnits('trailer 3 cu yd” or “trailer 5 x 8 x 2 ft', 'trailer 2 m³” or “trailer 1.5 x 2.5 x 0.6 m')}”.`,
    'pickup',
  );
}

export function notAWeight(got: Got, least: string, most: string): Problem {
  return tearoutProblem(got, `A weight from ${least} to ${most}.`);
}

export function notALaidWeight(got: Got): Problem {
  return tearoutProblem(
    got,
    `What the floor weighs is “usual”, or a weight an area: “${byUnits('8 lb/sq yd”, “1.5 lb/sq ft” or “4 kg/m²', '4 kg/m²')}”.`,
    'usual',
  );
}

export function tooHeavy(got: Got): Problem {
  return tearoutProblem(
    got,
    'A floor as heavy as that is not cut into rolls that one person lifts: is the unit right?',
    'usual',
  );
}

export function weightReadIn(got: string, unit: string): string {
  return `${got} read as ${got} ${unit}`;
}

export function coveringRead(typed: string, covering: string): string {
  return `“${quoted(typed)}” read as ${covering}`;
}

export function yearUnknown(typed: string): string {
  return `“${quoted(typed)}” gives no sure year: assuming an old house`;
}

export function yearRead(typed: string, year: number): string {
  return `“${quoted(typed)}” read as built in ${year} at the earliest`;
}

export function beneathDoubtful(typed: string): string {
  return `“${quoted(typed)}” below is not known to be free of asbestos`;
}

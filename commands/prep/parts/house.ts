/** The house a tear-out happens in: its options, and the Refusal where its floor may hold asbestos. */

import type { Context } from '../../../src/chat/command.ts';
import { ASBESTOS_MARGIN } from '../../../src/figures/old-materials-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { COVERING_UNTOLD } from '../../../src/figures/tearout-figures.ts';
import { choice, text } from '../../../src/input/options.ts';
import {
  readBeneath,
  readCovering,
  suspicionAnywhere,
  type ToldBeneath,
  type ToldCovering,
} from '../../../src/input/parse-covering.ts';
import { readCountry, readHouseYear, readTested } from '../../../src/input/parse-house.ts';
import type { ToldRooms } from '../../../src/input/readings-made.ts';
import { type Country, countryFor, judge, type Tested } from '../../../src/prep/old-materials.ts';
import { type Refusal, unsafe } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { ASBESTOS_CALL, asbestosWhy, LAID_OVER } from '../../../src/text/found-text.ts';

export const houseOptions = {
  floor: text(
    {
      summary: 'What comes up: carpet, sheet vinyl, vinyl plank, laminate, tile',
      example: 'laminate',
      standard: 'carpet',
      record: COVERING_UNTOLD,
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
      summary: 'Floor, backing and glue tested for asbestos: clear (by report), asbestos or no',
      example: 'clear',
      standard: 'no',
    },
    readTested,
  ),
  below: text(
    {
      summary: 'What lies under it, if you looked: plywood, concrete, old tile …',
      example: 'plywood',
      standard: 'not looked',
    },
    readBeneath,
  ),
  country: text(
    {
      summary: 'Country of the home: US, Canada, UK, Australia or another; its years for old floors and paint',
      example: 'UK',
      standard: 'not told',
    },
    readCountry,
  ),
  insurer: choice(['no', 'yes'], { summary: 'Does an insurer pay?', standard: 'no' }),
};

export interface HouseAsk {
  readonly floor: ToldCovering;
  readonly built: number | undefined;
  readonly tested: Tested;
  readonly below: ToldBeneath;
  readonly country: Country | undefined;
  readonly room: Pick<ToldRooms, 'units'>;
  readonly insurer: 'yes' | 'no';
}

/** The country whose years count: the one told, else by the units that the rooms are told in or that the asker writes. */
export function countryOf({ country, room }: HouseAsk, { habits }: Context): Country {
  return countryFor(country, room.units === 'metric' || habits.units === 'metric');
}

/** What the house allows: a refusal, or work that may go on, with proof first or without. What is told of the floor counts wherever it stands. */
export function houseVerdict(ask: HouseAsk, context: Context): Refusal | 'proof' | 'go' {
  const aside = [...context.told].filter(([option]) => !['floor', 'tested', 'below'].includes(option));
  const margin = ASBESTOS_MARGIN[countryOf(ask, context)].value;
  const verdict = judge({
    year: ask.built,
    tested: ask.tested,
    layers: [ask.floor.suspicion, ask.below.suspicion],
    aside: aside.map(([, told]) => suspicionAnywhere(told)),
    margin,
  });
  if (verdict === 'go' || verdict === 'proof') return verdict;
  const facts = ['floor', 'below', 'built'].flatMap((option) => {
    const told = context.told.get(option);
    return told ? [`${option} “${told.slice(0, 60)}”`] : [];
  });
  return {
    why: asbestosWhy(verdict, margin, facts.length > 0 ? facts.join(', ') : undefined),
    call: verdict === 'found' ? `${ASBESTOS_CALL} ${LAID_OVER}` : ASBESTOS_CALL,
    cautions: worded(cautionsFor('tear-out').filter(({ topic }) => topic === 'asbestos' || topic === 'lead')),
    data: unsafe('asbestos'),
  };
}

/** What must be proved first: the floor itself where it is doubtful, else what was told to lie under it. */
export function toProve(ask: HouseAsk, context: Context): string {
  const option = ask.floor.suspicion === 'none' ? 'below' : 'floor';
  return context.told.get(option) ?? option;
}

/** An ask of another prep command about the same rooms and house. */
export function sharedAsk(command: string, { told }: Context): string {
  const shared = ['room', ...Object.keys(houseOptions), 'doors'].filter((option) => told.has(option));
  return `${command} ${shared.map((option) => `${option}: ${told.get(option)}`).join(', ')}`;
}

/** The house a tear-out happens in: its options, and the Refusal where its floor may hold asbestos. */

import type { Context } from '../../../src/bot/command.ts';
import { judge, type Suspicion, type Tested } from '../../../src/core/safety/suspect.ts';
import { readTested } from '../../../src/measure/asbestos-test.ts';
import { readBeneath, readCovering, type ToldBeneath, type ToldCovering } from '../../../src/measure/covering.ts';
import { readHouseYear } from '../../../src/measure/house-year.ts';
import { suspicionAnywhere } from '../../../src/measure/layer-words.ts';
import { choice, text } from '../../../src/measure/options.ts';
import type { Refusal } from '../../../src/reply/problem.ts';
import { cautionsFor } from '../../../src/trade/safety.ts';
import { worded } from '../../../src/words/cautions.ts';
import { ASBESTOS_CALL, asbestosWhy, LAID_OVER } from '../../../src/words/refusals.ts';

export const houseOptions = {
  floor: text(
    {
      summary: 'What comes up: carpet, sheet vinyl, vinyl plank, laminate, tile',
      example: 'laminate',
      standard: 'carpet',
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
  insurer: choice(['no', 'yes'], { summary: 'Does an insurer pay?', standard: 'no' }),
};

export interface HouseAsk {
  readonly floor: ToldCovering;
  readonly built: number | undefined;
  readonly tested: Tested;
  readonly below: ToldBeneath;
  readonly insurer: 'yes' | 'no';
}

/** The refusal that this house asks for; undefined where work may go on. What is told of the floor counts wherever it stands. */
export function refusalOf(ask: HouseAsk, context: Context): Refusal | undefined {
  const layers: Suspicion[] = [ask.floor.suspicion, ask.below.suspicion];
  const elsewhere = [...context.told].filter(([option]) => !['floor', 'tested', 'below'].includes(option));
  const verdict = judge({
    year: ask.built,
    tested: ask.tested,
    layers: [...layers, ...elsewhere.map(([, told]) => suspicionAnywhere(told))],
  });
  if (verdict === 'go') return undefined;
  const facts = ['floor', 'below', 'built'].flatMap((option) => {
    const told = context.told.get(option);
    return told ? [`${option} “${told.slice(0, 60)}”`] : [];
  });
  return {
    why: asbestosWhy(verdict, facts.length > 0 ? facts.join(', ') : undefined),
    call: verdict === 'found' ? `${ASBESTOS_CALL} ${LAID_OVER}` : ASBESTOS_CALL,
    cautions: worded(cautionsFor('tear-out').filter(({ topic }) => topic === 'asbestos' || topic === 'lead')),
  };
}

/** An ask of another prep command about the same rooms and house. */
export function sharedAsk(command: string, { told }: Context): string {
  const shared = ['room', ...Object.keys(houseOptions), 'doors'].filter((option) => told.has(option));
  return `${command} ${shared.map((option) => `${option}: ${told.get(option)}`).join(', ')}`;
}

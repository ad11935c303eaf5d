/** The words of comparing planks. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

const TWO = '6 x 48 in, 10 per carton, $45 a carton; 7 x 48 in, 8 per carton, $52 a carton';

export function choicesMissing(option: string, got: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'Tell two to five planks with ; between them.',
    fix: got.trim() === '' ? TWO : `${got.trim()}; 7 x 48 in, 8 per carton`,
  };
}

export function tooManyChoices(option: string, got: string, most: number, fix: string): Problem {
  return { option, got: quoted(got), expected: `At most ${most} planks are compared at a time.`, fix };
}

/** `fewer`: the first of the planks told, as many as can be compared; empty where not even two of them can. */
export function tooManyTogether(planks: number, most: number, fewer: readonly string[]): Problem {
  const got = `${planks} planks over all choices`;
  const few = fewer.length > 0;
  return {
    option: few ? 'planks' : 'room',
    got,
    expected: `All choices together are at most ${most} planks: compare ${few ? 'fewer of them, or in fewer rooms' : 'them in fewer rooms'}.`,
    fix: few ? fewer.join('; ') : '40 x 50 ft',
  };
}

export function padPrice(option: string, got: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'A pad’s price is for an area, such as $0.45/sq ft.',
    fix: '$0.45/sq ft',
  };
}

export const COMPARE = {
  headline: (winner: string, measure: string, value: string) => `${winner} ${measure}: ${value}.`,
  cheapest: 'costs least',
  leanest: 'wastes least',
  even: (names: readonly string[]) => `${names.join(' and ')} come out even.`,
  lay: (name: string) => `Lay ${name}`,
  ask: (room: string, plank: string, others: readonly (readonly [option: string, text: string])[]) =>
    [`planks room: ${room}`, `plank: ${plank}`, ...others.map((pair) => pair.join(': '))].join(', '),
  title: 'Side by side',
  winners: 'First by each measure',
  measure: 'Measure',
  pad: (cost: string) => `pad ${cost} on top`,
  padAttached: 'attached',
  padSeparate: 'needs one',
  padUnknown: 'not told',
  untold: '–',
  measures: {
    planks: 'Planks to lay',
    cartons: 'Cartons',
    waste: 'Waste, computed',
    cost: 'Cost, pad included',
    rows: 'Rows',
    cuts: 'Cuts to make',
    light: 'Light reflectance',
    tier: 'Price tier',
    pad: 'Pad',
    broken: 'Rules broken',
  },
  best: {
    planks: 'Fewest planks to lay',
    waste: 'Least waste',
    cost: 'Least cost, pad included',
    rows: 'Fewest rows',
    cuts: 'Fewest cuts',
    light: 'Reflects most light',
  },
} as const;

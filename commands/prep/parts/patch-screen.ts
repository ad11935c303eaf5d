/** What ends an answer before any figure: hazards that were told, as a refusal that says who to call. */

import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { type Found, together } from '../../../src/input/parse-found.ts';
import { type Refusal, unsafe } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { referral } from '../../../src/text/found-text.ts';

/** A refusal for any hazard in what was told, wherever it was told; undefined without one. */
export function refusalFor(...told: readonly Found[]): Refusal | undefined {
  const { hazards } = together(...told);
  return hazards.length > 0 ? refusal(referral(hazards), hazards[0] ?? 'unsure') : undefined;
}

/** As refusalFor, and where the panel is told to be rotten: it holds neither a screw nor a levelling compound. */
export function refusalOnPanel(...told: readonly Found[]): Refusal | undefined {
  return refusalFor(...told) ?? (together(...told).rot ? refusal(referral(['panel']), 'structure') : undefined);
}

/** A refusal with the cautions of subfloor work. */
export function refusal({ why, call }: { readonly why: string; readonly call: string }, hazard = 'structure'): Refusal {
  return { why, call, cautions: worded(cautionsFor('subfloor')), data: unsafe(hazard) };
}

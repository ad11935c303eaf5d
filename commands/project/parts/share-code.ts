/** A code by which somebody on any platform comes to what is shared. */

import type { Desk } from '../../../src/accounts/account-access.ts';
import type { Offer } from '../../../src/accounts/sharing.ts';
import type { Context, Outcome } from '../../../src/chat/command.ts';
import { LINK, SHARE, sayShared } from '../../../src/text/sharing-text.ts';
import { noneInUse, problem } from './at-desk.ts';
import { projectReply } from './reply.ts';
import { sayEnd } from './share-say.ts';

/** Makes the code; nothing is shared until somebody types it. */
export async function codeGiven(
  offer: Omit<Offer, 'to'>,
  notes: readonly string[],
  desk: Desk,
  context: Context,
): Promise<Outcome> {
  const project = await desk.inUse();
  if (!project) return problem(await noneInUse(context, desk));
  const { code } = await desk.links().makeFor(project.id, offer);
  const what = sayShared(offer);
  const reply = projectReply(context, {
    headline: LINK.helperCode(what, project.name),
    blocks: [
      {
        kind: 'facts',
        facts: [
          { label: LINK.code, value: code },
          { label: LINK.helperTypes, value: `project link ${code}` },
          { label: SHARE.sees, value: SHARE.shows(what, SHARE.partShows[offer.what]) },
          { label: SHARE.may, value: SHARE.mays[offer.role] },
          { label: SHARE.ends, value: sayEnd(offer) },
        ],
      },
      { kind: 'text', text: LINK.helperHow },
    ],
    assumed: notes,
    actions: [{ label: SHARE.show, ask: 'project share' }],
  });
  return { ...reply, once: [code] };
}

/** Draws the Home tab of one person from what they keep, and publishes it. */

import { accountKey } from '../../accounts/asker.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { keepAnswer, mintId } from '../../chat/saved-replies.ts';
import type { Reply } from '../../reply/reply.ts';
import { type HomeReply, homeAsks, homeView } from './home.ts';
import type { Party, SlackPorts } from './ports.ts';

/** Publishes it. Rejects when Slack does not take it. */
export async function publishHome(party: Party, ports: SlackPorts): Promise<void> {
  const project: HomeReply[] = [];
  const asks = (await ports.holds(party.asker).catch(() => false)) ? homeAsks(ports.commands) : [];
  for (const text of asks) {
    let last: Answer | undefined;
    for await (const one of ports.answer({ asker: party.asker, habits: ports.habits, text })) last = one;
    if (last && 'headline' in last) project.push(await kept(text, last, party, ports));
  }
  await party.client.views.publish({ user_id: party.where.user, view: homeView(ports.commands, project) });
}

async function kept(text: string, reply: Reply, { asker }: Party, ports: SlackPorts): Promise<HomeReply> {
  const id = mintId();
  try {
    await keepAnswer(ports.kept, id, { by: accountKey(asker), text, reply, shown: false });
    return { reply, id };
  } catch (cause) {
    ports.fault(id, cause);
    return { reply, id: undefined };
  }
}

/** A button pressed or a list chosen from, under an answer or on the Home tab. */

import { accountKey } from '../../accounts/asker.ts';
import type { Form } from '../../chat/command.ts';
import { keptDraft } from '../../chat/form.ts';
import { keptAnswer, showAnswer } from '../../chat/saved-replies.ts';
import { SLACK } from '../../text/chat-text.ts';
import { answerAsk, formOf, openForm } from './ask.ts';
import type { Press } from './buttons.ts';
import { renderSources } from './render.ts';
import { sendFiles, sendMessages, sendPart, sendPictures, showInChannel, tell, tellGone } from './send.ts';
import type { Party, SlackPorts } from './types.ts';

/** What was pressed: the action's id, and the value that it carries. */
interface Pressed {
  readonly action: string;
  readonly value: string;
  readonly trigger: string;
}

/** Acts on a press. Rejects with what went wrong on the way. */
export async function press(pressed: Pressed, party: Party, ports: SlackPorts): Promise<void> {
  const { name, id, place } = read(pressed);
  const account = accountKey(party.asker);
  if (name === 'open') return open({ command: pressed.value, told: {} }, pressed.trigger, party, ports);
  await ports.keeping.get(id);
  if (name === 'form' || name === 'mended' || name === 'tried') {
    const draft = await keptDraft(ports.kept, id, account);
    const line = name === 'mended' ? draft?.fix : name === 'tried' ? draft?.example : undefined;
    if (line !== undefined) return answerAsk(line, party, ports);
    return name === 'form' && draft?.form ? open(draft.form, pressed.trigger, party, ports) : tellGone(party, ports);
  }
  if (name === 'show') {
    const shown = await showAnswer(ports.kept, id, account);
    if (!shown) return tellGone(party, ports);
    await showInChannel(id, shown, party, ports);
    return;
  }
  const kept = name && (await keptAnswer(ports.kept, id, account));
  if (!name || !kept) return name ? tellGone(party, ports) : tell(SLACK.old, party, ports);
  const { reply } = kept;
  if (name === 'sources') return sendMessages(renderSources(reply), party, ports);
  if (name === 'all') return sendFiles(reply, reply.blocks, party, ports);
  if (name === 'pictures') return sendPictures(reply, party, ports);
  if (name === 'change') {
    const form = formOf(kept.text, ports);
    return form ? open(form, pressed.trigger, party, ports) : tell(SLACK.old, party, ports);
  }
  if (name === 'part') {
    if (!(await sendPart(reply, place, party, ports))) await tell(SLACK.old, party, ports);
    return;
  }
  const action = reply.actions[place];
  return action ? answerAsk(action.ask, party, ports) : tell(SLACK.old, party, ports);
}

export const PRESSES: readonly Press[] = [
  'ask',
  'part',
  'pictures',
  'sources',
  'change',
  'show',
  'all',
  'form',
  'mended',
  'tried',
  'open',
];

/** The press, the id of what was kept, and the place in it: a button has its place in its own id, a list in the value chosen. */
function read({ action, value }: Pressed): { name: Press | undefined; id: string; place: number } {
  const [first, own = ''] = action.split('.');
  const [id = '', chosen] = value.split('.');
  const given = chosen ?? own;
  return {
    name: PRESSES.find((known) => known === first),
    id,
    place: /^\d{1,5}$/.test(given) ? Number(given) : -1,
  };
}

/** Opens a form, or tells that Slack did not. */
async function open(form: Form, trigger: string, party: Party, ports: SlackPorts): Promise<void> {
  if (!(await openForm(form, trigger, party, ports))) await tell(SLACK.formLate, party, ports);
}

/** A button pressed or a list chosen from, under an answer or on the Home tab. */

import { accountKey } from '../../accounts/records.ts';
import type { Form } from '../../chat/command.ts';
import type { KeptAnswer } from '../../chat/saved-replies.ts';
import { SLACK } from '../../text/chat-text.ts';
import { lookUpPress, type PressKind } from '../session.ts';
import { answerAsk, openForm } from './ask.ts';
import type { Press } from './buttons.ts';
import { openSection, sendFiles, sendPart, sendPictures, showInChannel, tell, tellGone } from './send.ts';
import type { Party, SlackPorts } from './types.ts';

/** What was pressed: the action's id, and the value that it carries. */
interface Pressed {
  readonly action: string;
  readonly value: string;
  readonly trigger: string;
}

/** What each press is for, but for one that opens a form with nothing in it. */
const KINDS: Readonly<Record<Exclude<Press, 'open'>, PressKind>> = {
  ask: 'ask',
  part: 'look',
  pictures: 'look',
  sources: 'look',
  change: 'change',
  show: 'show',
  all: 'look',
  form: 'mend',
  mended: 'fix',
  tried: 'example',
  section: 'look',
  choice: 'choice',
  wrong: 'wrong',
};

/** Acts on a press. Rejects with what went wrong on the way. */
export async function press(pressed: Pressed, party: Party, ports: SlackPorts): Promise<void> {
  const { name, id, place, word } = chosen(read(pressed));
  if (name === undefined) return tell(SLACK.old, party, ports);
  if (name === 'open') return open({ command: pressed.value, told: {} }, pressed.trigger, party, ports);
  const what = await lookUpPress({ kind: KINDS[name], id, place }, accountKey(party.asker), ports);
  switch (what.found) {
    case 'request':
      return answerAsk({ text: what.text, ...(what.mistaken && { mistaken: what.mistaken }) }, party, ports);
    case 'form':
      return open(what.form, pressed.trigger, party, ports);
    case 'answer':
      return look({ name, id, place, word }, what.answer, party, ports);
    case 'gone':
      return tellGone(party, ports);
    default:
      return tell(SLACK.old, party, ports);
  }
}

/** A stored answer, looked into or shown to everybody. */
async function look(
  {
    name,
    id,
    place,
    word,
  }: { readonly name: Press; readonly id: string; readonly place: number; readonly word: string },
  answer: KeptAnswer,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const { reply } = answer;
  if (name === 'show') return showInChannel(id, answer, party, ports);
  if (name === 'all') return sendFiles(reply, reply.blocks, party, ports);
  if (name === 'pictures') return sendPictures(reply, party, ports);
  const wanted = name === 'sources' ? name : word;
  const part = name === 'part';
  if (!part && (await openSection(id, answer, wanted, party, ports))) return;
  if (!part || !(await sendPart(reply, place, party, ports))) await tell(SLACK.old, party, ports);
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
  'section',
  'choice',
  'wrong',
];

/** The list of what is next has a few presses of other kinds in it. */
function chosen<P extends { readonly name: Press | undefined; readonly word: string }>(given: P): P {
  const other = given.name === 'ask' ? LISTED.find((one) => one === given.word) : undefined;
  return other ? { ...given, name: other } : given;
}

const LISTED: readonly Press[] = ['change', 'all', 'wrong'];

/** The press, the id of what was kept, and the place in it: a button has its place in its own id, a list in the value chosen. */
function read({ action, value }: Pressed): { name: Press | undefined; id: string; place: number; word: string } {
  const [first, own = ''] = action.split('.');
  const [id = '', chosen] = value.split('.');
  const given = chosen ?? own;
  return {
    name: PRESSES.find((known) => known === first),
    id,
    place: /^\d{1,5}$/.test(given) ? Number(given) : -1,
    word: given,
  };
}

/** Opens a form, or tells that Slack did not. */
async function open(form: Form, trigger: string, party: Party, ports: SlackPorts): Promise<void> {
  if (!(await openForm(form, trigger, party, ports))) await tell(SLACK.formLate, party, ports);
}

/** Sends the answers of one ask: what stands at once, the last in its place, pictures in it, files where it is long. */

import { accountKey } from '../../accounts/asker.ts';
import { keepDraft } from '../../chat/form.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { keepAnswer, mintId } from '../../chat/saved-replies.ts';
import type { Reply } from '../../reply/reply.ts';
import { Outage } from '../../storage/types.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { sendMade } from './made.ts';
import { type Send, sendEach, toAskerPictured, toChannelPictured, type Way } from './pictured.ts';
import { type Pictures, picturesOf } from './pictures.ts';
import type { Party, SlackPorts } from './ports.ts';
import { type Posted, postTo } from './post.ts';
import { note, render, renderPictures, type Showing } from './render.ts';
import { settled } from './settle.ts';

/** What was asked, and the answers as they come. */
export interface Asked {
  readonly text: string;
  readonly answers: AsyncIterable<Answer>;
  /** Whether the ask can be opened as a form. */
  readonly changeable?: boolean;
}

/** Answers to the asker alone, or to the channel where the answer itself says so. Rejects when no way to them is left. */
export async function sendAnswers(
  { text, answers, changeable = false }: Asked,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const way = { post: postTo(party.client, party.where, ports.now), party, ports };
  const id = mintId();
  let before: Posted | undefined;
  let keeping: Promise<void> = Promise.resolve();
  for await (const { value: answer, final } of settled(answers, ports.patience)) {
    const shown = 'audience' in answer && answer.audience === 'channel';
    if (!final && shown) continue;
    // Kept while it is sent, for the store takes its time to be sure; one after the other, so that the last one stays.
    keeping = keeping.then(() => keep(id, answer, { text, shown }, party, ports));
    const underWay = keeping.then(() => {
      if (ports.keeping.get(id) === underWay) ports.keeping.delete(id);
    });
    ports.keeping.set(id, underWay);
    const showing = { id, shown, changeable };
    if (final && 'blocks' in answer) {
      const pictures = picturesOf(answer, party.client, ports);
      // The figures wait for no picture that takes its time.
      if (!before && !shown && (await isLate(pictures, ports))) {
        before = await sendEach(render(answer, showing), way.post.toAsker, before, ports);
      }
      before = await sendReply(answer, pictures, showing, before, way);
    } else before = await sendEach(render(answer, showing), way.post.toAsker, before, ports);
  }
  await keeping;
}

/** Shows a kept answer to the channel; whether it could be posted there. */
export async function showInChannel(
  id: string,
  { text, reply }: { readonly text: string; readonly reply: Reply },
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const way = { post: postTo(party.client, party.where, ports.now), party, ports };
  const pictures = picturesOf(reply, party.client, ports);
  return (await sendReply(reply, pictures, { id, shown: true, asked: text }, undefined, way)) !== undefined;
}

/** Whether something takes longer than an answer is waited for. */
function isLate(coming: Promise<unknown>, { patience }: SlackPorts): Promise<boolean> {
  return Promise.race([coming.then(() => false), patience().then(() => true)]);
}

/** Sends a reply with its pictures; undefined where the channel is closed to us, which is then told. */
async function sendReply(
  reply: Reply,
  drawn: Promise<Pictures>,
  showing: Showing,
  before: Posted | undefined,
  way: Way,
): Promise<Posted | undefined> {
  const { post, party, ports } = way;
  const pictures = await drawn;
  const alone = renderPictures(reply, pictures.files);
  const send: Send = showing.shown ? (message) => post.toChannel(message) : post.toAsker;
  const out = alone && {
    pictures,
    alone,
    messages: (drawn: boolean, direct: boolean) =>
      render(reply, { ...showing, direct, ...(drawn ? { pictures: pictures.files } : {}) }),
  };
  const posted = !out
    ? await sendEach(render(reply, showing), send, before, ports)
    : showing.shown
      ? await toChannelPictured(out, way)
      : await toAskerPictured(out, before, way);
  if (!posted) await post.toAsker(note(SLACK.notShown));
  await sendMade(reply, post, party, ports);
  return posted;
}

/** Keeps what the buttons of an answer need. Where the store does not take it, they tell so when they are pressed. */
async function keep(
  id: string,
  answer: Answer,
  { text, shown }: { readonly text: string; readonly shown: boolean },
  { asker }: Party,
  ports: SlackPorts,
): Promise<void> {
  const by = accountKey(asker);
  try {
    if ('headline' in answer) await keepAnswer(ports.kept, id, { by, text, reply: answer, shown });
    else if ('problems' in answer) {
      const { form, problems, example } = answer;
      const { fix } = problems[0];
      await keepDraft(ports.kept, id, {
        by,
        ...(fix === undefined ? {} : { fix }),
        ...(example === undefined ? {} : { example }),
        ...(form ? { form } : {}),
      });
    }
  } catch (cause) {
    // The store tells of its own outages, once and not for every ask.
    if (!(cause instanceof Outage)) ports.fault(id, cause);
  }
}

/** A sentence of our own to the asker. */
export async function tell(text: string, party: Party, ports: SlackPorts): Promise<void> {
  await postTo(party.client, party.where, ports.now).toAsker(note(text));
}

/** That a kept answer is not to be had. */
export function tellGone(party: Party, ports: SlackPorts): Promise<void> {
  return tell(CHAT.gone('/floorhand'), party, ports);
}

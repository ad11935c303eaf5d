/** Sends an ask's answers: one message where all is ready soon, else a first word in time, and the whole in its place later. */

import type { Answer } from '../bot/answer.ts';
import { type Command, fullName } from '../bot/command.ts';
import type { Invocation } from '../bot/invocation.ts';
import { keepAnswer, mintId } from '../bot/kept-answer.ts';
import { keepDraft } from '../bot/kept-draft.ts';
import { CHAT } from '../words/chat.ts';
import { answerRowsOf } from './answer-rows.ts';
import { problemRows, type Row } from './buttons.ts';
import type { Came } from './came.ts';
import { deliver, type Prepared } from './deliver.ts';
import type { Desk } from './desk.ts';
import { drawnFor, tellFault } from './fault.ts';
import { type Following, following } from './following.ts';
import { inTime } from './in-time.ts';
import { KEEP_TIME } from './limits.ts';
import { modalOf } from './modal.ts';
import { outgoing } from './outgoing.ts';
import { packed } from './page.ts';
import { render } from './render.ts';
import { lines } from './section.ts';
import type { Way } from './wire.ts';

/** An ask as it goes into the pipeline. */
export interface Ask extends Pick<Invocation, 'text' | 'written'> {
  /** The command that was chosen with nothing told: where it needs something, its form opens at once. */
  readonly bare?: Command;
}

/** How long the last answer is waited for before an earlier one is shown, ms. */
const SETTLE = 700;
/** A first response is taken for 3 s: by then something must be on its way, and the network has its share. */
const DEFER = 1500;

/** Answers an ask. Rejects with Undelivered where the answer reaches nobody. */
export async function sendAnswers(ask: Ask, came: Came, way: Way, desk: Desk): Promise<void> {
  const invocation: Invocation = {
    asker: came.asker,
    habits: desk.habits,
    text: ask.text,
    ...(ask.written === undefined ? {} : { written: ask.written }),
  };
  const stream = following(desk.answer(invocation));
  const id = mintId();
  const prepare = async (early: boolean): Promise<Prepared> => {
    const answer = stream.latest();
    if (!answer) throw new Error('an ask without an answer');
    return prepared(answer, stream.ended(), early, { ask, came, way, desk, id });
  };
  const ready = settled(stream, desk).then(() => prepare(true));
  const again = () => stream.end.then(() => prepare(false));
  const keep = async (): Promise<Answer | undefined> => {
    await stream.end;
    const answer = stream.latest();
    if (answer) await keptRows(answer, { ask, came, way, desk, id });
    return answer;
  };
  await deliver({ ready, again, keep, id }, came, way, desk, DEFER);
}

/** When there is something to show: the last answer, or what came by the time it should have. */
async function settled(stream: Following, desk: Desk): Promise<void> {
  const wait = desk.wait(SETTLE);
  await Promise.race([stream.end, wait.over]);
  wait.cancel();
  await stream.first;
}

interface Surroundings {
  readonly ask: Ask;
  readonly came: Came;
  readonly way: Way;
  readonly desk: Desk;
  readonly id: string;
}

async function prepared(answer: Answer, last: boolean, early: boolean, around: Surroundings): Promise<Prepared> {
  const { ask, came, way, desk } = around;
  if (early && ask.bare && 'problems' in answer) {
    const told = answer.form?.command === fullName(ask.bare) ? answer.form.told : {};
    return { answer, last, modal: modalOf(ask.bare, told, '') };
  }
  const messages = render(answer);
  const rows = keptRows(answer, around);
  const drawing = outgoing(messages, [], drawnFor(desk, came));
  const [[first, ...rest], under] = await Promise.all([drawing, rows]);
  const working = last ? [] : (packed([lines(['', `-# ${CHAT.working}`])])[0]?.components ?? []);
  const whole = { ...first, components: [...first.components, ...working, ...under] };
  return { answer, last, messages: [whole, ...(last ? rest : [])], ephemeral: isPrivate(answer, way) };
}

/** An answer meant for the channel is seen there; every other goes the way the ask came. */
function isPrivate(answer: Answer, way: Way): boolean {
  return 'audience' in answer && answer.audience === 'channel' ? false : way.ephemeral;
}

/** The rows of an answer, once what they need is kept; none where nothing can be kept, for they would not work. */
async function keptRows(answer: Answer, { ask, came, way, desk, id }: Surroundings): Promise<readonly Row[]> {
  try {
    if ('headline' in answer) {
      const shown = !isPrivate(answer, way);
      const kept = keepAnswer(desk.kept, id, {
        by: came.account,
        text: ask.text,
        reply: answer,
        shown: shown && came.ephemeral,
      });
      await inTime(kept, KEEP_TIME, desk);
      return answerRowsOf(ask.text, answer, id, !shown, desk);
    }
    if (!('problems' in answer)) return [];
    const { problems, form } = answer;
    const wrong = problems.map(({ option }) => option);
    const draft = { by: came.account, fix: problems[0].fix, wrong };
    await inTime(keepDraft(desk.kept, id, form ? { ...draft, form } : draft), KEEP_TIME, desk);
    return problemRows(id, answer.form !== undefined, true);
  } catch (cause) {
    tellFault(desk, cause);
    return [];
  }
}

/** Sends an ask's answers: one message where all is ready soon, else a first word in time, and the whole in its place later. */

import type { Form, Problems } from '../../chat/command.ts';
import { commandNamed, keepDraft } from '../../chat/form.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Invocation } from '../../chat/ports.ts';
import { keepAnswer, mintId } from '../../chat/saved-replies.ts';
import { fullName } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { answerRowsOf } from './answer-rows.ts';
import type { Ask } from './ask.ts';
import { problemRows, type Row } from './buttons.ts';
import type { Came } from './came.ts';
import { changesSomething, claimed } from './claim.ts';
import { deliver, type Prepared } from './deliver.ts';
import type { Desk } from './desk.ts';
import { drawnFor, tellUnlessOutage } from './fault.ts';
import { type Following, following } from './following.ts';
import { inTime } from './in-time.ts';
import { KEEP_TIME } from './limits.ts';
import { modalOf } from './modal.ts';
import { type Drawn, drawnAhead, drawnBy, outgoing } from './outgoing.ts';
import { packed } from './page.ts';
import { render } from './render.ts';
import { lines } from './section.ts';
import type { Way } from './wire.ts';

/** How long the last answer is waited for before an earlier one is shown, ms. */
const SETTLE = 700;
/** A first response is taken for 3 s: by then something must be on its way, and the network has its share. */
const DEFER = 1500;
/** How long the pictures of what is seen first are waited for, ms. */
const PICTURES = 3000;

/** Answers an ask. Rejects with Undelivered where the answer reaches nobody. */
export async function sendAnswers(ask: Ask, came: Came, way: Way, desk: Desk): Promise<void> {
  // Two processes may be connected for a moment, while one takes over from the other.
  if (!desk.shared && changesSomething(ask, desk) && !(await claimed(came, desk))) return;
  const invocation: Invocation = {
    asker: came.asker,
    habits: desk.habits,
    text: ask.text,
    ...(came.server === undefined ? {} : { server: came.server }),
    ...(came.channel === undefined ? {} : { place: came.channel }),
    ...(ask.written === undefined ? {} : { written: ask.written }),
  };
  const { drawn, ahead } = drawnAhead(drawnFor(desk, came));
  const stream = following(desk.answer(invocation), ahead);
  const id = mintId();
  const keep = (answer: Answer) => desk.keeping.keep(id, () => isKept(answer, ask, came, way, desk, id));
  const prepare = async (early: boolean): Promise<Prepared> => {
    const answer = stream.latest();
    if (!answer) throw new Error('an ask without an answer');
    return prepared(answer, stream.ended(), early, { ask, way, desk, id, drawn, keep });
  };
  const ready = settled(stream, desk).then(() => prepare(true));
  const again = () => stream.end.then(() => prepare(false));
  const keepLast = async (): Promise<Answer | undefined> => {
    await stream.end;
    const answer = stream.latest();
    if (answer) await keep(answer);
    return answer;
  };
  try {
    await deliver({ ready, again, keepLast, id }, came, way, desk, DEFER);
  } finally {
    await desk.keeping.settled(id);
  }
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
  readonly way: Way;
  readonly desk: Desk;
  readonly id: string;
  readonly drawn: Drawn;
  /** Keeps the answer for its buttons. */
  keep(answer: Answer): Promise<boolean>;
}

async function prepared(answer: Answer, ended: boolean, early: boolean, around: Surroundings): Promise<Prepared> {
  const { ask, way, desk, drawn, keep } = around;
  if (early && ask.bare && 'problems' in answer) {
    const told = answer.form?.command === fullName(ask.bare) ? answer.form.told : {};
    return { answer, last: ended, modal: modalOf(ask.bare, told, '') };
  }
  void keep(answer);
  const wait = early ? desk.wait(PICTURES) : undefined;
  const hasty = wait && drawnBy(wait.over, drawn);
  const [first, ...rest] = await outgoing(render(answer), [], hasty?.drawn ?? drawn);
  wait?.cancel();
  const last = ended && hasty?.late() !== true;
  const working = last ? [] : (packed([lines(['', `-# ${CHAT.working}`])])[0]?.components ?? []);
  const rows = desk.keeping.works() ? rowsOf(answer, around) : [];
  const whole = { ...first, components: [...first.components, ...working, ...rows] };
  return { answer, last, messages: [whole, ...(last ? rest : [])], ephemeral: isPrivate(answer, way) };
}

/** An answer meant for the channel is seen there; every other goes the way the ask came. */
function isPrivate(answer: Answer, way: Way): boolean {
  return 'audience' in answer && answer.audience === 'channel' ? false : way.ephemeral;
}

function rowsOf(answer: Answer, { ask, way, desk, id }: Surroundings): readonly Row[] {
  if ('headline' in answer) return answerRowsOf(ask, answer, id, isPrivate(answer, way), desk);
  if (!('problems' in answer)) return [];
  const { problems, again = false, example } = answer;
  const offered = { fix: problems[0].fix, again, example: example !== undefined };
  return problemRows(id, formOf(answer, ask, desk) !== undefined, offered);
}

/** The form that mends an ask; where nothing was read in somebody's message, that of planks, with nothing in it. */
function formOf({ form, again }: Problems, { written }: Ask, { commands }: Desk): Form | undefined {
  if (form || again || written !== 'message') return form;
  return commandNamed('floor planks', commands) && { command: 'floor planks', told: {} };
}

/** Keeps what the buttons of an answer need. Never rejects: false where it could not be kept. */
async function isKept(answer: Answer, ask: Ask, came: Came, way: Way, desk: Desk, id: string): Promise<boolean> {
  try {
    if ('headline' in answer) {
      const shown = came.ephemeral && !isPrivate(answer, way);
      const whole = { by: came.account, text: ask.text, reply: answer, shown };
      await inTime(keepAnswer(desk.kept, id, whole), KEEP_TIME, desk);
    } else if ('problems' in answer) {
      const { problems, example } = answer;
      const form = formOf(answer, ask, desk);
      const [{ fix }] = problems;
      const wrong = problems.map(({ option }) => option);
      const draft = {
        by: came.account,
        wrong,
        ...(fix === undefined ? {} : { fix }),
        ...(example === undefined ? {} : { example }),
      };
      await inTime(keepDraft(desk.kept, id, form ? { ...draft, form } : draft), KEEP_TIME, desk);
    }
    return true;
  } catch (cause) {
    tellUnlessOutage(desk, cause);
    return false;
  }
}

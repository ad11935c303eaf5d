/** What chats do alike with the answers of a request: so far, storing what their buttons need. */

import type { Form } from '../chat/command.ts';
import { keepDraft } from '../chat/form.ts';
import type { Answer } from '../chat/pipeline.ts';
import { keepAnswer } from '../chat/saved-replies.ts';
import type { KeyValueStore } from '../storage/types.ts';

/** What is stored with an answer. */
interface Stored {
  /** The account that asked (`accountKey`). */
  readonly by: string;
  /** The request. */
  readonly text: string;
  /** Whether others see the answer: then they may press its buttons too. */
  readonly shown: boolean;
  /** The form that mends the request, where there is one. */
  readonly form?: Form | undefined;
  /** Whether the form puts the options that could not be read first. */
  readonly wrongFirst?: boolean;
}

/** Stores what the buttons of an answer need under its short id. Throws Outage. */
export async function storeForButtons(kept: KeyValueStore, id: string, answer: Answer, stored: Stored): Promise<void> {
  const { by, text, shown, form, wrongFirst = false } = stored;
  if ('headline' in answer) return keepAnswer(kept, id, { by, text, reply: answer, shown });
  if (!('problems' in answer)) return;
  const { problems, example } = answer;
  const [{ fix }] = problems;
  await keepDraft(kept, id, {
    by,
    ...(wrongFirst ? { wrong: problems.map(({ option }) => option) } : {}),
    ...(fix === undefined ? {} : { fix }),
    ...(example === undefined ? {} : { example }),
    ...(form ? { form } : {}),
  });
}

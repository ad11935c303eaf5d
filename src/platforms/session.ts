/** What chats do alike with a request: when its answers are shown, what is stored for their buttons, what a press stands for. */

import type { Form, Understood } from '../chat/command.ts';
import { type KeptDraft, keepDraft, keptDraft } from '../chat/form.ts';
import type { Answer } from '../chat/pipeline.ts';
import { type KeptAnswer, keepAnswer, keptAnswer, mintId, showAnswer } from '../chat/saved-replies.ts';
import type { KeyValueStore } from '../storage/types.ts';
import { WRONG } from '../text/reader-text.ts';

// Answers on their way into the store: nobody waits for it before seeing them, and a press that is quicker
// waits for it.

export interface Saves {
  /** Whether the last answer could be stored: while none can, buttons would lead nowhere. */
  works(): boolean;
  /** Stores something under an id, after what came before under it; `save` resolves false when it could not. */
  save(id: string, save: () => Promise<boolean>): Promise<boolean>;
  /** Resolves when nothing is on its way any more under the id. */
  settled(id: string): Promise<void>;
}

export function savesUnderway(): Saves {
  const under = new Map<string, Promise<boolean>>();
  let works = true;
  return {
    works: () => works,
    async save(id, save) {
      // Not before the answer itself is on its way.
      const before: Promise<unknown> = under.get(id) ?? new Promise<void>((resolve) => setImmediate(resolve));
      const done = before.then(save);
      under.set(id, done);
      works = await done;
      if (under.get(id) === done) under.delete(id);
      return works;
    },
    settled: async (id) => void (await under.get(id)),
  };
}

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
  /** The person whose question it was, where somebody else had it answered. */
  readonly author?: string | undefined;
}

/** Stores what the buttons of an answer need under its short id. Throws Outage. */
export async function storeForButtons(kept: KeyValueStore, id: string, answer: Answer, stored: Stored): Promise<void> {
  const { by, text, shown, form, wrongFirst = false, author } = stored;
  if ('headline' in answer) return keepAnswer(kept, id, { by, text, reply: answer, shown, author });
  if (!('problems' in answer)) return;
  const { problems, example, open, choices } = answer;
  const [{ fix }] = problems;
  const asked = problems.map(({ option }) => option);
  await keepDraft(kept, id, {
    by,
    ...(wrongFirst ? { wrong: open === undefined ? asked : [open, ...asked] } : {}),
    ...(choices ? { choices: choices.map(({ ask }) => ask) } : {}),
    ...(fix === undefined ? {} : { fix }),
    ...(example === undefined ? {} : { example }),
    ...(form ? { form } : {}),
  });
}

// The answers of one request: better ones are waited for a moment, what stands then is shown, and the last
// one takes its place.

/** An answer to be shown, and whether no other follows it. */
export interface FirstAnswer {
  readonly answer: Answer;
  readonly last: boolean;
}

/** How long a better answer is waited for; `cancel` where the wait can be given up. */
interface Patience {
  readonly over: Promise<void>;
  cancel?(): void;
}

/** A request that is being answered. */
export interface AnswerSession {
  /** Short id that its answers are stored under. */
  readonly id: string;
  /** The last answer where it comes in time, else what stands then. Rejects where there is no answer. */
  readonly first: Promise<FirstAnswer>;
  /** Rejects where there is no answer. */
  readonly last: Promise<Answer>;
  /** Stores an answer for its buttons, in place of the one before: false where it could not be. */
  save(answer: Answer): Promise<boolean>;
}

/** How a platform brings the answers of one request to whoever asked. */
export interface Delivery {
  /** Shows what there is first. Resolves true when there is nothing to put in its place. */
  send(session: AnswerSession): Promise<boolean>;
  /** Puts the last answer in place of what was sent. */
  edit(last: Answer, session: AnswerSession): Promise<void>;
  /** Stores what the buttons of an answer need. Never rejects: false where it could not. */
  save(answer: Answer, id: string): Promise<boolean>;
  /** Takes what `send` or `edit` rejected with; without it the session rejects with that. */
  lost?(cause: unknown, session: AnswerSession): Promise<void>;
}

/** Follows answers that never throw, as those of the pipeline, and delivers them. Resolves when they are stored too. */
export async function deliverAnswers(
  answers: AsyncIterable<Answer>,
  { patience, saves }: { readonly patience: Patience; readonly saves: Saves },
  delivery: Delivery,
): Promise<void> {
  const id = mintId();
  const save = (answer: Answer): Promise<boolean> => saves.save(id, () => delivery.save(answer, id));
  const session: AnswerSession = { id, ...followed(answers, patience), save };
  try {
    if (!(await delivery.send(session))) await delivery.edit(await session.last, session);
  } catch (cause) {
    if (!delivery.lost) throw cause;
    await delivery.lost(cause, session);
  } finally {
    await saves.settled(id);
  }
}

function followed(answers: AsyncIterable<Answer>, patience: Patience): Pick<AnswerSession, 'first' | 'last'> {
  let latest: Answer | undefined;
  let ended = false;
  let came: () => void = () => {};
  const any = new Promise<void>((resolve) => {
    came = resolve;
  });
  const end = (async () => {
    try {
      for await (const one of answers) {
        latest = one;
        came();
      }
    } finally {
      ended = true;
      came();
    }
  })();
  const standing = (): FirstAnswer => {
    if (!latest) throw new Error('a request without an answer');
    return { answer: latest, last: ended };
  };
  const first = (async () => {
    await Promise.race([end, patience.over]);
    patience.cancel?.();
    await any;
    return standing();
  })();
  const last = end.then(() => standing().answer);
  // Whoever waits for them learns of it.
  for (const one of [first, last]) one.catch(() => undefined);
  return { first, last };
}

// Answers that reached nobody: stored for a week, and brought behind the next answer to the same account.

export interface MissedAnswers {
  /** Notes the stored answer of an id as missed, behind those that were before. Throws Outage. */
  note(account: string, id: string): Promise<void>;
  /** Takes the first answer that was missed, if there is one: at most one process gets it. `at` in milliseconds since 1970. Throws Outage. */
  take(account: string, at: number): Promise<{ readonly id: string; readonly answer: KeptAnswer } | undefined>;
}

const MISSED_FOR = 7 * 24 * 3600 * 1000;

/** The latest ones: more at once would bury the answer that they come behind. */
const MOST_MISSED = 5;

/** Another process may have noted something since the last look. */
const LOOK_EVERY = 10 * 60 * 1000;
const MOST_LOOKS = 20_000;

/** An account is looked up at most once in ten minutes, unless something was noted by this process. */
export function missedAnswers(kept: KeyValueStore): MissedAnswers {
  const keyOf = (account: string): string => `missed:${account}`;
  const looked = new Map<string, number>();
  const remember = (account: string, at: number): void => {
    looked.delete(account);
    looked.set(account, at);
    const [oldest] = looked.keys();
    if (looked.size > MOST_LOOKS && oldest !== undefined) looked.delete(oldest);
  };
  const idsOf = async (account: string): Promise<readonly string[]> => {
    const ids = await kept.get(keyOf(account));
    return typeof ids === 'string' && ids !== '' ? ids.split(' ') : [];
  };
  /** One at a time: each adds to what the one before wrote. */
  let noting: Promise<unknown> = Promise.resolve();
  const take: MissedAnswers['take'] = async (account, at) => {
    const before = looked.get(account);
    if (before !== undefined && Math.abs(at - before) < LOOK_EVERY) return undefined;
    const [id, ...more] = await idsOf(account);
    remember(account, at);
    if (id === undefined || !(await kept.delete(keyOf(account)))) return undefined;
    if (more.length > 0) {
      await kept.set(keyOf(account), more.join(' '), MISSED_FOR);
      looked.delete(account);
    }
    const answer = await keptAnswer(kept, id, account);
    if (answer) return { id, answer };
    return more.length > 0 ? take(account, at) : undefined;
  };
  return {
    async note(account, id) {
      looked.delete(account);
      const noted = noting.then(async () => {
        const ids = (await idsOf(account)).filter((one) => one !== id);
        await kept.set(keyOf(account), [...ids, id].slice(-MOST_MISSED).join(' '), MISSED_FOR);
      });
      noting = noted.catch(() => undefined);
      await noted;
    },
    take,
  };
}

// A press: by whatever verb a platform has for it, what was stored under its id is looked up, and only what
// that account may see.

/** What a button is for: the request mended, with a plank of ours, as one of the choices or as a form; a next request; the details as a form; what was wrong; the answer for all to see, or to be looked into. */
export type PressKind = 'fix' | 'example' | 'choice' | 'mend' | 'ask' | 'change' | 'wrong' | 'show' | 'look';

export interface StoredPress {
  readonly kind: PressKind;
  /** Of what was stored; empty where nothing could be. */
  readonly id: string;
  /** Which next request it is. */
  readonly place: number;
}

/** What a press comes to: a request, a form to open, a stored answer; `gone` where nothing is stored any more, `old` where nothing that this button needs. */
export type PressFound =
  | { readonly found: 'request'; readonly text: string; readonly mistaken?: Understood }
  | { readonly found: 'form'; readonly form: Form; readonly draft?: KeptDraft; readonly author?: string | undefined }
  | { readonly found: 'answer'; readonly answer: KeptAnswer }
  | { readonly found: 'gone' | 'old' };

/** Looks up a press, once what is on its way under its id is stored. Throws Outage. */
export async function lookUpPress(
  { kind, id, place }: StoredPress,
  account: string,
  { kept, saves }: { readonly kept: KeyValueStore; readonly saves: Saves },
): Promise<PressFound> {
  await saves.settled(id);
  if (kind === 'fix' || kind === 'example' || kind === 'choice' || kind === 'mend') {
    const draft = await keptDraft(kept, id, account);
    const text = kind === 'mend' ? undefined : kind === 'choice' ? draft?.choices?.[place] : draft?.[kind];
    if (text !== undefined) return { found: 'request', text };
    return draft?.form ? { found: 'form', form: draft.form, draft } : { found: 'gone' };
  }
  const answer = await (kind === 'show' ? showAnswer : keptAnswer)(kept, id, account);
  if (!answer) return { found: 'gone' };
  const { actions, form, understood } = answer.reply;
  if (kind === 'wrong')
    return understood ? { found: 'request', text: WRONG.word, mistaken: understood } : { found: 'old' };
  if (kind === 'change') return form ? { found: 'form', form, author: answer.author } : { found: 'old' };
  if (kind !== 'ask') return { found: 'answer', answer };
  const action = actions[place];
  return action ? { found: 'request', text: action.ask } : { found: 'old' };
}

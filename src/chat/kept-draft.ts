/** Asks not whole yet, kept a while under a short id, so that a form can be opened again with everything typed. */

import type { Kept } from '../storage/types.ts';
import type { Form } from './command.ts';

/** A day: long enough to measure what was missing. */
const KEPT_FOR = 24 * 3600 * 1000;

export interface KeptDraft {
  /** The account that asked (`accountKey`). */
  readonly by: string;
  /** What was told so far, where the command is known. */
  readonly form?: Form;
  /** The ask mended, as a line to ask. */
  readonly fix?: string;
  /** The ask with a plank of ours, as a line to ask. */
  readonly example?: string;
  /** The options that could not be read. */
  readonly wrong?: readonly string[];
  /** The platform's id of the message that a filled form is put in place of. */
  readonly mends?: string;
}

/** Keeps a draft, in place of an earlier one of the id. Throws Outage. */
export async function keepDraft(kept: Kept, id: string, draft: KeptDraft): Promise<void> {
  await kept.set(`draft:${id}`, draft, KEPT_FOR);
}

/** The draft of an id; undefined when it is gone, was never there, or is another account's. Throws Outage. */
export async function keptDraft(kept: Kept, id: string, account: string): Promise<KeptDraft | undefined> {
  const draft = (await kept.get(`draft:${id}`)) as KeptDraft | undefined;
  return draft?.by === account ? draft : undefined;
}

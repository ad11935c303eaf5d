/** What is said of sharing: what was given, to whom, until when, and what goes beyond it. */

import type { Problem } from '../reply/problem.ts';
import { quoted } from './asks.ts';

type What = 'project' | 'shopping' | 'guide' | 'cuts' | 'tearout' | 'checklist';

const WHATS: Readonly<Record<What, string>> = {
  project: 'the whole project',
  shopping: 'the shopping list',
  guide: 'the laying guide',
  cuts: 'the cut list',
  tearout: 'the tear-out',
  checklist: 'the checklist',
};

/** What is shared, in words: “the laying guide of bedroom”. */
export function sayShared({ what, room }: { readonly what: What; readonly room?: string | undefined }): string {
  return room === undefined ? WHATS[what] : `${WHATS[what]} of ${room}`;
}

/** An ask about more than was shared. */
export function notShared(
  got: string,
  project: string,
  share: { readonly what: What; readonly room?: string | undefined },
  shown: readonly string[],
): Problem {
  const expected = `Of “${project}” you were given ${sayShared(share)}, and nothing else.`;
  return { option: 'ask', got: quoted(got), expected, fix: shown[0] ?? 'help' };
}

/** An ask about what is the owner's alone. */
export function ownersOnly(got: string, shown: readonly string[]): Problem {
  const expected = 'What was spent and who pays is shown to the owner of the project alone.';
  return { option: 'ask', got: quoted(got), expected, fix: shown[0] ?? 'help' };
}

/** A link that has ended, was stopped, or never was: nothing tells which. */
export function linkLeadsNowhere(): Problem {
  return {
    option: 'ask',
    got: '',
    expected: 'This link leads nowhere now. Ask whoever gave it to you for a new one.',
    fix: 'project share',
  };
}

/** Everything that was sent to Slack, held against its types and its limits. */

import type { Loopback } from './loopback.ts';
import { messageFlaws, viewFlaws } from './payload-limits.ts';
import { blocksUnlikeTypes, viewUnlikeTypes } from './payload-schema.ts';

/** What of all that was sent Slack would not take. */
export function sentFlaws({ calls, responded }: Loopback): readonly string[] {
  const messages = [
    ...responded.map(({ body }) => body),
    ...calls.filter(({ method }) => method.startsWith('chat.')).map(({ args }) => args),
  ];
  const views = calls.filter(({ method }) => method.startsWith('views.')).map(({ args }) => args.view as object);
  return [
    ...messages.flatMap((message) => flawsOf(message)),
    ...views.flatMap((view) => [...viewFlaws({ ...view }), ...viewUnlikeTypes(view)]),
  ];
}

/** What of one message Slack would not take. */
export function flawsOf(message: { readonly text?: unknown; readonly blocks?: unknown }): readonly string[] {
  const { blocks } = message;
  return [...messageFlaws(message), ...blocksUnlikeTypes(Array.isArray(blocks) ? blocks : [])];
}

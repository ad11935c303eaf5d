/** An ask on its way into the pipeline, with what is known of it already. */

import type { Command } from '../../chat/command.ts';
import type { Invocation } from '../../chat/ports.ts';

export interface Ask extends Pick<Invocation, 'text' | 'written'> {
  /** The command that was chosen with nothing told: where it needs something, its form opens at once. */
  readonly bare?: Command;
  /** The command and what was told, where they are known without reading the text again. */
  readonly form?: { readonly command: Command; readonly told: Readonly<Record<string, string>> };
}

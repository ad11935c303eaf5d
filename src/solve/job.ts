/** What worker threads are asked to do: plain data. */

import type { Plank, Rules } from '../core/floor/floor.ts';
import type { Area } from '../core/floor/sliced.ts';
import type { StickTask } from '../core/trim/stick-task.ts';

export type Task =
  | { readonly kind: 'sticks'; readonly task: StickTask }
  | { readonly kind: 'floor'; readonly areas: readonly Area[]; readonly plank: Plank; readonly rules: Rules };

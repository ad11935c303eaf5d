/** What worker threads are asked to do: plain data. */

import type { Plan, Plank, Rules } from '../core/floor/floor.ts';
import type { Stock } from '../core/floor/rest-plan.ts';
import type { Progress } from '../core/floor/rest-runs.ts';
import type { Area } from '../core/floor/sliced.ts';
import type { HerringRules } from '../core/herringbone/herringbone.ts';
import type { ZigzagArea } from '../core/herringbone/lay.ts';
import type { StickTask } from '../core/trim/stick-task.ts';

export type Task =
  | { readonly kind: 'sticks'; readonly task: StickTask }
  | {
      readonly kind: 'floor' | 'floor-search';
      readonly areas: readonly Area[];
      readonly plank: Plank;
      readonly rules: Rules;
    }
  | { readonly kind: 'rest'; readonly plan: Plan; readonly progress: readonly Progress[]; readonly stock: Stock }
  | {
      readonly kind: 'herringbone';
      readonly areas: readonly ZigzagArea[];
      readonly plank: Plank;
      readonly rules: HerringRules;
    };

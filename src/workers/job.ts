/** What worker threads are asked to do: plain data. */

import type { Plan, Plank, Rules } from '../layout/floor.ts';
import type { HerringRules } from '../layout/herringbone.ts';
import type { ZigzagArea } from '../layout/herringbone-lay.ts';
import type { Stock } from '../layout/rest-plan.ts';
import type { Progress } from '../layout/rest-runs.ts';
import type { Area } from '../layout/sliced.ts';
import type { StickTask } from '../trim/stick-task.ts';

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

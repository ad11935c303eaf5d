/** What worker threads are asked to do: plain data. */

import type { Area } from '../layout/covered-area.ts';
import type { Plan, Plank, Rules } from '../layout/floor.ts';
import type { HerringRules } from '../layout/herringbone.ts';
import type { ZigzagArea } from '../layout/herringbone-lay.ts';
import type { Progress, Stock } from '../layout/resume-floor.ts';
import type { StickTask } from '../trim/sticks.ts';

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

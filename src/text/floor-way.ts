/** The words for the way rows run: which is the better, and why. */

import { counted } from './floor.ts';

/** What the other way takes. */
interface Takes {
  readonly planks: number;
  readonly cartons: number;
}

type Reason =
  | { readonly kind: 'strip' | 'rules' | 'wall' }
  | { readonly kind: 'planks' | 'rows'; readonly fewer: number };

export const WAY = {
  label: 'Way the rows run',
  reason: (reason: Reason): string => {
    switch (reason.kind) {
      case 'strip':
        return 'avoids a strip that is too narrow';
      case 'rules':
        return 'breaks fewer rules';
      case 'planks':
        return `${counted(reason.fewer, 'plank')} fewer`;
      case 'wall':
        return 'along the longer side';
      case 'rows':
        return `${counted(reason.fewer, 'row')} fewer to cut`;
    }
  },
  stay: (told: boolean, other: Takes, why: readonly string[]): string => {
    const kept = told ? 'as you asked' : 'as laid here';
    const good = why.length > 0 ? `, the better way: ${why.join(', ')}` : '; the other way is as good';
    return `${kept}${good}. Turned a quarter: ${takes(other)}.`;
  },
  turn: (told: boolean, other: Takes, why: readonly string[]): string => {
    const [start, how] = told ? ['as you asked', ''] : ['along the longer side', ' (direction: short)'];
    return `${start}. Turned a quarter${how} is better: ${why.join(', ')}; ${takes(other)}.`;
  },
} as const;

function takes({ planks, cartons }: Takes): string {
  return `${counted(planks, 'plank')}, ${counted(cartons, 'carton')} at the quick count`;
}

/** Offcuts that one region leaves and another uses: which end of which plank, how long, and for which row. */

import type { Piece, Plan } from './floor.ts';

/** `length` is what is left of the plank then, in ticks; `end` which end of the plank it is. Rows count from 0. */
export interface KeptOffcut {
  readonly plank: number;
  readonly length: number;
  readonly end: 'left' | 'right' | 'any';
  readonly from: { readonly region: string; readonly row: number };
  readonly to: { readonly region: string; readonly row: number };
}

interface Use {
  readonly piece: Piece;
  readonly region: string;
  readonly row: number;
}

/** Every offcut kept for a later region, in the order in which they come up; once for each region it serves. */
export function keptOffcuts(plan: Plan): readonly KeptOffcut[] {
  const uses = new Map<number, Use[]>();
  for (const { name, rows } of plan.regions) {
    rows.forEach(({ pieces }, row) => {
      for (const piece of pieces) {
        const known = uses.get(piece.plank) ?? [];
        known.push({ piece, region: name, row });
        uses.set(piece.plank, known);
      }
    });
  }
  return [...uses].flatMap(([plank, all]) => keptOf(plank, all, plan));
}

function keptOf(plank: number, uses: readonly Use[], plan: Plan): readonly KeptOffcut[] {
  const kept: KeptOffcut[] = [];
  let rest: number = plan.plank.length;
  uses.forEach(({ piece, region, row }, i) => {
    const before = uses[i - 1];
    if (before && before.region !== region) {
      const end = piece.part === 'start' ? 'right' : piece.part === 'end' ? 'left' : 'any';
      kept.push({
        plank,
        // Strips from one plank's width lie beside one another: then the whole of its length is kept.
        length: rest >= piece.length ? rest : plan.plank.length,
        end,
        from: { region: before.region, row: before.row },
        to: { region, row },
      });
    }
    rest -= piece.length + plan.rules.kerf;
  });
  return kept;
}

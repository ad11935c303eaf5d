/** Looks at the result data of trim alone, and knows nothing of what made it: pieces fit their walls, sticks hold their pieces. */

import type { TrimResult } from '../../commands/trim/trim-results.ts';

const TANGENT_SLACK = 2;

/** Everything wrong with a result, as lines; `free` are ticks of each wall without openings, by its name. */
export function trimFaults(trim: TrimResult, free: ReadonlyMap<string, number>): readonly string[] {
  return [...wallFaults(trim, free), ...stickFaults(trim)];
}

/** A mitred wall's pieces, less what slants add, come to the wall less its openings; settings halve what the corners turn. */
function wallFaults({ walls, pieces, thickness }: TrimResult, free: ReadonlyMap<string, number>): readonly string[] {
  const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
  return walls.flatMap((wall) => {
    const own = pieces.filter((piece) => piece.wall === wall.name);
    const ends = own.flatMap(({ left, right }, i) => [
      { ...left, interior: i === 0 ? wall.corners[0] : undefined },
      { ...right, interior: i === own.length - 1 ? wall.corners[1] : undefined },
    ]);
    let slants = 0;
    const faults: string[] = [];
    for (const { cut, setting, interior } of ends) {
      if (cut === 'scarf') slants += (thickness * tan(30)) / 2;
      if (cut === 'scarf' && setting !== 30) faults.push(`${wall.name}: a scarf at ${setting}`);
      if (cut === 'square' && setting !== 0) faults.push(`${wall.name}: a square cut at ${setting}`);
      if (cut !== 'miter' && cut !== 'cope') continue;
      if (interior === undefined) faults.push(`${wall.name}: a ${cut} where no corner is`);
      else if (Math.abs(2 * setting - Math.abs(180 - interior)) > 0.02)
        faults.push(`${wall.name}: ${setting} at ${interior}`);
      if (cut === 'miter' && interior !== undefined && interior > 180) slants += thickness * tan(setting);
      if (cut === 'cope' && interior !== undefined && interior > 180)
        faults.push(`${wall.name}: a coped outside corner`);
    }
    const inner = own.reduce((sum, { length }) => sum + length, 0) - slants;
    const wanted = free.get(wall.name) ?? 0;
    if (Math.abs(inner - wanted) > TANGENT_SLACK + own.length) faults.push(`${wall.name}: ${inner} for ${wanted}`);
    return faults;
  });
}

/** Every piece on one stick; a stick holds end trim, pieces and a kerf between each two, slanted as the gentler of the cuts at least. */
function stickFaults({ pieces, sticks, stock, kerf, endTrim, cents }: TrimResult): readonly string[] {
  const lengths = new Map(pieces.map(({ id, length }) => [id, length]));
  const cut = sticks.flatMap((stick) => stick.pieces);
  const faults: string[] = [];
  if (cut.length !== pieces.length || new Set(cut).size !== pieces.length) faults.push('pieces and sticks differ');
  for (const stick of sticks) {
    const used = stick.pieces.reduce(
      (sum, id) => sum + (lengths.get(id) ?? Number.NaN),
      endTrim + kerf * (stick.pieces.length - 1),
    );
    if (!(used + stick.leftover <= (stock[stick.stock]?.length ?? 0) + 1))
      faults.push(`a stick of ${stick.stock} holds ${used}`);
  }
  const paid = sticks.reduce((sum, { stock: index }) => sum + (stock[index]?.cents ?? Number.NaN), 0);
  if (paid !== cents) faults.push(`${cents} for ${paid}`);
  return faults;
}

/** The laying guide for the rest of a floor begun: row by row, from which offcut or plank. */

import { type Saying, sayCut } from '../../../src/input/format.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { RestPiece, RestPlan } from '../../../src/layout/resume-floor.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { GUIDE } from '../../../src/text/floor-text.ts';
import { RESUME } from '../../../src/text/home-text.ts';
import { ticks } from '../../../src/units/length.ts';

/** One table a region, in laying order. */
export function restTables(plan: Plan, rest: RestPlan, saying: Saying): readonly Block[] {
  const say = (length: number): string => sayCut(ticks(length), saying);
  const uses = new Map<number, number>();
  for (const { pieces } of rest.rows) {
    for (const { from } of pieces) if ('plank' in from) uses.set(from.plank, (uses.get(from.plank) ?? 0) + 1);
  }
  const begun = new Set<number>();
  const source = ({ length, from }: RestPiece): string => {
    if ('offcut' in from) return RESUME.fromOffcut(say(length), from.offcut + 1);
    if (begun.has(from.plank)) return GUIDE.rest(say(length), from.plank);
    begun.add(from.plank);
    const keeps = (uses.get(from.plank) ?? 0) > 1;
    return GUIDE.fresh(say(length), from.plank, keeps ? say(plan.plank.length - length - plan.rules.kerf) : undefined);
  };
  return plan.regions.flatMap(({ name, rows }): Block[] => {
    const own = rest.rows.filter(({ region }) => region === name);
    if (own.length === 0) return [];
    const cells = own.flatMap(({ row, pieces }) => {
      const height = rows[row]?.height ?? plan.plank.width;
      const runs = runsIn(pieces);
      return runs.map((run, i) => {
        const label = `${row + 1}${runs.length > 1 ? String.fromCodePoint(97 + (i % 26)) : ''}`;
        const ripped = height < plan.plank.width ? [GUIDE.ripped(say(height))] : [];
        return [[label, ...ripped].join(', '), ...runCells(run, say, source)];
      });
    });
    return [{ kind: 'table', title: RESUME.guide(name), columns: GUIDE.columns, rows: cells }];
  });
}

function runCells(
  run: readonly RestPiece[],
  say: (length: number) => string,
  source: (piece: RestPiece) => string,
): readonly string[] {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) return ['', '', '', ''];
  const whole = run.filter(({ part }) => part === 'whole').length;
  const cuts = run.filter(({ part }) => part !== 'whole').map(source);
  const side = (piece: RestPiece): string => (piece.part === 'whole' ? GUIDE.whole : say(piece.length));
  if (run.length === 1) {
    const only = first.part === 'whole' ? GUIDE.whole : GUIDE.wallToWall(say(first.length));
    return [only, first.part === 'whole' ? '1' : '', '', cuts.join('; ')];
  }
  return [side(first), String(whole), side(last), cuts.join('; ')];
}

/** A row's pieces by run: a run ends where the next piece does not follow on. */
function runsIn(pieces: readonly RestPiece[]): readonly (readonly RestPiece[])[] {
  const runs: RestPiece[][] = [];
  let end: number | undefined;
  for (const piece of pieces) {
    if (piece.u === end) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    end = piece.u + piece.length;
  }
  return runs;
}

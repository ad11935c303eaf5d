/** Pictures of trim: nothing overlaps or leaves the sheet, every number is on it, and nothing is told by colour alone. */

import { afterAll, describe, expect, test } from 'vitest';
import type { TrimResult } from '../../commands/trim/trim-results.ts';
import { toSvg } from '../../src/drawing/svg.ts';
import { meet, textBox } from '../../src/drawing/text.ts';
import { sayCut } from '../../src/input/format.ts';
import { type Drawing, SHEET_WIDTH, type Text } from '../../src/reply/drawing.ts';
import { ticks } from '../../src/units/length.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { replyTo } from '../chat/asked.ts';
import { IMPERIAL, METRIC } from './drawn-rooms.ts';

afterAll(closeWorkers);

/** An L with an outside corner, a bay and two doors; a long hall with joints; a closet of glue-up pieces; metric, coped. */
const ASKS: Readonly<Record<string, string>> = {
  ell: `list room: living walk 12' right 15' right 8' right 6' left 4' right 9' right, doors: 32 in on wall 1, 4' from the left; 30 in on wall 4, bay: wall 5: front 4', sides 2', stock: 8 ft $7.98; 12 ft $12.48; have 2 x 5 ft, end-trim: 1/2 in`,
  hall: `list room: hall 4' x 38', doors: 30 in on wall 2, 3 in from the left; 30 in on wall 2, 6' from the left; 30 in on wall 4; 30 in on wall 1, stock: 8 ft`,
  closet: `list room: the long closet under the stairs 3' x 5', doors: 28 in on wall 1, bay: wall 2: front 5 in, sides 4 in, 90°`,
  metric:
    'list room: chambre 3,6 x 4,2 m; hall 1,1 x 6 m, doors: 800 mm on wall 1, stock: 2,4 m 9,90 €; 3,6 m 13,90 €, inside-joint: cope',
};

async function drawn(ask: string): Promise<{ data: TrimResult; drawings: readonly Drawing[] }> {
  const { blocks, data } = await replyTo(ask);
  return {
    data: data as TrimResult,
    drawings: blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : [])),
  };
}

function textsOf({ shapes }: Drawing): readonly Text[] {
  return shapes.filter((shape) => shape.kind === 'text');
}

describe.each(Object.entries(ASKS))('%s', (name, ask) => {
  test('texts keep apart and on the sheet, and are large enough for a phone', async () => {
    const { drawings } = await drawn(ask);
    expect(drawings.length).toBeGreaterThanOrEqual(2);
    for (const drawing of drawings) {
      const texts = textsOf(drawing);
      const boxes = texts.map(textBox);
      expect(texts.length).toBeGreaterThan(3);
      expect(Math.min(...texts.map(({ size }) => size))).toBeGreaterThanOrEqual(9);
      boxes.forEach((box, i) => {
        expect(
          [box.left >= 0, box.right <= SHEET_WIDTH, box.top >= 0, box.bottom <= drawing.height],
          texts[i]?.text,
        ).toEqual([true, true, true, true]);
        const met = boxes.findIndex((other, j) => j > i && meet(box, other));
        expect([texts[i]?.text, texts[met]?.text ?? ''].slice(met < 0 ? 1 : 0), texts[i]?.text).toEqual(['']);
      });
    }
  });

  test('every piece is on an elevation with its length, and every stick with all its saw marks in order', async () => {
    const { data, drawings } = await drawn(ask);
    const saying = name === 'metric' ? METRIC : IMPERIAL;
    const words = drawings.map((drawing) => textsOf(drawing).map(({ text }) => text));
    const elevations = words.slice(0, -1).flat().join('\n');
    for (const { length } of data.pieces) expect(elevations).toContain(sayCut(ticks(length), saying));
    const tapes = words.flat();
    for (const stick of data.sticks) {
      const [first] = stick.pieces;
      const piece = data.pieces.find(({ id }) => id === first);
      expect(tapes).toContain(sayCut(ticks(data.endTrim + (piece?.length ?? 0)), saying));
    }
  });

  test('short pieces and leftovers have a pattern, boards an outline, and the alt text tells every wall', async () => {
    const { data, drawings } = await drawn(ask);
    const svg = drawings.map((drawing) => toSvg(drawing)).join('\n');
    if (data.sticks.some(({ leftover }) => leftover > 0)) expect(svg).toContain('url(#dots)');
    const alts = drawings.map(({ alt }) => alt).join('\n');
    for (const wall of data.walls) expect(alts).toContain(`Wall ${wall.name.slice(wall.name.lastIndexOf(' ') + 1)},`);
  });
});

/** A job handed on in one message, and the pieces of the saw card against the trim that they are cut for. */

import { describe, expect, test } from 'vitest';
import { fitted, ONE_MESSAGE, textOf } from '../../commands/project/handoff.ts';
import { sticksPieces } from '../../commands/project/job-sheets.ts';
import type { TrimResult } from '../../commands/trim/trim-results.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { emptyContent } from '../../src/project/project.ts';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import { HANDOFF } from '../../src/text/sheets-text.ts';
import { ASKER, replyTo } from '../chat/asked.ts';
import { demoPorts, portsInMemory } from '../chat/demo-flat.ts';
import { flatSheets } from './gathered.ts';

const { labels } = HANDOFF;

describe('a summary', () => {
  test('of the flat fits one message and tells what the sheets tell', async () => {
    const ports = await demoPorts(ASKER, (_reference, cause) => {
      throw cause;
    });
    const { data } = await replyTo('project handoff', { ports });
    const { text } = data as { readonly kind: string; readonly text: string };
    expect(text.length).toBeLessThanOrEqual(ONE_MESSAGE);
    const planks = await replyTo('planks', { ports });
    const { count } = planks.data as { readonly kind: string; readonly count: { cartons: number; planks: number } };
    expect(text).toContain(`${count.cartons} cartons`);
    expect(text).toContain(`${count.planks} planks to lay`);
    // 3.5 × 14, 11 × 12.5 and 3 × 5 ft.
    for (const area of ['hall 49 sq ft', 'bedroom 137.5 sq ft', 'closet 15 sq ft']) expect(text).toContain(area);
    expect(text).toContain('asbestos');
  });

  test('tells room by room what is refused and mended, whatever rooms are called, and its cautions as cautions', async () => {
    const ports = portsInMemory((_reference, cause) => {
      throw cause;
    });
    const floors = { room: 'carpet', bedroom: 'carpet', closet: 'vinyl' };
    const rooms = Object.entries(floors).map(([name, floor]) => ({
      name,
      text: "12' x 14'",
      notes: [],
      inScope: true,
      floor,
    }));
    await openAccess(ASKER, ports)?.create({ ...emptyContent('Upstairs flat'), rooms });
    const patch = "patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, room: bedroom";
    await replyTo(`project keep ${patch}, found: none`, { ports });
    const { blocks, cautions, data } = await replyTo('project handoff', { ports });
    const { text } = data as { readonly kind: string; readonly text: string };
    expect(text.length).toBeLessThanOrEqual(ONE_MESSAGE);
    expect(text).toMatch(/Call first: closet: [\s\S]*asbestos laboratory/);
    expect(JSON.stringify(blocks)).not.toContain(labels.care);
    expect(cautions.map(({ topic }) => topic)).toEqual(expect.arrayContaining(['asbestos', 'saw', 'tack-strip']));
    for (const caution of cautions) expect(text).toContain(caution.text);
    const { sheets, missing = [] } = (await replyTo('project sheets', { ports })).data as unknown as Sheets;
    const titles = sheets.map(({ title }) => title);
    expect(titles).toEqual(
      expect.arrayContaining(['Tear-out: room, bedroom', 'Tear-out: closet', 'Subfloor patch: bedroom']),
    );
    expect(missing).toEqual([]);
  });

  test('too long for one loses whole lines, the least important first, and never what can hurt', () => {
    const rooms = Array.from({ length: 50 }, (_, i) => `room of a rather long name ${i} ${i + 100} sq ft`);
    const lines = [
      { label: labels.care, items: ['may hold asbestos'], never: true as const },
      { label: labels.rooms, items: ['together 9,999 sq ft', ...rooms], never: true as const },
      { label: labels.floor, items: ['7" × 48" planks, 31 cartons of 10'] },
      { label: labels.rows, items: rooms },
    ];
    const kept = fitted('A flat', lines);
    const text = textOf('A flat', kept);
    expect(text.length).toBeLessThanOrEqual(ONE_MESSAGE);
    expect(text).toContain('may hold asbestos');
    expect(text).toContain('together 9,999 sq ft');
    expect(kept.at(-1)).toEqual({ label: labels.left, items: [labels.floor, labels.rows] });
    const given = kept.find(({ label }) => label === labels.rooms)?.items ?? [];
    const more = Number(/^and (\d+) more$/.exec(given.at(-1) ?? '')?.[1]);
    expect(given.length - 2 + more).toBe(rooms.length);
    expect(given.slice(1, -1)).toEqual(rooms.slice(0, given.length - 2));
  });
});

describe('the saw card', () => {
  // Reported by the trade: a miter bisects its corner; its long point is at the back inside, at the face outside.
  test('has the ends of every piece of trim as its corners ask', async () => {
    const ask = `list room: living walk 12' right 15' right 8' right 6' left 4' right 9' right, doors: 32 in on wall 1`;
    const trim = (await replyTo(ask)).data as TrimResult;
    const pieces = sticksPieces(trim, '.');
    expect(pieces.map(({ ticks }) => ticks).sort()).toEqual(trim.pieces.map(({ length }) => length).sort());
    let outside = 0;
    for (const given of trim.pieces) {
      const piece = pieces.find(({ what }) => what === `baseboard ${given.id}`);
      const corners = trim.walls.find(({ name }) => name === given.wall)?.corners ?? [];
      for (const [i, side] of (['left', 'right'] as const).entries()) {
        const end = piece?.[side];
        if (given[side].cut === 'square') expect(end?.cut).toBe('square');
        if (given[side].cut !== 'miter') continue;
        const isOutside = (corners[i] ?? 0) > 180;
        outside += isOutside ? 1 : 0;
        expect(end).toMatchObject({
          cut: 'mitre',
          degrees: Math.abs(180 - (corners[i] ?? 0)) / 2,
          corner: isOutside ? 'outside' : 'inside',
          long: isOutside ? 'face' : 'back',
        });
      }
    }
    expect(outside).toBe(2);
  });

  test('has every cut piece of the floor once, the cut end at the wall', async () => {
    const sheets = await flatSheets();
    for (const { room, reply } of sheets.sheets.filter(({ key }) => key === 'guide')) {
      const { regions } = reply.data as unknown as {
        regions: { rows: { height: number; pieces: { part: string; length: number; shape?: unknown }[] }[] }[];
      };
      const plank = 7 * 8128;
      const cut = regions.flatMap(({ rows }) =>
        rows.flatMap(({ height, pieces }) =>
          pieces.filter(({ part, shape }) => part !== 'whole' || shape !== undefined || height < plank),
        ),
      );
      const card = sheets.sheets.find((sheet) => sheet.key === 'cuts' && sheet.room === room)?.pieces ?? [];
      const planks = card.filter(({ of }) => of === 'plank');
      expect(planks.map(({ ticks }) => ticks)).toEqual(cut.map(({ length }) => length));
      planks.forEach(({ left, right }, i) => {
        if (cut[i]?.part === 'start') expect([left.cut, right.cut]).toEqual(['square', 'factory']);
        if (cut[i]?.part === 'end') expect([left.cut, right.cut]).toEqual(['factory', 'square']);
      });
    }
  });
});

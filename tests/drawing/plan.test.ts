/** Pictures that can be read: nothing overlaps or leaves the sheet, every row and wall is there, and labels agree with the guide. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guideTables } from '../../commands/floor/guide.ts';
import { MOST_SHEETS } from '../../src/drawing/floor-plans.ts';
import type { Saying } from '../../src/input/format.ts';
import type { Plan } from '../../src/layout/floor.ts';
import type { Angle } from '../../src/layout/frame.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { plank, region } from '../outside/laid.ts';
import { drawPlan, drawRoom } from './drawn.ts';
import { box, feetOutline, IMPERIAL, METRIC, planOf, ROOMS } from './drawn-rooms.ts';
import { clashes, labelLines, textsOf, wallsOf } from './read-drawing.ts';

const ANGLES: readonly Angle[] = [0, 90, 180, 270];
const SMALLEST = 9;

/** The pages of one region: they alone carry row numbers or its walls. */
function pagesOf(plan: Plan, index: number, saying: Saying): readonly Drawing[] {
  const part = plan.regions[index];
  return part ? drawRoom(plan, part, saying) : [];
}

/** Every law of a picture, on the pictures of a plan. */
function check(plan: Plan, saying: Saying): void {
  const drawings = drawPlan(plan, saying);
  expect(drawings.length).toBeLessThanOrEqual(MOST_SHEETS);
  for (const drawing of drawings) {
    expect(clashes(drawing)).toEqual([]);
    expect(drawing.width).toBe(360);
    expect(drawing.height).toBeLessThanOrEqual(1600);
    expect(Math.min(...textsOf(drawing).map(({ size }) => size))).toBeGreaterThanOrEqual(SMALLEST);
    expect(drawing.alt).not.toMatch(/undefined|NaN/);
    expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
  }
  const guide = guideTables(plan, saying);
  plan.regions.forEach((part, index) => {
    const pages = pagesOf(plan, index, saying);
    const table = guide[index];
    if (table?.kind !== 'table') throw new Error('no guide');
    checkLabels(pages, table.rows);
    if (saying.units === 'imperial') checkWalls(pages, part.outline);
  });
}

/** The guide's columns are: row, start, whole planks, end, cut from. */
function checkLabels(pages: readonly Drawing[], guide: readonly (readonly string[])[]): void {
  const lines = pages.map(labelLines);
  const starts = lines.flatMap((page) => page.starts);
  const ends = lines.flatMap((page) => page.ends);
  expect(starts.map(({ row }) => row)).toEqual(guide.map(([row = '']) => row.split(',')[0]));
  expect(starts.map(({ cut }) => cut)).toEqual(guide.map(([, start = '']) => start.replace(' wall to wall', '')));
  expect(ends.map(({ cut }) => cut)).toEqual(guide.map(([, , , end = '']) => end).filter((end) => end !== ''));
  // Both pieces of a plank carry the number that the guide gives it.
  let next = 0;
  guide.forEach(([, , , end = '', from = ''], i) => {
    const own = [starts[i]?.offcut, ...(end === '' ? [] : [ends[next++]?.offcut])].filter((text) => text);
    expect(own).toEqual(from.match(/no\. \d+/g) ?? []);
  });
}

/** Each wall's written length is the outline's to the sixteenth, and what goes out comes back. */
function checkWalls(pages: readonly Drawing[], outline: Plan['regions'][number]['outline']): void {
  const walls = wallsOf(pages);
  const sums = { east: 0, west: 0, north: 0, south: 0 };
  outline.forEach(([x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length] ?? [x, y];
    const written = walls.get(i + 1) ?? Number.NaN;
    expect(Math.abs(written - (Math.abs(nx - x) + Math.abs(ny - y)) / 8128)).toBeLessThanOrEqual(1 / 32);
    sums[nx > x ? 'east' : nx < x ? 'west' : ny > y ? 'north' : 'south'] += written;
  });
  expect(walls.size).toBe(outline.length);
  expect(Math.abs(sums.east - sums.west)).toBeLessThanOrEqual(outline.length / 32);
  expect(Math.abs(sums.north - sums.south)).toBeLessThanOrEqual(outline.length / 32);
}

describe.each(Object.entries(ROOMS))('%s', (name, regions) => {
  it.each(name === 'home' || name === 'large' ? ([0, 90] as const) : ANGLES)(
    'reads well with its rows at %i°',
    (angle) => {
      check(planOf(regions, angle), IMPERIAL);
    },
  );

  it('reads well in metric and with narrow boards', () => {
    check(planOf(regions, 0, plank(7, 48)), METRIC);
    if (name !== 'home' && name !== 'large') check(planOf(regions, 0, plank(2, 10, 'none')), IMPERIAL);
  });
});

describe('random rooms', () => {
  const boards = [plank(5, 36), plank(6, 48), plank(7, 48, 'none'), plank(2, 10)] as const;

  it('read well with any board and direction', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.nat({ max: 3 }),
        fc.constantFrom(...boards),
        fc.constantFrom(...ANGLES),
        (seed, shape, board, angle) => {
          const room = randomRooms(seed, shape + 1)[shape];
          if (room) check(planOf([region(room.name, room.outline)], angle, board), IMPERIAL);
        },
      ),
      { numRuns: 30 },
    );
  });
});

function firstOf(drawings: readonly Drawing[]): Drawing {
  const [first] = drawings;
  if (!first) throw new Error('no drawing');
  return first;
}

function notesOf(drawing: Drawing): string {
  return textsOf(drawing, 'note')
    .map(({ text }) => text)
    .join(' ');
}

describe('what is drawn where', () => {
  it('is to scale: a plank of the floor is as long for its width as the plank is', () => {
    const { shapes } = firstOf(drawPlan(planOf(ROOMS.closet, 0, plank(6, 12)), IMPERIAL));
    const whole = shapes.flatMap((shape) => (shape.kind === 'rect' && shape.role === 'plank-whole' ? [shape] : []));
    // Nearest the wall a row may be ripped, and the legend's swatch is no plank.
    const ratios = whole.map(({ width, height }) => width / height);
    expect(ratios.filter((ratio) => Math.abs(ratio - 2) < 0.01).length).toBeGreaterThan(5);
  });

  it('keeps the room as told when its labels can be read so, and says so when it is turned', () => {
    expect(notesOf(firstOf(drawPlan(planOf([region('room', box(8, 10))], 0), IMPERIAL)))).not.toContain('Turned');
    const hall = firstOf(drawPlan(planOf(ROOMS.hall, 0), IMPERIAL));
    expect(notesOf(hall)).toContain('Turned a quarter to the left');
    expect(hall.height).toBeGreaterThan(1000);
  });

  it('puts every wall outside the floor it bounds, whichever way the rows run', () => {
    // The first side told is the lowest: its number stands below the middle of the floor unless the room is turned.
    for (const angle of ANGLES) {
      const drawing = firstOf(drawPlan(planOf([region('room', box(8, 8))], angle), IMPERIAL));
      const at = (wall: number): readonly [number, number] => {
        const text = textsOf(drawing, 'dimension', 'dimension-start').find((one) => one.text.includes(`wall ${wall} `));
        return [text?.x ?? 0, text?.y ?? 0];
      };
      expect(at(1)[1]).toBeGreaterThan(at(3)[1]);
      expect(at(2)[0]).toBeGreaterThan(at(4)[0]);
    }
  });

  it('starts numbering at the starting wall', () => {
    for (const angle of ANGLES) {
      const drawing = firstOf(drawPlan(planOf([region('room', box(8, 8))], angle), IMPERIAL));
      const [start] = textsOf(drawing, 'dimension-start');
      const number = (row: string) => textsOf(drawing, 'row-number').find(({ text }) => text === row);
      const [first, last] = [number('1'), number('16')];
      if (!start || !first || !last) throw new Error('no labels');
      const far = (text: typeof first): number =>
        first.turn === 0 ? Math.abs(text.y - start.y) : Math.abs(text.x - start.x);
      expect(far(first)).toBeLessThan(far(last));
    }
  });

  it('breaks a large floor into pages of at most 30 rows after one without cuts', () => {
    const [whole, ...pages] = drawPlan(planOf(ROOMS.large), IMPERIAL);
    if (!whole) throw new Error('no drawing');
    expect(textsOf(whole, 'cut')).toEqual([]);
    expect(textsOf(whole, 'rows-label').map(({ text }) => text)).toEqual(['rows 1–30', 'rows 31–60', 'rows 61–90']);
    expect(pages.map((page) => textsOf(page, 'row-number').length)).toEqual([30, 30, 30]);
  });

  it('tells which rows have no page', () => {
    const drawings = drawPlan(planOf([region('barn', box(10, 300))], 0, plank(3, 36)), IMPERIAL);
    expect(drawings).toHaveLength(MOST_SHEETS);
    expect(notesOf(firstOf(drawings))).toContain('No page for rows 691–1200');
  });

  it('shows several rooms side by side first, each by name with its planks, which add up', () => {
    const plan = planOf(ROOMS.home);
    const [home, ...rooms] = drawPlan(plan, IMPERIAL);
    if (!home) throw new Error('no drawing');
    const labels = textsOf(home, 'room-label').map(({ text }) => text);
    for (const { name } of ROOMS.home) expect(labels.join(' ')).toContain(name);
    const planks = labels.flatMap((label) => [...label.matchAll(/(\d+) planks?/g)].map((match) => Number(match[1])));
    expect(planks.reduce((sum, count) => sum + count, 0)).toBe(plan.planks);
    expect(rooms.map(({ title }) => title)).toEqual(ROOMS.home.map(({ name }) => `${name}: plan`));
    expect(home.shapes.filter(({ kind }) => kind === 'arrow')).toHaveLength(ROOMS.home.length);
  });

  it('says in words what it shows', () => {
    expect(firstOf(drawPlan(planOf(ROOMS.closet), IMPERIAL)).alt).toBe(
      `Plan of closet, 2' × 5': 10 rows from wall 1, stair-step, 6" a row, 5 rows, then start over, 5 new planks. Row 1 is one piece, 23 1/4"; row 10 is ripped to 5 1/4", is one piece, 23 1/4".`,
    );
  });

  it('tells the walls that are too short for their words below the figure', () => {
    const jog = region('room', feetOutline([0, 0], [10, 0], [10, 8], [6, 8], [6, 8.5], [0, 8.5]));
    expect(notesOf(firstOf(drawPlan(planOf([jog]), IMPERIAL)))).toContain('wall 4 · 6"');
  });
});

/** Text on drawings and cut lists: floors, patches, trim and saw marks. Figures arrive already formatted. */

import { byUnits } from './answer-text.ts';
import { counted } from './floor-text.ts';

/** What the alt text says about one room. */
interface Shown {
  readonly room: string;
  readonly size: string;
  readonly rows: number;
  readonly wall: string | undefined;
  readonly pattern: string;
  readonly planks: number;
  /** Rows drawn, from 1; undefined if all are. */
  readonly part: readonly [first: number, last: number] | undefined;
  /** First and last row drawn. */
  readonly first: RowShown;
  readonly last: RowShown;
}

export interface RowShown {
  readonly row: number;
  readonly rip: string | undefined;
  readonly start: string;
  readonly end: string | undefined;
}

export const DRAWING = {
  title: (room: string) => `${room}: plan`,
  partTitle: (room: string, first: number, last: number) => `${room}: plan, rows ${first}–${last}`,
  titleAsGiven: (room: string) => `${room}: plan, as it lies`,
  wholeTitle: (room: string) => `${room}: plan, all rows`,
  homeTitle: 'Floor plan: all rooms',
  size: (width: string, depth: string) => `${width} × ${depth}`,
  facts: (size: string, rows: number, wall: string | undefined, planks: number) =>
    `${size} · ${counted(rows, 'row')} from ${placeOf(wall)} · ${counted(planks, 'new plank')}`,
  laying: (width: string, length: string, pattern: string) => `${width} × ${length} planks, ${pattern}`,
  wall: (number: number, length: string, room?: string) =>
    `${room === undefined ? '' : `${room} `}wall ${number} · ${length}`,
  startWall: (number: number, length: string, room?: string) => `start · ${DRAWING.wall(number, length, room)}`,
  otherWalls: (walls: readonly string[]) => `Also: ${walls.join(', ')}.`,
  offcut: (plank: number) => `no. ${plank}`,
  rip: (height: string) => `rip to ${height}`,
  whole: 'whole',
  wholeCut: 'whole, trimmed',
  direction: 'lay each row this way',
  arrow: 'The arrow shows which way each row is laid.',
  rows: (first: number, last: number) => (first === last ? `row ${first}` : `rows ${first}–${last}`),
  legend: {
    whole: 'whole plank',
    new: 'cut from a new plank',
    kept: 'cut from a new plank; keep the rest, marked with its number',
    reused: 'cut from the rest of that number',
    gap: (gap: string, wider: boolean) => `gap ${gap} at every wall${wider ? ' (drawn wider than it is)' : ''}`,
    start: 'starting wall',
    transition: 'transition strip in a doorway',
    edge: 'the floor goes on: see the next or the previous page',
  },
  slanted: `Two lengths, such as ${byUnits('12" / 5"', '300 / 120 mm')}: along the edge toward the row before, and toward the next.`,
  order: 'At each row: its number and its start piece, at the far end its end piece.',
  parts: 'Rows 5a, 5b are parts of one row with a wall between.',
  turned: (way: 'left' | 'right') => `Turned a quarter to the ${way} from the way you gave the room.`,
  /** Negative is clockwise. */
  turnedBy: (degrees: number) =>
    `Turned ${Math.abs(degrees)}° ${degrees < 0 ? 'with' : 'against'} the clock from the way you gave the room, so that its rows lie straight.`,
  noCuts: 'The cuts are on the pages that follow.',
  notDrawn: (first: number, last: number) => `No page for rows ${first}–${last}: their cuts are in the laying guide.`,
  noRoomPages: (rooms: readonly string[]) => `No page for ${rooms.join(', ')}: the cuts are in the laying guide.`,
  joined: 'Rooms joined by a doorway are drawn in place; the others stand side by side.',
  scale: 'All at one scale.',
  standing: (names: readonly string[]) => `Drawn without its name: ${names.join(', ')}.`,
  placed: 'All at one scale. The rooms stand side by side, since I don’t know how they connect.',
  cell: (rows: number, planks: number) => `${counted(rows, 'row')}, ${counted(planks, 'plank')}`,
  file: 'plan',
  saved: (path: string) => `Picture: ${path}`,
  notSaved: (folder: string, why: string) => `The pictures could not be saved in ${folder}: ${why}`,
} as const;

/** Where the rows start: at a wall, or in the lowest corner as seen along them. */
function placeOf(wall: string | undefined): string {
  return wall === undefined ? 'the starting corner' : `wall ${wall}`;
}

export function sayShown(shown: Shown): string {
  const { room, size, rows, wall, pattern, planks, part, first, last } = shown;
  const which = part ? `, rows ${part[0]} to ${part[1]} of ${rows}` : '';
  const head = `Plan of ${room}, ${size}${which}: ${counted(rows, 'row')} from ${placeOf(wall)}, ${pattern}, ${counted(planks, 'new plank')}.`;
  return `${head} ${sayRow(first)}${last.row === first.row ? '' : `; ${sayRow(last).toLowerCase()}`}.`;
}

function sayRow({ row, rip, start, end }: RowShown): string {
  const strip = rip === undefined ? '' : ` is ripped to ${rip},`;
  return end === undefined
    ? `Row ${row}${strip} is one piece, ${start}`
    : `Row ${row}${strip} starts with ${start} and ends with ${end}`;
}

/** Alt text of a large room drawn without its cuts. */
export function sayOverview(room: string, size: string, rows: number, wall: string | undefined, pages: number): string {
  return `Plan of ${room}, ${size}, without its cuts: ${counted(rows, 'row')} from ${placeOf(wall)}, on ${counted(pages, 'page')} that follow.`;
}

/** Alt text of a room with slanted rows. */
export function saySlanted(room: string, size: string, rows: number, planks: number): string {
  return `Plan of ${room}, ${size}, as you gave it, with ${counted(rows, 'row')} at a slant to its walls, from ${counted(planks, 'plank')} in all. The cuts are on what follows.`;
}

export function sayHome(
  rooms: readonly { readonly name: string; readonly size: string; readonly rows: number }[],
  planks: number,
): string {
  const list = rooms.map(({ name, size, rows }) => `${name} ${size}, ${counted(rows, 'row')}`);
  return `All ${rooms.length} rooms at one scale, ${counted(planks, 'plank')} in all: ${list.join('; ')}. An arrow in each shows which way its rows are laid.`;
}

export const CHOICES = {
  title: (room: string) => `${room}: the planks side by side`,
  facts: (wall: string | undefined, length: string, depth: string) =>
    wall === undefined
      ? `From ${placeOf(wall)}, the first ${depth} from it`
      : `Along wall ${wall} (${length}), the first ${depth} from it`,
  whole: 'whole plank',
  cut: 'cut plank',
  wall: 'starting wall',
  scale: 'All at one scale.',
  alt: (names: readonly string[], room: string, wall: string | undefined, depth: string) =>
    `The first ${depth} of ${room} from ${placeOf(wall)} on, laid in ${names.join(', ')}, one above the other at one scale.`,
} as const;

export const PATCH_DRAWING = {
  title: 'Subfloor patch: what to cut',
  cut: (across: string, up: string) => `cut ${across} × ${up}`,
  place: (left: string, bottom: string) =>
    `its lower left corner ${left} from the left wall, ${bottom} from the bottom wall`,
  joist: (number: number, at: string) => `${number} · ${at}`,
  legend: {
    kept: 'subfloor that stays',
    panel: 'new panel, strength axis across the joists',
    joist: 'joist: the figure is its centreline from the wall',
    damage: 'damage',
    blocking: 'block between joists, under every edge',
    cut: 'saw cut, half on a joist at two sides',
    screw: 'screw',
  },
  fromLeft: 'Joists numbered from the left wall.',
  fromBottom: 'Joists numbered from the bottom wall.',
  alt: (across: string, up: string, joists: number, blocks: number, screws: number, panels: number) =>
    `A cut of ${across} × ${up} over ${counted(joists, 'joist')}, its sides on the outer two; ${counted(blocks, 'block')} between them under the edges, ${counted(panels, 'new panel')} with ${counted(screws, 'screw')}.`,
} as const;

// Walls are seen from the room, sticks drawn as tapes.

export const ELEVATION = {
  title: (room: string, page: string | undefined) =>
    `${room}: trim wall by wall${page === undefined ? '' : `, ${page}`}`,
  facts: (pieces: number, length: string) =>
    `${counted(pieces, 'piece')}, ${length} of trim. Left and right as you face the wall.`,
  wall: (label: string, length: string) => `wall ${label} · ${length}`,
  corners: (left: string, right: string) => `corners ${left} | ${right}`,
  piece: (letter: string, length: string, left: string, right: string) =>
    `${letter}  ${length}  ·  left ${left}  ·  right ${right}`,
  door: (width: string) => `open ${width}`,
  bare: 'no trim',
  notes: [
    'Each board as seen from above, the wall behind it. Short strokes above are studs; dots mark short pieces to glue up first.',
    'Lengths run long point to long point.',
  ],
  alt: (room: string, walls: readonly string[]) =>
    `Trim of ${room}, wall by wall, left to right as you face it. ${walls.join(' ')}`,
  altWall: (label: string, length: string, pieces: readonly string[]) =>
    `Wall ${label}, ${length}: ${pieces.length === 0 ? 'no trim' : pieces.join('; ')}.`,
} as const;

export const TAPES = {
  title: (page: string | undefined) => `Sticks and saw marks${page === undefined ? '' : `, ${page}`}`,
  facts: (sticks: number) =>
    `${counted(sticks, 'stick')}. Read the marks from the left, from the squared end, one after another.`,
  stick: (number: number, length: string, had: boolean) => `stick ${number} · ${length}${had ? ' · one you have' : ''}`,
  square: 'square off the end',
  piece: (piece: string, length: string) => `${piece}, ${length} long`,
  mark: (at: string, piece: string) => `${at} ${piece}`,
  left: (length: string) => `left ${length}`,
  notes: [
    'The number is where the piece ends at its long point; the saw’s kerf comes after it and is already counted in the next.',
    'Dots: left over.',
  ],
  alt: (sticks: readonly string[]) => `Sticks with their saw marks. ${sticks.join(' ')}`,
  altStick: (number: number, length: string, marks: readonly string[]) =>
    `Stick ${number}, ${length}: cut at ${marks.join(', ')}.`,
  page: (page: number, of: number) => `${page} of ${of}`,
} as const;

// Cut lists: pieces, their ends, and what they are cut from.

export const SAW = {
  title: (room: string) => `Cuts: ${room}`,
  edgesTitle: 'Cuts: doorways and stairs',
  planks: 'Planks to cut, row by row',
  trim: 'Trim to cut, stick by stick',
  plankColumns: ['No.', 'Row', 'Piece', 'Length', 'Rip to', 'Cut from', 'Note'],
  trimColumns: ['No.', 'Wall', 'Piece', 'Long point to long point', 'Left end', 'Right end', 'Cut from', 'Note'],
  headline: (room: string, planks: number, trim: number) => `${room}: ${counts(planks, trim)} to cut.`,
  row: (name: string) => `row ${name}`,
  rowIn: (name: string, rooms: readonly string[]) => `row ${name}, ${rooms.join(' – ')}`,
  times: (count: number, what: string) => `${count} × ${what}`,
  parts: { whole: 'whole plank', start: 'start piece', end: 'end piece', any: 'piece from wall to wall' },
  bare: 'as it is',
  lock: 'uncut, its lock stays',
  square: 'square',
  slant: (degrees: string, edge: string) => `${degrees}° off square, longer at the ${edge}`,
  edges: { near: 'edge toward the row before', far: 'edge toward the next row' },
  shape: 'cut to shape',
  board: 'board',
  boardMake: (make: string) => `board ${make}`,
  atWall: 'along the walls',
  boards: 'a new board, or what is left of one',
  fresh: (plank: number) => `a new plank, no. ${plank}`,
  rest: (plank: number) => `what is left of no. ${plank}`,
  keep: (length: string, plank: number) => `keep the rest, ${length}: mark it ${plank}`,
  ripped: 'the ripped edge faces the wall',
  round: (thing: string) => `goes round ${thing}`,
  stick: (no: number, length: string) => `stick ${no}, ${length}`,
  mark: (at: string) => `saw mark ${at} from the squared end`,
  glue: 'glue it up before it goes in',
  wall: (label: string) => `wall ${label}`,
  baseboard: 'baseboard',
  steps: {
    title: 'Before you cut',
    items: [
      'Measure in place first: these lengths assume your walls are exactly as you measured.',
      'Left and right of a plank are as you stand with your back to the starting wall; of trim, as you face the wall.',
      'Trim lengths run long point to long point: at an inside corner the long point is at the back, at an outside corner at the face.',
      'Set the saw to the angle given, never past what it reaches, and let the blade stop before you take the piece away.',
    ],
  },
} as const;

function counts(planks: number, trim: number): string {
  const said = [
    ...(planks > 0 ? [`${planks} ${planks === 1 ? 'plank piece' : 'plank pieces'}`] : []),
    ...(trim > 0 ? [`${trim} ${trim === 1 ? 'piece' : 'pieces'} of trim`] : []),
  ];
  return said.length === 0 ? 'nothing' : said.join(' and ');
}

/** The words of cut lists: pieces one by one, their ends, what they are cut from. Figures come in already said. */

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
  edges: { near: 'edge towards the row before', far: 'edge towards the next row' },
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
      'Measure in place first: the lengths here are what the told walls give.',
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

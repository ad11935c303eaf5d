/** The words of a summary to hand on: short enough for one message. */

import { counted } from './floor.ts';

export const HANDOFF = {
  title: (project: string, day: string) => `${project}, ${day}`,
  files: (project: string, count: number) => `${project}: ${counted(count, 'file')} to hand on.`,
  noFiles: (project: string) => `${project}: there is nothing to put into a file yet.`,
  labels: {
    call: 'Call first',
    care: 'Take care',
    rooms: 'Rooms',
    floor: 'Floor',
    rows: 'Rows',
    tearout: 'Old floor',
    found: 'Found',
    trim: 'Trim',
    stage: 'Stage',
    waits: 'Waits',
    open: 'Still open',
    missing: 'Could not be worked out',
    left: 'Left out here, for length',
  },
  room: (name: string, area: string) => `${name} ${area}`,
  all: (area: string) => `together ${area}`,
  floor: (size: string, pattern: string, cartons: number, perCarton: number, planks: number) =>
    `${size} planks, ${pattern}, ${counted(cartons, 'carton')} of ${perCarton}, ${planks} planks to lay`,
  rows: (room: string, rows: number) => `${room} ${counted(rows, 'row')}`,
  wait: (room: string, stage: string, until: string) => `${room}: ${stage} until ${until}`,
  more: (count: number) => `and ${count} more`,
  moreCalls: (count: number) => `and ${count} more: “project found” tells of each`,
  boxed: 'letters that the font of the PDF lacks are printed as □; spreadsheets, data and the page have them',
  actions: { pdf: 'As a PDF to print', csv: 'As spreadsheets', json: 'As data', share: 'Share it by a link' },
} as const;

/** What can hurt, in a few words each; a topic without them is told whole. */
export const SHORT_CAUTIONS: Readonly<Record<string, string>> = {
  asbestos: 'an old floor below may hold asbestos: have it tested before it is disturbed',
  lead: 'paint of before 1978 (elsewhere of before about 1997) may hold lead: test before cutting or sanding',
  'leak-water': 'leak: water off, circuit off; sewage is for a company',
  'hidden-lines': 'cables and pipes in walls and floors: find them first',
  'tack-strip': 'tack strip nails',
  blade: 'knife blades',
  saw: 'saw: guard on',
  'nail-gun': 'nail gun: full sequential trigger',
  dust: 'dust: N95 mask',
  silica: 'silica in concrete dust: never grind dry',
  fumes: 'fumes: windows open, no flame',
  noise: 'noise: ears covered',
  knees: 'knee pads',
  lifting: 'heavy cartons: two people',
  mould: 'mould over 10 sq ft: a professional',
  tetanus: 'wounds: tetanus',
};

/** The words of the patch answer. Figures come in already said. */

import { counted } from './floor.ts';

export const PATCH = {
  headline: (across: string, up: string, sheets: number, blocks: number, fasteners: number) =>
    `Cut out ${across} × ${up}: ${counted(sheets, 'sheet')}, ${counted(blocks, 'block')}, ${counted(fasteners, 'screw')}.`,
  cutTitle: 'The cut',
  from: 'Where',
  fromWalls: (left: string, bottom: string) => `${left} from the left wall, ${bottom} from the bottom wall`,
  size: 'Size',
  sizeOf: (across: string, up: string) => `${across} across × ${up} up`,
  lands: 'Lands on',
  joists: (at: readonly string[], wall: string) => `joist centrelines ${at.join(', ')} from the ${wall} wall`,
  depth: 'Saw depth',
  depthOf: (thickness: string) => `${thickness}, the panel and no more: the joist below stays whole`,
  buyTitle: 'What to buy and cut',
  panels: 'Panels',
  panel: (count: number, along: string, across: string, thickness: string) =>
    `${count} × ${along} × ${across}, ${thickness} thick, the ${along} side (strength axis) across the joists`,
  sheets: 'Sheets',
  sheetsOf: (sheets: number, size: string, least: number) =>
    `${sheets} of ${size}${sheets > least ? ` (by area alone ${least})` : ''}`,
  blocking: 'Blocking, 2×4 laid flat',
  block: (count: number, length: string) => `${count} × ${length}`,
  screws: 'Screws through the panel',
  screwsOf: (count: number, edge: string, field: string, length: string) =>
    `${count}, ${length} or longer: every ${edge} along edges, every ${field} on joists between`,
  blockScrews: 'Screws for the blocks',
  blockScrewsOf: (count: number) => `${count}: 2 into each end, through the joist or toed in`,
  keptScrews: 'Screws for the floor round the cut',
  keptScrewsOf: (count: number) => `${count}, along its edges into joists and blocks`,
  adhesive: 'Subfloor adhesive',
  adhesiveOf: (tubes: string, feet: string, bead: string) =>
    `${tubes}: ${feet} of ${bead} bead, two where panels butt, and half as much again`,
  tubes: (count: number) => counted(count, 'tube'),
  planTitle: 'Sheet by sheet',
  planColumns: ['Sheet', 'Piece', 'Size', 'From its left', 'From its bottom'],
  stepsTitle: 'How to do it',
  steps: (bearing: string, joist: string, gap: string) => [
    'Before the saw: look below and at both ends of the joists for cables, pipes, ducts and heating tubes; power off in that room. Any in the way: stop and call the trade it belongs to.',
    'Push a screwdriver into every joist under the damage: it must not sink in. Rot, a crack or a sag in a joist: stop and call a licensed contractor.',
    'Find the joists by their rows of nails; measure the first one from the wall yourself, and mark the cut on the centrelines.',
    'Pull nails on the lines. Set the saw to the panel’s thickness. Cut the two sides on the joists, then the two across; finish the corners with a chisel.',
    `The sides leave half a joist for each panel: ${bearing} on a joist ${joist} wide, once the gap is open. Less than half an inch (13 mm)? Screw a 2×4 along the joist, its top level with it.`,
    'Screw the blocks flat between the joists, half under the floor that stays and half under the patch, at every edge between joists: a cut edge has lost its tongue.',
    `Bead of adhesive on every joist and block, two where panels butt. Lay the patch with ${gap} open all round, strength axis across the joists. Screw from the middle out.`,
    'Walk it: no give, no step at the edge. Sand or plane a step down; then check flatness (ask “level”).',
  ],
  checkTitle: 'Before you close it',
  check: (depth: string, notch: string, hole: string, apart: string) => [
    'What made the damage is mended: a leak, a pet, a window.',
    'Wood is dry: ask “moisture”.',
    `A notch or hole in a joist stays within code: notch ${notch} deep, hole ${hole}, for a joist ${depth} deep, the hole ${apart} from any other and from the edges; deeper or shallower? Tell joist-depth. Past that, a licensed contractor looks at it.`,
    'I-joists, trusses and glued beams are not notched, drilled or cut at all, but as their maker allows.',
    'The new panel is as thick as the old, of a subfloor grade with a span rating for these joists.',
  ],
  thin: (thickness: string, spacing: string, least: string) =>
    `Thin for its span: a panel over joists ${spacing} apart is ${least} or thicker, yours is ${thickness}. Match the floor, and ask your building office.`,
  mould:
    'Mould was told: the dirty panel goes out in a bag, gloves, goggles and N95 mask on; dry the rest within 24–48 h.',
  notesTitle: 'Mind',
  assumedRun:
    'joists taken to run up the plan, from the bottom wall to the top; type “joists: across” if they run from left to right',
  marginLess: (margin: string) => `less than ${margin} of sound wood at a wall: check that edge`,
} as const;

interface Referral {
  readonly why: string;
  readonly call: string;
}

const CARPENTER = 'a licensed contractor: a ledger or another joist is needed there';

/** Why no patch lands on joists there, and who to call. */
export const NO_CUT: Readonly<Record<'no-joist-before' | 'no-joist-after' | 'too-few-bays', Referral>> = {
  'no-joist-before': {
    why: 'The damage reaches past the first joist from the wall as told: the patch has nothing to land on there.',
    call: CARPENTER,
  },
  'no-joist-after': {
    why: 'The damage reaches past the last joist before the opposite wall: the patch has nothing to land on there.',
    call: CARPENTER,
  },
  'too-few-bays': {
    why: 'Between these walls a patch cannot span two bays (three joists), and a panel over one bay is not safe by rule.',
    call: CARPENTER,
  },
};

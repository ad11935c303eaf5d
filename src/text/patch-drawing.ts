/** The words on the picture of a patch. Figures come in already said. */

import { counted } from './floor.ts';

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

/** The names of what is bought, and of what it is sold in. */

interface Sold {
  readonly label: string;
  readonly labels: string;
}

const each = (label: string, labels = `${label}s`): Sold => ({ label, labels });

export const NEEDS = {
  planks: (width: string, length: string) => `Planks ${width} × ${length}`,
  carton: (count: number) => each(`carton of ${count}`, `cartons of ${count}`),
  underlay: 'Underlay (pad)',
  underlayNote: 'only where your plank has no pad attached; laid edge to edge, rolls differ',
  underlayPlain: 'laid edge to edge, rolls differ',
  strips: 'Transition strips',
  stripsNote: (widths: readonly string[]) => `doorways ${widths.join(', ')}`,
  bags: (size: string) => `Contractor bags, ${size}`,
  bag: each('bag'),
  blades: 'Knife blades',
  blade: each('blade'),
  masks: 'N95 masks',
  mask: each('mask'),
  container: (yards: number) => `Container, ${yards} cu yd`,
  hire: each('container'),
  screws: (length: string) => `Subfloor screws, ${length} or longer`,
  pack: (count: number) => each(`pack of ${count}`, `packs of ${count}`),
  panels: (thickness: string, size: string) => `Subfloor panel ${thickness}, ${size}`,
  sheet: each('sheet'),
  blocks: '2×4 for blocks',
  blocksNote: (lengths: readonly string[]) => `cut in lengths of ${lengths.join(' and ')}`,
  blockScrews: 'Screws for the blocks, through the joist or toed in',
  adhesive: 'Subfloor adhesive',
  tube: (size: string) => each(`tube of ${size}`, `tubes of ${size}`),
  leveller: 'Levelling compound',
  sack: (size: string, fills: string) =>
    each(`bag of ${size} (fills ${fills} L)`, `bags of ${size} (each fills ${fills} L)`),
  primer: 'Primer for the levelling compound',
  stick: (length: string) => each(`stick of ${length}`, `sticks of ${length}`),
  baseboard: 'Baseboard',
  replacement: 'Baseboard for boards that break',
  profile: (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
  nails: (size: string) => `Finish nails, ${size}`,
  nailsNote: '15 or 16 gauge for base, 18 for shoe; for a nailer in strips, by the box',
  caulk: 'Caulk',
  filler: 'Wood filler',
  trimPrimer: 'Primer for trim',
  paint: 'Trim paint',
  quart: each('quart'),
} as const;

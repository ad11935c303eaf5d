/** The words of each rule of a floating floor. */

const TEXTS: Readonly<Record<string, string>> = {
  'one-lot': 'Buy every carton from one lot: read the lot number on each before you pay.',
  'mix-cartons': 'Take boards from several cartons at a time, so that shades mix.',
  'measure-ten': 'Printed sizes are nominal: lock ten boards together, measure them, and ask again if they differ.',
  'end-in-place': 'Measure each end piece in place before you cut it: walls wander.',
  'gap-under-trim':
    'Keep the gap at every wall, pipe and frame; the trim must cover it, and never be fixed to the floor.',
  'small-gap':
    'The gap you told is less than 1/4 in (6 mm): a floating floor that touches a wall can buckle. Lay it so only if its maker says so.',
  'nothing-through':
    'Nothing goes through a floating floor: no screws, cabinets, islands or door stops fixed through the planks.',
  'tracks-to-subfloor': 'Transition tracks are fixed to the subfloor, not to the planks.',
  'one-pad': 'The pad is attached: lay no second pad under it.',
  'pad-choice': 'If the plank has a pad attached, lay no second one; if not, lay the one its maker names.',
  'long-run':
    'The floor goes on for 50 ft (15 m) or more: ask the maker for the longest run before a break, and for the wider gap (often 1/2 in, 13 mm).',
  dishwasher: 'Kitchen: check that the dishwasher can still come out once the floor is higher.',
  stairs:
    'Stairs: risers must stay alike (within 3/8 in, 10 mm) once the coverings change; check the top and bottom ones.',
  'keep-some': 'Keep a few planks of the lot for repairs.',
};

/** A rule in words. Throws when it has none. */
export function sayFloorRule(rule: string): string {
  const text = TEXTS[rule];
  if (text === undefined) throw new Error(`no words for the floor rule ${rule}`);
  return text;
}

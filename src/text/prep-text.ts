/** Text of the level, lift, moisture, patch and squeaks answers. Figures arrive already formatted. */

import { byUnits } from './answer-text.ts';
import { counted } from './floor-text.ts';

/** Bags and liters, each a number or a range, and whether it is one bag. */
interface Amount {
  readonly bags: string;
  readonly one: boolean;
  readonly litres: string;
}

export const LEVEL = {
  flat: 'Flat enough',
  notFlat: 'Not flat enough',
  line: (label: string, value: string) => `${label}: ${value}.`,
  buyLine: (bags: number, weight: string, pour: string) =>
    `Buy ${counted(bags, 'bag')} of ${weight}; pour at most ${pour} at a time.`,
  areaLine: `Add the low area (such as “area: ${byUnits('4 x 6 ft', '1.2 x 1.8 m')}”) and I’ll count the bags.`,
  measureLine: 'First measure how deep it is halfway between the middle and the edge.',
  highLine: 'Take the high spots down first; never sand or grind old flooring.',
  headline: (flat: boolean, worst: string, rule: string, fill: string | undefined) =>
    `${flat ? 'Flat enough' : 'Not flat enough'}: ${worst}; the limit is ${rule}.${fill === undefined ? '' : ` ${fill}`}`,
  fill: ({ bags, one, litres }: Amount) => `To fill: ${bags} ${one ? 'bag' : 'bags'} (${litres}).`,
  pourOf: (depth: string) => `${depth} all over`,
  pourArea: `How large is the floor you pour over? For example ${byUnits('120 sq ft', '12 m²')}.`,
  pourLine: (weight: string, pour: string, load: string) =>
    `Bags of ${weight}; pour at most ${pour} at a time. It adds ${load}.`,
  pourHeadline: ({ bags, one, litres }: Amount, area: string, depth: string) =>
    `Buy ${bags} ${one ? 'bag' : 'bags'} for ${area} at ${depth}: ${litres}.`,
  noFill: ({ bags, one, litres }: Amount) =>
    `No filling needed; up to the line it would take ${bags} ${one ? 'bag' : 'bags'} (${litres}).`,
  range: (least: string, most: string) => `${least} to ${most}`,
  litres: (litres: string) => `${litres} L`,
  perFoot: (pounds: string) => `${pounds} lb a sq ft`,
  perMetre: (kilograms: string) => `${kilograms} kg/m²`,
  overLine: ': too much for a wood floor',
  measureFirst: (load: string, limit: string) =>
    `Measure its shape first: leveler adds ${load}, and over ${limit} a wood floor needs a contractor first.`,
  measureHow:
    'Which depth to measure: halfway between the deepest place and the edge of the dip, on every side. As deep there as in the middle, it is even (“shape: even”): then stop and have a contractor look at the joists. Clearly shallower, it is a dish where it is round (“shape: dish”) or a trough where it is long (“shape: trough”), and the bags are worked out.',
  tooDeep: (worst: string, gap: string, over: string, load: string | undefined) =>
    `Stop here: ${worst}. On a wood floor more than ${gap} under a straightedge of up to ${over} is a question about what carries it first: a joist may sag, crack or rot, or its bearing may have sunk. ${load === undefined ? 'Planing it' : `Filling it lays ${load} on that and`} hides it.`,
  tooHeavy: (worst: string, load: string, limit: string) =>
    `Stop here: ${worst}. To fill it lays ${load} on the joists, and over ${limit} it is a question about what carries the floor first: why it sank, and whether it may carry that much more.`,
  stopCall:
    'a licensed contractor or a structural engineer, to look at the joists and what they rest on from below before anything is poured',
  slabRead: 'floor read as concrete',
  floorTaken: 'Assuming a wood floor; on a slab type “floor: concrete”',
  title: 'Flatness',
  rule: 'Rule',
  ruleOf: (gap: string, over: string) => `${gap} in ${over}`,
  or: ' or ',
  low: 'Low',
  high: 'High',
  gap: (gap: string, over: string) => `${gap} over ${over}`,
  verdict: (flat: boolean, allowed: string) =>
    flat ? `within the ${allowed} allowed` : `more than the ${allowed} allowed`,
  grid: 'Grid',
  gridOf: (rows: number, columns: number, dx: string, dy: string) => `${rows} × ${columns} points, ${dx} × ${dy} apart`,
  spread: 'Highest to lowest',
  straight: 'Straightedge on the grid',
  straightOf: (straight: boolean) => (straight ? 'lies within the rule everywhere' : 'leaves too wide a gap somewhere'),
  fillTitle: 'Leveling compound',
  volume: 'Volume',
  volumeOf: (litres: string, cubicFeet: string) => `${litres} (${cubicFeet} cu ft)`,
  shapes: {
    dish: 'As a round dish, 1/2 of gap × area',
    trough: 'As a long trough, 2/3 of it',
    even: 'As deep all over, all of it',
  },
  loadOf: (load: string) => `${load} wet`,
  ramp: 'Ramp, ½ × area × height',
  cells: 'Grid, cell by cell',
  bags: 'Bags',
  bagsOf: (bags: string, litres: string, weight: string) => `${bags} of ${weight}, ${litres} L each; check the bag`,
  buy: 'Buy',
  buyOf: (bags: number) =>
    `${counted(bags, 'bag')}, for the fullest shape: what stays shut goes back, and a pour must not stop for want of a bag`,
  pours: 'Pours',
  poursOf: (pours: number, most: string) => `${pours}, at most ${most} at once; check the bag`,
  weight: 'Weight added',
  weightOf: (weight: string) => `${weight} of dry powder, and its mixing water until it dries`,
  primer: 'Primer',
  primerOf: (area: string) => `${area} to prime, or as the bag says; let it turn clear or dry before you pour`,
  notGiven: 'How much',
  notGivenOf: `add the low area (such as “area: ${byUnits('4 x 6 ft', '1.2 x 1.8 m')}”), a ramp or a grid of depths to get bags`,
  highTitle: 'High spots',
  highOf: (gap: string, over: string, take: string) =>
    `Gap ${gap} over ${over}: take off about ${take}, then lay the straightedge on it again.`,
  highGrid: (count: number, most: string) =>
    `${counted(count, 'point')} above the line, up to ${most}: take it down before you fill.`,
  highHow:
    'Wood: plane or sand with a vacuum and an N95 mask; look for nail heads first and sink them. Concrete: grind only with a shroud, a HEPA vacuum and a respirator, or hire it out. Old tile, sheet or black adhesive: never.',
  stepsTitle: 'How to do it',
  steps: {
    wood: [
      'Fasten what is loose, set nail heads, fill panel gaps and holes below so that nothing runs through.',
      'Use a compound that is made for wood floors, with its primer and, where the bag asks for it, its lath or mesh.',
      'Dam doorways and vents. Mix with the water on the bag, no more; two people, one mixes, one spreads.',
      'Pour at the lowest place, feather out to nothing at the edge with a straightedge.',
      'Let it dry as long as the bag says, lay the straightedge on it again, then check moisture.',
    ],
    concrete: [
      'Clean to bare, sound concrete: no dust, paint or old adhesive that you have not had tested.',
      'Check moisture first (see “moisture”); prime as the bag says.',
      'Dam doorways and drains. Mix with the water on the bag, no more; two people, one mixes, one spreads.',
      'Pour at the lowest place, feather out to nothing at the edge with a straightedge.',
      'Let it dry as long as the bag says, then lay the straightedge on it again.',
    ],
  },
  oldFloor: {
    why: 'High spots on an old floor are not sanded or ground: old resilient flooring and its adhesive may hold asbestos.',
    call: 'an accredited asbestos inspector for the test, then a licensed abatement contractor',
  },
  short: (over: string, allowed: string) => `a reading over ${over} held to ${allowed} there`,
} as const;

export const LIFT = {
  ok: (weight: string, limit: string) => `${weight} is within the ${limit} recommended for this lift.`,
  over: (weight: string, limit: string, index: string) =>
    `${weight} is ${index} times the ${limit} recommended for this lift: split it, or lift with two.`,
  limitsLine: (from: string, to: string | undefined) =>
    `Limit at the start ${from}${to === undefined ? '' : `, at the end ${to}`}: the lower one counts.`,
  tip: 'To raise the limit, hold it close and start from a table, not from the floor.',
  title: 'By the lifting equation',
  origin: 'Limit where the lift begins',
  destination: 'Limit where it ends',
  loose: 'not counted: the load is let go there',
  index: 'Lifting index',
  indexValue: (index: string) => `${index}: weight ÷ the limit that counts; above 1 the risk to the back grows`,
  note: 'For healthy adults who lift with two hands, standing. A bad back or a pregnancy has no figure here: ask a doctor.',
  stepsTitle: 'What raises the limit',
  steps: [
    'Hold it close: slide the carton to the edge, feet apart, knees bent.',
    'Begin and end at the height of your knuckles: stack cartons on a table or on others, not on the floor.',
    'Turn with your feet, not with your back.',
    'Lift less often and rest between stretches.',
  ],
  ways: {
    'one hand': 'a lift with one hand',
    kneeling: 'lifting while kneeling or squatting',
    sitting: 'lifting while seated',
    cramped: 'lifting in a cramped space',
    carrying: 'carrying, stairs and ladders',
    pushing: 'pushing, pulling and shoveling',
    rolls: 'rolls, which bend and shift',
    unstable: 'a load that shifts, such as a bucket or a slack bag',
    'two people': 'a lift by two people',
    footing: 'slippery footing',
    climate: 'heat or cold',
    sudden: 'throwing, catching or jerking',
  },
} as const;

export const MOISTURE = {
  headline: {
    accept: (worst: string, limit: string) => `Dry enough: ${worst} at most, the limit is ${limit}.`,
    wait: (why: string) => `Wait: ${why}.`,
    stop: (why: string) => `Stop: ${why}.`,
  },
  flaw: {
    'far-over': (worst: string, limit: string) =>
      `${worst} is far over the limit of ${limit}; find where the water comes from`,
    'over-after-leak': (worst: string, limit: string) =>
      `${worst} is over the limit of ${limit} long after the leak; open it up and look for mold`,
    over: (worst: string, limit: string) => `${worst} is over the limit of ${limit}; dry it and measure again`,
    strict: (worst: string, limit: string) =>
      `${worst} is over the strict limit of ${limit}; only go on if your carton allows it`,
    apart: (below: string, flooring: string, most: string) =>
      `the subfloor at ${below} and the flooring at ${flooring} are too far apart; ${most} points are allowed`,
    'too-few': (more: number, concrete: boolean) =>
      `${counted(more, concrete ? 'more test' : 'more reading')} needed for this area`,
  },
  readingsLine: (given: number, required: number, least: string, most: string) =>
    `${counted(given, 'reading')}${least === most ? `, ${least}` : `, ${least} to ${most}`}; ${required === 1 ? 'one is enough' : `${required} are needed`}.`,
  limitLine: (limit: string, source: string) => `Limit: ${limit} (${source}).`,
  title: 'Readings',
  method: 'Method',
  methods: {
    wood: 'pin or pinless meter on wood, % moisture content',
    chloride: `calcium chloride on concrete, ${byUnits('lb per 1000 sq ft in 24 h', 'as moisture per area in 24 h')}`,
    rh: 'probes in the slab, % RH',
    cement: 'carbide test on concrete or a cement screed, % CM',
    gypsum: 'carbide test on a calcium sulfate screed, % CM',
  },
  count: 'Readings',
  countOf: (given: number, required: number) => `${given} given, ${required} needed`,
  range: 'From, to',
  limit: 'Limit',
  own: 'the maker’s own',
  stop: 'Too wet to wait for',
  plank: 'Your plank',
  plankOf: {
    chloride: 'many makers allow 5 lb: if yours does, add “limit: 5 lb”',
    rh: 'many makers allow 85% RH: if yours does, add “limit: 85”',
  },
  plankLine: {
    chloride: 'Many plank makers allow 5 lb: if yours does, add “limit: 5 lb”.',
    rh: 'Many plank makers allow 85% RH: if yours does, add “limit: 85”.',
  },
  also: 'Also',
  flooring: 'Flooring',
  flooringOf: (moisture: string, most: string) => `${moisture}; the subfloor within ${most} points of it`,
  areaNotGiven: {
    wood: 'Assuming one reading is enough; add the area to see how many are needed',
    concrete: `Assuming up to ${byUnits('1000 sq ft (93 m²)', '93 m²')}, which needs three tests`,
  },
  stepsTitle: {
    accept: 'Before you lay',
    wait: 'What to do',
    stop: 'What to do',
  },
  steps: {
    lay: {
      wood: [
        'Lay soon, or measure again: weather and wet trades change it.',
        'Click vinyl lets no vapor through: moisture under the floor cannot dry out. Over a crawl space, see that its ground is covered.',
        'Keep a photo of the meter at each place.',
      ],
      concrete: [
        'Lay soon, or test again: weather, irrigation and wet trades change it.',
        'Film under the plank: 6 mil polyethylene where the plank has no barrier of its own and its maker asks for one, seams taped, turned up at the walls.',
        'Keep the test report with its dates: the maker asks for it.',
      ],
    },
    more: (more: number, concrete: boolean) =>
      concrete
        ? `Make ${counted(more, 'more test')} by the same method, one of them near an outside wall.`
        : `Take ${counted(more, 'more reading')}, spread over the floor, at walls, baths and doors too.`,
    apart:
      'Leave the opened cartons in the room at its usual heat. Measure boards and subfloor again every two days until they are close enough.',
    over: {
      wood: [
        'Warm and air the room: open windows when it’s drier outside, otherwise run a dehumidifier. Take up anything that covers the floor.',
        'Measure again at the same places every day or two, more of them at walls, baths and doors.',
        'Lay when every reading is at or under the limit.',
      ],
      concrete: [
        'Leave the slab uncovered with heat and a dehumidifier on: it dries over weeks, not days.',
        'Test again by the same method at the same places; lay when every result is at or under the limit.',
        'If it will not come down, ask the flooring’s maker which moisture barrier it accepts.',
      ],
    },
    stop: {
      wood: [
        'Lay nothing. Find the water: supply, drain, roof, window, crawl space, slab.',
        'Open the wettest place and look at the joists: soft wood or a dark line is work for a contractor.',
      ],
      concrete: [
        'Lay nothing. Find the water: a pipe in or under the slab, gutters and grading outside, a slab without a vapor barrier.',
        'A slab that stays this wet: a contractor for a moisture barrier, after the flooring’s maker was asked.',
      ],
    },
  },
  leakTitle: 'After a leak',
  leak: (left: string | undefined) => [
    'The leak is stopped, and stays stopped for a day of use.',
    left === undefined
      ? 'More than 48 hours have passed: look under pads, in corners and behind baseboards for mold.'
      : `Dry it within 24 to 48 hours: ${left} left.`,
    'Carpet pad is thrown away; wet gypsum board and insulation too.',
    `Mold over about ${byUnits('10 sq ft', '1 m²')}, or any sewage: a professional.`,
  ],
  hours: (hours: number) => counted(hours, 'hour'),
  grey: 'Gray water carries germs. Wear gloves and goggles, throw pads and carpet away, and disinfect the subfloor before it dries. Many people hire it out.',
} as const;

export const PATCH = {
  headline: (across: string, up: string, sheets: number, blocks: number, fasteners: number) =>
    `Cut out ${across} × ${up}: ${counted(sheets, 'sheet')}, ${counted(blocks, 'block')}, ${counted(fasteners, 'screw')}.`,
  lines: {
    at: (left: string, bottom: string) =>
      `The hole starts ${left} from the left wall and ${bottom} from the bottom wall.`,
    joists: (at: readonly string[], wall: string) => `Joist centers at ${at.join(', ')} from the ${wall} wall.`,
    depth: (thickness: string) => `Set the saw to ${thickness}, so the joists below stay whole.`,
    glue: (tubes: string, screws: number) =>
      `Also ${tubes} of subfloor adhesive and ${counted(screws, 'screw')} for blocks and edges.`,
  },
  sizeHeadline: (across: readonly string[], [least = '', most = '']: readonly string[]) =>
    `Cut back to joist centers: ${across.slice(0, -1).join(', ')}${across.length > 1 ? ' or ' : ''}${across.at(-1)} across the joists, ${least === most ? least : `${least} to ${most}`} along them.`,
  sizeBuy: (sheets: number, blocks: number, screws: number, tubes: string) =>
    `Buy for the larger: ${counted(sheets, 'sheet')}, ${counted(blocks, 'block')}, ${counted(screws, 'screw')}, ${tubes} of subfloor adhesive.`,
  sizeLacks: (place: boolean, joist: boolean) => {
    const spot = 'how far the bad spot is from the left and bottom walls';
    const first = 'how far the middle of the first joist is from the left wall';
    return `For the exact cut, measure ${[...(place ? [spot] : []), ...(joist ? [first] : [])].join(', and ')}.`;
  },
  soft: 'A joist that a screwdriver sinks into is a licensed contractor’s job.',
  cutTitle: 'The cut',
  from: 'Where',
  fromWalls: (left: string, bottom: string) => `${left} from the left wall, ${bottom} from the bottom wall`,
  size: 'Size',
  sizeOf: (across: string, up: string) => `${across} across × ${up} up`,
  lands: 'Lands on',
  joists: (at: readonly string[], wall: string) => `joist centerlines ${at.join(', ')} from the ${wall} wall`,
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
    `${tubes}: ${feet} of ${bead} bead, two where panels butt, plus 50% extra`,
  tubes: (count: number) => counted(count, 'tube'),
  planTitle: 'Sheet by sheet',
  planColumns: ['Sheet', 'Piece', 'Size', 'From its left', 'From its bottom'],
  stepsTitle: 'How to do it',
  steps: (bearing: string, joist: string, gap: string) => [
    'Before the saw: look below and at both ends of the joists for cables, pipes, ducts and heating tubes; power off in that room. Any in the way: stop and call the trade it belongs to.',
    'Push a screwdriver into every joist under the damage: it must not sink in. Rot, a crack or a sag in a joist: stop and call a licensed contractor.',
    'Find the joists by their rows of nails; measure the first one from the wall yourself, and mark the cut on the centerlines.',
    'Pull nails on the lines. Set the saw to the panel’s thickness. Cut the two sides on the joists, then the two across; finish the corners with a chisel.',
    `The sides leave half a joist for each panel: ${bearing} on a joist ${joist} wide, once the gap is open. Less than ${byUnits('half an inch (13 mm)', '12 mm')}? Screw a 2×4 along the joist, its top level with it.`,
    'Screw the blocks flat between the joists, half under the floor that stays and half under the patch, at every edge between joists: a cut edge has lost its tongue.',
    `Bead of adhesive on every joist and block, two where panels butt. Lay the patch with ${gap} open all round, strength axis across the joists. Screw from the middle out.`,
    'Walk it: no give, no step at the edge. Sand or plane a step down; then check flatness (see “level”).',
  ],
  checkTitle: 'Before you close it',
  check: (depth: string, notch: string, hole: string, apart: string) => [
    'The cause (leak, pet, window) is fixed.',
    'The wood is dry: see “moisture”.',
    `A notch or hole in a joist stays within code: notch ${notch} deep, hole ${hole}, for a joist ${depth} deep, the hole ${apart} from any other and from the edges; deeper or shallower? Give joist-depth. Past that, a licensed contractor looks at it.`,
    'I-joists, trusses and glued beams are not notched, drilled or cut at all, but as their maker allows.',
    'The new panel is as thick as the old, of a subfloor grade with a span rating for these joists.',
  ],
  thin: (thickness: string, spacing: string, least: string) =>
    `Thin for its span: a panel over joists ${spacing} apart is ${least} or thicker, yours is ${thickness}. Match the floor, and ask your building office.`,
  mould: 'Mold: the dirty panel goes out in a bag, gloves, goggles and N95 mask on; dry the rest within 24–48 h.',
  notesTitle: 'Mind',
  assumedRun: 'Assuming joists run from the bottom wall to the top; type “joists: across” if they run left to right.',
  marginLess: (margin: string) => `less than ${margin} of sound wood at a wall: check that edge`,
} as const;

interface Referral {
  readonly why: string;
  readonly call: string;
}

const CARPENTER = 'a licensed contractor: a ledger or another joist is needed there';

export const NO_CUT: Readonly<Record<'no-joist-before' | 'no-joist-after' | 'too-few-bays', Referral>> = {
  'no-joist-before': {
    why: 'The damage reaches past the first joist from the wall: the patch has nothing to land on there.',
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

export const SQUEAKS = {
  headline: (screws: number, length: string, spacing: string, joists: number) =>
    `${counted(screws, 'screw')}, ${length} or longer, ${spacing} apart along ${counted(joists, 'joist')}.`,
  packsLine: (packs: number, perPack: number, left: number) =>
    `Buy ${counted(packs, 'pack')} of ${perPack}; ${left} left over.`,
  lengthLine: (panel: string, bite: string) =>
    `They go through ${panel} of panel and ${bite} into the joist: buy the nearest longer size.`,
  findLine: (spacing: string) => `Find the joists first: rows of nail heads, ${spacing} apart.`,
  softLine: 'Soft or swollen panel? Screws won’t help; say “patch” instead.',
  title: 'What to buy',
  screws: 'Screws',
  pattern: 'Pattern',
  length: 'Length',
  packs: 'Packs',
  ofPack: (packs: number, perPack: number, left: number) => `${packs} of ${perPack}, ${left} left over`,
  ofJoists: (joists: number, each: number) => `${counted(joists, 'joist')} × ${each}`,
  spacing: (spacing: string, stretch: string) =>
    `every ${spacing}, along the whole ${stretch} of each joist that is noisy`,
  lengthOf: (length: string, panel: string, bite: string, step: string) =>
    `${length} at least: ${panel} of panel and ${bite} into the joist, up to the next ${step}. Buy the nearest longer size.`,
  findTitle: 'Find the joists first',
  find: (spacing: string) => [
    'Heating tubes or cables in the floor? Look at the plans, the thermostat and the ceiling below, or have it looked at with a thermal camera, before any screw. If there are some: no screws, call a licensed heating contractor.',
    'Look for the rows of nail heads in the subfloor: each row is a joist. A stud finder and a magnet show them too.',
    `From one joist measure ${spacing} to the next; check each with a fine nail beside the line: wood all the way is a joist, air is a miss.`,
    'Snap a chalk line along each joist over the noisy section.',
  ],
  fixTitle: 'Fix it',
  fix: (spacing: string) => [
    'Walk the floor and mark every squeak. Two people: one walks, one listens below.',
    'Stand on the spot so that the panel lies on its joist.',
    `Drive a screw every ${spacing} on the line, straight down, until its head is just under the surface; not deeper.`,
    'Use subfloor screws with an unthreaded part below the head: threads in the panel hold it up off the joist.',
    'Walk it again. Still noisy? A screw each side of a panel joint, into the joist below it.',
  ],
  assumedRun: 'Assuming joists run along the short side; type “joists: long” if they run along the long one.',
  notTitle: 'Not a job for a screw',
  not: [
    'The sound comes from a pipe, a duct or a cable that rubs: free it from below, never screw near it.',
    'A gap between joist and panel, seen from below: a thin shim with glue, pushed in by hand, not hammered; or a cleat along the joist.',
    'Bridging between joists rubs or is loose: refasten it from below.',
    'A joist that is cracked, rotten, notched or sags: a licensed contractor.',
    'The panel itself is soft or swollen: see “patch”.',
    'Squeaky stairs need another fix: wedges and glue blocks from below.',
  ],
} as const;

export const CARRY = {
  headline: (trips: number, load: string, weight: string) =>
    `${trips === 1 ? '1 trip' : `${trips} trips`} of ${load} for ${weight}.`,
  two: (each: number) =>
    `With two people that is ${each === 1 ? '1 trip' : `${each} trips`} each; a dolly does most of it.`,
  boxes: (load: string) => `Open boxes heavier than ${load} and carry them in parts.`,
  assumed: (load: string) => `Assuming ${load} a trip.`,
} as const;

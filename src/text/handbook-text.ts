/** Text around handbook entries, and first lines computed from the message. */

export const HANDBOOK = {
  unknown: 'The handbook has nothing by that name. Type “handbook” for the list.',
  unknownWord: 'I don’t have that word. Try another, such as joist, miter or T-molding.',
  all: (count: number) => `${count} questions and answers about replacing a floor.`,
  several: (count: number, about: string) => `${count} questions about ${about}.`,
  topics: (topics: readonly string[]) => `Topics: ${topics.join(', ')}.`,
  titles: (titles: readonly string[]) => titles.join(' · '),
  narrower: 'Type “help” and a topic or word for its questions, or just ask in your own words.',
  asks: (question: string) => `To be exact: ${question}`,
  also: (title: string, answer: string) => `${title}${title.endsWith('?') ? '' : ':'} ${answer}`,
  maybe: (titles: readonly string[]) => `Did you mean ${titles.map((title) => `“${title}”`).join(' or ')}?`,
  /** How sure the figures are, and whether a maker's own count more. */
  standing: (standings: readonly string[], maker: boolean) =>
    `(${standings.join(', ').replace(/^./, (letter) => letter.toUpperCase())}${maker ? '; your plank’s maker has the last word' : ''}.)`,
  more: 'More on this',
  figures: 'Figures',
  page: 'Page to share',
  columns: ['Figure', 'Value', 'Standing'],
} as const;

/** What is typed after “why” for an entry that explains a figure of an answer, by the entry’s id. */
export const REASONS: Readonly<Record<string, string>> = {
  'extra-percent': 'extra',
  stagger: 'stagger',
  gap: 'gap',
  'short-end': 'shortest end',
  'cope-or-miter': 'cope',
  'nail-length': 'nails',
  'which-transition': 'strips',
  'must-be-level': 'flatness',
  'moisture-limits': 'limit',
};

export const REASON = {
  list: 'Why these figures?',
  label: (what: string) => `Why ${what}?`,
  word: (what: string) => `why ${what}`,
  /** The word after “why”, as people type it; group 1. */
  typed: /^why (?:the |that |those )?([a-z ]{3,20})\??$/i,
} as const;

interface CarLoad {
  readonly each: string;
  readonly most: string;
  /** Whether the asker said what the sticker allows. */
  readonly known: boolean;
  readonly fits: number;
}

export const WORKED = {
  printed: (name: string) =>
    `I don’t have a figure for that; your plank’s maker does: look for “${name}” on the carton.`,
  areas: (sum: number, parts: readonly number[], metric: boolean) =>
    `Your rooms: ${sum} ${metric ? 'm²' : 'sq ft'} in all (${parts.join(' + ')}).`,
  jambs: (height: string, jamb: string, door: string) =>
    `Saw the jamb at ${jamb}: the floor is ${height} high. Cut the door to clear ${door}.`,
  angle: (corner: number, setting: number) =>
    `Set the saw to ${setting}° for a corner of ${corner}°: 180° minus the corner, halved.`,
  stagger: (least: string, third: string) => `At least ${least}; a third of your plank is ${third}, which looks best.`,
  staggerWide: (least: string, wide: string, often: string) =>
    `At least ${least}; for planks ${wide} wide many makers ask ${often}: go by the carton.`,
  staggerNarrow: (least: string, wide: string) =>
    `At least ${least} for planks ${wide} wide, or the carton’s figure if it is more.`,
  lastRow: (last: string, rows: number, gap: string, both: string | undefined) =>
    `Your last row, row ${rows}, is ${last} wide with ${gap} gaps: wide enough.${both === undefined ? '' : ` Or rip both edges to ${both}.`}`,
  lastRowTapers: (one: string, other: string, gap: string, fine: boolean) =>
    `Your last row goes from ${one} to ${other} wide with ${gap} gaps${fine ? ': mark each plank from the wall' : ', too thin at one end: rip the first row narrower'}.`,
  bothRows: (last: string, both: string, gap: string) =>
    `Rip the first and last row to ${both}: with ${gap} gaps a whole first row leaves only ${last}.`,
  thinStrip: (strip: string, half: string) =>
    `Too thin: instead of a ${strip} strip, rip the first and last row to half a plank’s width plus ${half}.`,
  taper: (off: string, half: string) => `Taper the last row by ${off}, or split it: ${half} at each side.`,
  nosings: (count: number, sticks: number | undefined) =>
    sticks === undefined
      ? `${count} nosings for ${count} steps: one per edge, the top landing included.`
      : `${count} nosings for ${count} steps, cut from ${sticks} sticks.`,
  nailedSubfloor: (holds: boolean, panel: string, spacing: string, least: string) =>
    holds
      ? `Yes, ${panel} plywood on joists ${spacing} apart holds flooring nails; ${least} is the least.`
      : `No: ${panel} on joists ${spacing} apart is too thin for nails. It takes ${least} of plywood in all.`,
  stairs: (area: string, count: number) =>
    `About ${area} of plank for ${count} steps, cuts included, and ${count} nosings.`,
  landlord: (years: number, least: number, most: number, left: number) => {
    const life = least === most ? `${most}` : `${least} to ${most}`;
    if (years >= most) return `Mostly no: at ${years} years, carpet is past the ${life} years it lasts.`;
    return years >= least
      ? `Mostly no: after ${years} years carpet is near or past the ${life} years it lasts.`
      : `Perhaps in part: after ${years} years, carpet that lasts ${life} has at most ${left} left.`;
  },
  carpetWorth: (
    price: string,
    { years, least, most }: { readonly years: number; readonly least: number; readonly most: number },
    low: string,
    high: string,
  ) => {
    const life = least === most ? `${most}` : `${least} to ${most}`;
    if (years >= most) return `Mostly no: of ${price}, nothing is left after ${years} years; carpet lasts ${life}.`;
    const share = low === high ? `about ${high}` : `${low} to ${high}`;
    return `At most in part: ${share} of ${price} is left after ${years} years, if carpet lasts ${life}.`;
  },
  runShort: (run: string, strict: string) =>
    `Yes, as a rule: ${run} is within even the strict makers’ ${strict}; check the carton.`,
  runBetween: (run: string, strict: string, generous: string, gap: string | undefined) =>
    `It depends on the maker: strict ones stop at ${strict}, generous ones at ${generous}.${gap === undefined ? '' : ` At ${run}, leave ${gap} gaps.`}`,
  runLong: (run: string, generous: string) =>
    `No, break it: ${run} is longer than even generous makers allow (${generous}).`,
  longSide: (side: string) => `Along the ${side} side: the fewest rows and cuts, and it looks calmest.`,
  fewerRows: (fewer: number, more: number) =>
    `Looks decide on a floating floor; ${fewer} rows mean fewer cuts and end joints than ${more}.`,
  underCounter: (left: string, needs: string) =>
    `It should fit: ${left} would be left under the counter, and most dishwashers need ${needs}.`,
  underCounterLow: (left: string, needs: string) =>
    `No, too low: only ${left} would be left, and most dishwashers need ${needs}.`,
  fridgeFits: (left: string, air: string) =>
    `Yes, it fits: ${left} stays above the fridge, and ${air} is the usual least.`,
  fridgeTight: (left: string, air: string) =>
    `It goes in, but tight: ${left} stays above the fridge, and ${air} of air is the usual least.`,
  fridgeStuck: (over: string) => `No, it won’t go back: it would be ${over} too tall, before its feet are turned in.`,
  nail: (sold: string, trim: string, board: string, bite: string) =>
    `${sold} nails: ${trim} trim, ${board} wallboard, and at least ${bite} into the stud.`,
  waterAlone: ' of water alone',
  tooHeavy: (weight: string, limit: string) =>
    `No, not on a floating floor: ${weight} on one spot is past the usual ${limit}; stand it on the subfloor.`,
  notHeavy: (weight: string, limit: string) =>
    `Probably fine: ${weight} is under the usual ${limit} on one spot; the carton’s limit decides.`,
  dryWood: (share: number, limit: string) =>
    `Dry enough as a rule: ${share}% is within the ${limit} for a wood subfloor.`,
  wetWood: (share: number, limit: string) =>
    `Too wet: ${share}% is over the ${limit} for a wood subfloor. Find where the water comes from.`,
  drySlab: (share: number, strict: string) => `Dry enough as a rule: ${share}% is within the strict limit, ${strict}.`,
  dampSlab: (share: number, strict: string, plank: string) =>
    `It depends on the carton: ${share}% is past the strict ${strict}, within the ${plank} of many planks.`,
  wetSlab: (share: number, plank: string) =>
    `Too wet: ${share}% is over the ${plank} that many planks allow. Find where the water comes from.`,
  carries: (count: number, load: string, weight: string) =>
    `About ${count} carries of ${load} for ${weight}; with two people half as many each.`,
  wearLight: (mil: number) =>
    `${mil} mil is thin: a wear layer of ${mil}/1000 in for a guest room. A family wants 12 mil.`,
  wearFamily: (mil: number) =>
    `${mil} mil suits a family: a wear layer of ${mil}/1000 in. Big dogs or tenants want 20 mil.`,
  wearHard: (mil: number) => `${mil} mil is commercial grade: a wear layer of ${mil}/1000 in, for big dogs or tenants.`,
  wearEither: (thin: number, thick: number) =>
    thick >= 20
      ? `${thick} mil for big dogs or a rental; ${thin} mil ${thin >= 12 ? 'is plenty for most families' : 'is for a guest room'}.`
      : `${thick} mil: the thicker wear layer lasts longer, and 12 mil is the usual one for a family.`,
  wearFor: (mil: string, who: string) => `${mil} for ${who}, unless the carton’s warranty asks for more.`,
  extraFor: (share: string, rows: string, least: string, most: string) =>
    `${share} for ${rows}: buy ${least} to ${most}.`,
  layingTime: (
    floor: string,
    [least, most]: readonly [number, number],
    [soon, late]: readonly [number, number],
    two: boolean,
  ) =>
    `About ${least} to ${most} hours ${two ? 'for two people ' : ''}to lay ${floor}: ${late === 1 ? 'one day' : soon === late ? `${late} days` : `${soon} to ${late} days`}, tear-out and trim not counted.`,
  ownPace: (hours: number, pace: number, rest: number, meters: boolean) =>
    `About ${hours} hours for the other ${rest} ${meters ? 'm²' : 'sq ft'}, at your ${pace} ${meters ? 'm²' : 'sq ft'} an hour.`,
  quoted: (total: string, rate: string, area: number) => `${total} for ${area} sq ft at ${rate} a sq ft.`,
  extraShort: (share: number, usual: string, rows: string) => `No, ${share}% is short: figure ${usual} for ${rows}.`,
  extraJust: (share: number, usual: string, rows: string) =>
    `Just enough if all goes well: ${share}% is the low end of the usual ${usual} for ${rows}.`,
  extraPlenty: (share: number, usual: string, rows: string) =>
    `Yes, ${share}% is enough: ${usual} is usual for ${rows}.`,
  carBoxes: ({ each, most, known, fits }: CarLoad) =>
    `${known ? '' : 'About '}${fits} boxes of ${each} ${known ? 'beside' : 'with'} the driver, ${known ? `within the ${most} of your sticker` : `if the door sticker says ${most}`}.`,
  carTrips: ({ most, known, fits }: CarLoad, count: number, whole: string, trips: number) =>
    trips <= 1
      ? `Yes in one trip: ${count} boxes weigh ${whole}, ${known ? `within the ${most} of your sticker` : `if the door sticker says at least ${most}`}.`
      : `${trips} trips: ${count} boxes weigh ${whole}, and ${fits} a trip go with the driver ${known ? `within ${most}` : `if the door sticker says ${most}`}.`,
  gapEnough: (gap: string) => `Yes, ${gap} is enough for most click vinyl; your carton’s figure decides.`,
  gapSmall: (gap: string, least: string) => `No, ${gap} is tight: most click vinyl wants at least ${least}.`,
} as const;

/** Why a rule of the handbook holds, by the id of its entry: the lead where somebody asks “why?” after it. Common practice. */
export const RULE_REASONS: Readonly<Record<string, string>> = {
  'asbestos-suspect':
    'Because you can’t see the fibers or tell by looking, and what you breathe in stays in the lungs.',
  'asbestos-cover':
    'Because fibers only get loose when the tile is broken or sanded; left whole and covered, they stay put.',
  'asbestos-disturbed': 'Because the fibers stay in the air for hours, and sweeping or a shop vac spreads them.',
  'asbestos-test': 'Because only a lab can see the fibers; age and looks prove nothing.',
  mastic: 'Because the black glue often holds asbestos too, even where the tile has none.',
  'baseboard-remove':
    'Because the paint line tears the wall and dry old boards split where they are pried at one spot.',
  'baseboard-stay': 'Because shoe molding hides the gap, and boards that stay need no new paint, nails or caulk.',
  'shoe-color':
    'Because shoe painted like the base reads as part of the wall; shoe like the floor makes the floor look wider.',
  'extra-percent': 'Because every row ends in a cut, and not every cut-off piece can be used again.',
  'same-lot': 'Because color, gloss and even the locks change a little from one run to the next.',
  spares: 'Because patterns are dropped within a few years, and one plank from a new run rarely matches.',
  returns: 'Because a store can only sell a sealed box again.',
  'inspect-planks': 'Because a plank that is laid counts as accepted: makers don’t pay for flaws you could see.',
  'new-concrete': 'Because new concrete gives off water for months, and that water gets trapped under the floor.',
  'moisture-test': 'Because you can’t feel damp in a slab or panel, and trapped water swells planks and feeds mold.',
  'moisture-limits':
    'Because above these limits water moves into the plank, which then cups, gaps or lets go of its glue.',
  basement: 'Because a slab in the ground never stops giving off some water.',
  'over-tile': 'Because planks bend into wide grout lines, and the locks break there.',
  'over-vinyl': 'Because a soft layer lets the locks flex until they break.',
  'over-carpet': 'Because pad gives under every step, and the locks break.',
  'vapor-barrier': 'Because concrete lets water vapor through, while wood needs to dry downward.',
  mold: 'Because mold means water is still getting in; cleaned alone, it comes back.',
  'run-through': 'Because every room pulls on the next one; a strip lets each floor move by itself.',
  'long-run': 'Because a longer floor grows and shrinks more, until it pushes on a wall or pulls its joints open.',
  gap: 'Because the floor swells and shrinks with the weather; with no room to move, it buckles or its joints open.',
  'no-gap': 'Because a floor that swells against a wall has nowhere to go but up.',
  jambs: 'Because a cut around the casing shows, and leaves no room for the floor to move.',
  'clean-subfloor': 'Because grit crunches underfoot and holds the planks up until a joint clicks.',
  'soft-bouncy': 'Because planks are only as stiff as what is below: bounce works the locks loose.',
  'sloped-structural': 'Because a slope can come from a joist or a footing, and leveler only adds weight to it.',
  toilet: 'Because a cut around the bowl leaves a ragged gap that collects water.',
  bathroom: 'Because the plank itself stands water, but water that runs past its edge is trapped below.',
  'heavy-furniture': 'Because a weight on both sides pins the floor, and it can’t move with the seasons.',
  'must-be-level': 'Because locks break where planks bridge a dip; a smooth slope does them no harm.',
  'check-flat': 'Because planks bend into every dip, and a dip you can’t see you will feel and hear.',
  'leveler-dry': 'Because the top dries first; damp below it can’t get out once the floor is down.',
  'walk-on': 'Because glue and leveler need their time; a floating floor without them can be used at once.',
  'gaps-appear':
    'Because dry air shrinks the planks, or the floor is pinned somewhere and pulls apart at its weakest joint.',
  buckling: 'Because the floor got longer and is stuck at a wall, a pipe, a cabinet or a doorway.',
  'clicking-noise': 'Because the joints move up and down over a dip, or rub on something that pins them.',
  'glue-joints': 'Because a floating floor has to move as one piece; what is nailed or glued down can’t.',
  'floor-then-trim': 'Because trim hides the gap, so it goes on last; paint drips before the floor do no harm.',
  'lead-suspect': 'Because dust from old lead paint harms children’s brains, even in amounts you can’t see.',
  silica: 'Because the finest dust goes deep into the lungs, scars them and never comes out.',
  'dust-mask': 'Because the dust that harms you most is too fine to see, and a mask that leaks filters nothing.',
  'door-clearance': 'Because the new floor and pad may stand higher than the old one did.',
  'cabinets-island': 'Because a cabinet’s weight pins the floor, and it then buckles or opens elsewhere.',
  'underlay-needed': 'Because pad evens out small bumps and quiets steps, but two layers are so soft that locks break.',
  'attached-pad': 'Because two pads on each other are too soft, and the locks flex until they break.',
  direction: 'Because long lines make a room look calm, and rows along the longer side need the fewest cuts.',
  'direction-hall':
    'Because planks across a hall look like ladder rungs and need a cut at both ends of every short row.',
  'direction-change': 'Because locks only join in one direction; a turn needs a strip.',
  'direction-joists':
    'Because planks across the joists are held up by them; along them, a thin subfloor lets the floor dip.',
  'start-where': 'Because the first row sets the line for all others, and the wall you see most shows every error.',
  'first-row': 'Because walls are rarely straight, and every later row copies the first.',
  'last-row': 'Because a thin strip tips, splits at its lock and shows that the walls aren’t parallel.',
  stagger: 'Because joints close together make a weak line that opens, and the eye finds the pattern.',
  pattern: 'Because a repeat draws the eye; random joints look like a real wood floor.',
  'short-end': 'Because a short piece has too little lock to hold it, so it rocks and pops loose.',
  acclimation:
    'Because planks swell and shrink with warmth and damp; laid cold or dry, they move after they are locked.',
  temperature: 'Because planks grow when it is warm and shrink when it is cold.',
  closet: 'Because a floor that runs through needs no strip, and a small floor moves hardly at all.',
  'which-transition': 'Because both floors need room to move, and a step that isn’t covered trips people.',
  'to-carpet': 'Because the plank edge needs cover and the carpet needs something to be held by.',
  'to-tile': 'Because tile can’t move and plank has to, so the strip holds on to one of them only.',
  'fix-transition': 'Because a strip through the plank pins it, and the floor then opens or buckles.',
  'stairs-lay': 'Because a plank that moves on a stair makes people fall, so nothing floats there.',
  'nail-length': 'Because the nail must go through trim and wallboard and still hold in the stud.',
  'nail-where': 'Because wallboard alone holds no nail, and a nail in the floor pins it.',
  'cope-or-miter': 'Because corners are rarely square: a coped joint stays closed when the wood shrinks.',
  'caulk-where': 'Because caulk closes gaps at the wall, but glues the trim to a floor that has to move.',
  scarf: 'Because a slanted joint shows no gap from the side when the wood shrinks.',
  staples: 'Because a staple head that stands up dents the plank, and it clicks when you step there.',
  'carpet-removal': 'Because narrow rolls can be carried by one person and keep the dust inside.',
  'tack-strip': 'Because its nails stand up where the new floor goes, and it takes up the gap at the wall.',
  'underlay-how': 'Because overlaps make ridges, and gaps in film let damp through.',
};

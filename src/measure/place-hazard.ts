/** Words for what is found at a place: hazards that end the sum, harmless things, and what must be asked back. */

/** What is not safe to work out, the gravest first. */
export const HAZARDS = ['gas', 'sewage', 'asbestos', 'wiring', 'structure', 'plumbing', 'unsure'] as const;
export type Hazard = (typeof HAZARDS)[number];

const whole = (source: string): RegExp => new RegExp(`(?<![a-z])(?:${source})(?![a-z])`);

/** Wood that no longer carries, whatever it is called. */
export const DECAY = whole(
  'rot|rots|rott(?:ed|en|ing)|decay(?:s|ed|ing)?|punky|mush(?:y)?|crumbl(?:y|es|ed|ing)|fung(?:us|i|al)|termites?|ants?|beetles?|woodworms?|insects?|bugs|eaten|deteriorat(?:ed|ing|ion)|disintegrat(?:ed|ing)|perished|spongy|pulpy',
);

/** What carries the floor. */
export const FRAME = whole(
  'joists?|joices?|beams?|girders?|headers?|sills?|rims?|bearers?|fram(?:e|es|ing)|structur(?:e|es|al)|supports?|posts?|piers?|columns?|timbers?|ledgers?|truss(?:es)?|stringers?|studs?|rafters?|lumber|members?|i-joists?|[23] ?(?:x|by) ?\\d+s?',
);

/** What carries, told by where it lies and not by its name. */
export const BENEATH = whole(
  '(?:wood(?:en)?|boards?|lumber|planks?|one|ones|part|parts|piece|pieces)(?: \\w+){0,2} (?:under(?:neath)?|below|beneath)(?! (?:the |my |our )?(?:carpet|pad|rug|window|door))|(?:under(?:neath)?|below|beneath) (?:the |my |our |that |this )?(?:old |new )?(?:wooden |wood )?(?:panels?|sub ?floor(?:s|ing)?|sub-floor(?:s|ing)?|ply(?:wood)?|osb|particle ?boards?|chip ?boards?|sheets?|sheathing|deck(?:ing)?)|(?:boards?|wood|lumber) on edge',
);

/** What is wrong with it, beside decay. */
export const HURT = whole(
  'crack(?:s|ed|ing)?|split(?:s|ting)?|brok(?:e|en)|snapp(?:ed|ing)|notch(?:es|ed)?|cut(?:s|ting)?|holes?|drilled|twist(?:s|ed|ing)?|bow(?:s|ed|ing)?|bent|bend(?:s|ing)?|loose|undersized|damag(?:e|ed|es)|burn(?:s|ed|t)?|char(?:red)?|fire|missing|wet|soft|damp|stain(?:s|ed)?|gone|bad|weak|failed|failing|shot|ruined|mou?ld(?:y)?|hurt|iffy|soggy|compromised',
);

/** The panel laid on what carries. */
export const PANEL = whole(
  'panels?|sub ?floor(?:s|ing)?|sub-floor(?:s|ing)?|ply(?:wood)?|osb|particle ?boards?|chip ?boards?|sheets?|sheathing|deck(?:ing)?|underlayment',
);

/** One list a hazard; decay and hurt of what carries is looked for beside these. */
export const HAZARD_WORDS: Readonly<Record<Exclude<Hazard, 'unsure'>, RegExp>> = {
  gas: whole('gas|propane|lpg'),
  sewage: whole(
    'sewage|sewers?|septic|fa?eces|fa?ecal|excrement|black ?water|black-water|categor(?:y|ies) (?:3|three)|cat ?3|human waste|waste ?water|effluent|flood ?water|flood(?:s|ed|ing)?|poo+p?|shit|crap|turds?|toilet (?:water|over ?flow(?:s|ed|ing)?|back(?:s|ed|ing)?(?: ?up)?|spill(?:ed)?)|over ?flow(?:ed|ing|s)? (?:of |from )?(?:the |my |our )?toilets?|back(?:ed)?[ -]?up|backups?',
  ),
  asbestos: whole(
    'asbestos|vermiculite|black (?:mastic|glue|adhesive|tar)|mastic|cutback|lino|linoleum|(?:old|existing|original) (?:vinyl|tiles?|sheet|resilient|flooring|glue|adhesive)|(?:9|nine)(?: ?in(?:ch)?)? ?(?:x|by) ?(?:9|nine)|vinyl tiles?',
  ),
  wiring: whole(
    'wir(?:e|es|ed|ing)|cabl(?:e|es|ing)|electric(?:s|al|ity)?|conduits?|junction(?: ?box(?:es)?)?|outlets?|sockets?|power|live|spark(?:s|ed|ing)?|energi[sz]ed|volt(?:s|age)?|current|cords?|shock(?:s|ed)?|mains|amps?',
  ),
  structure: whole(
    'sag(?:s|ged|ging|gy)?|droop(?:s|ed|ing|y)?|bounc(?:e|es|y|ing)|spring(?:y|iness)|sink(?:s|ing)?|sunk(?:en)?|collaps(?:e|ed|es|ing)|trampoline|(?:dip|dips|dipped|low|lower|hollow|bowl|bowed)(?: [a-z]+){0,3} (?:in|at|to|towards?) the (?:middle|center|centre)(?: of (?:the |my |our )?(?:room|floor|hall|span|joists?))?(?! of)|giv(?:e|es|ing) way|cav(?:ed|ing|es) in|load[ -]?bearing|bearing walls?|structural(?:ly)?',
  ),
  plumbing: whole(
    'pipes?|piping|plumbing|water ?(?:line|main)s?|supply ?lines?|drain(?:s|age)?|tub(?:e|es|ing)|pex|copper|radiant|hydronic|heat(?:ed|ing|er)?|ducts?|ductwork|vents?|sprinklers?|manifolds?',
  ),
};

export const UNSURE = whole(
  "unsure|not (?:so |quite |really )?sure|uncertain|(?:don'?t|do not|didn'?t|can'?t|cannot) (?:know|tell|see|say)|dunno|unknown|no idea|unclear|something|somethings?|maybe|might|possibl[ey]|perhaps|probabl[ey]|could be|may be|idk|weird|strange",
);

export const MOULD = whole('mou?ld(?:y|s)?|mildew(?:ed|y)?|black spots?|spores?');

/** Whole clauses that say what carries is sound, or that a thing was not found; nothing else may stand in them. */
const SOUND = '(?:sound|solid|dry|fine|good|ok|okay|hard|intact|undamaged|healthy)';
const NOTHING =
  '(?:rot|decay|sagging|sag|sewage|asbestos|mou?ld|wir(?:es|ing)|cables?|pipes?|plumbing|ducts?|gas(?: lines?)?|insects|termites|damage|hazards?|problems?|hidden lines|tubes?)';
export const SAFE_CLAUSE = new RegExp(
  `^(?:none|no|nothing|n/a|nothing (?:else|found|special|there)|(?:and )?(?:the |all |all the )?joists?(?: (?:is|are|look|looks|feel|feels|seem|seems))?(?: all| both| still)? ${SOUND}(?: and ${SOUND})*|(?:and )?no (?:sign of |signs of )?${NOTHING}(?:(?: or| and| nor) (?:no )?${NOTHING})*(?: (?:found|seen|there))?)$`,
);

/** Words of a sound job that carry no hazard by themselves. */
export const HARMLESS: ReadonlySet<string> = new Set(
  `a an the in on at of off near by from to is are was were it its and or only just also some any all still very my our we i there this that here one two three few small big large little old wide long tall high low deep thick thin
  water moisture stain stains stained staining spot spots mark marks damage damaged soft spongy damp wet dry dried shower washing machine dishwasher fridge leak leaks leaked leaking spill spilled spills rain window pet dog cat urine pee smell smells smelly odor odour
  panel panels subfloor subflooring sub floor floors plywood ply osb particleboard particle chipboard chip board boards sheet sheets deck decking underlayment surface
  delaminated delaminating delamination layers swollen swelling swelled puffed bubbled bubbling warped cupped buckled burn burns burned burnt scorch scorched iron
  crack cracks cracked split broken chipped chip worn hole holes gap gaps seam seams joint joints edge edges corner corners middle center centre tongue groove nail nails screw screws staple staples carpet pad tack strip strips
  uneven squeak squeaks squeaky creak creaks creaky loose noisy noise hump humps dip dips ridge ridges bump bumps dust dirt dirty paint painted rust rusty rough round rectangle square area part place patch damaged-area wall walls room hall bay closet bedroom living left right bottom top upper lower under underneath below beneath around where with concrete slab wood wooden new gypsum
  none no nothing found seen else mould mold mouldy moldy mildew rot rotten rotted dark black spores cut discolored discoloured`
    .split(/\s+/)
    .filter((word) => word !== ''),
);

/** Single hazard words that a slip of the finger must not hide. */
export const HAZARD_SPELLINGS: readonly string[] =
  'sewage sewer septic asbestos vermiculite wiring wires cable cables electric electrical conduit joist joists girder framing structural sagging sagged sagging bouncy bouncing collapse collapsing collapsed plumbing pipes radiant hydronic termites decayed rotten rotting mould fungus propane faeces feces linoleum mastic overflow flooded flooding backup effluent'.split(
    ' ',
  );

/** Words of the trade in a sentence or two, for people who ask what one means. Meanings are common practice. */

export interface Term {
  /** As people type it, the usual name first; lowercase. */
  readonly names: readonly string[];
  readonly meaning: string;
  /** The entry that says what to do about it. */
  readonly entry: string;
}

export const TERMS: readonly Term[] = [
  {
    names: ['acclimation', 'acclimate', 'acclimating'],
    meaning: 'Acclimation is letting the boxes lie in the room until the planks are as warm as it is.',
    entry: 'acclimation',
  },
  {
    names: ['attached pad', 'attached underlayment', 'pre-attached pad', 'attached backing'],
    meaning: 'An attached pad is a thin layer of foam or cork glued to the back of each plank at the factory.',
    entry: 'attached-pad',
  },
  {
    names: ['back cut', 'backcut', 'undercut of a board'],
    meaning: 'A back cut leans a little behind the face, so the front edge touches first and the joint looks tight.',
    entry: 'outside-corner',
  },
  {
    names: ['bottom plate', 'sole plate', 'sill plate of a wall'],
    meaning: 'The bottom plate is the flat board the studs stand on: solid wood all along the foot of a framed wall.',
    entry: 'find-studs',
  },
  {
    names: ['bullnose', 'bull nose'],
    meaning: 'A bullnose is a rounded front edge, most often the lip of a stair tread.',
    entry: 'stairs-lay',
  },
  {
    names: ['casing', 'door casing', 'architrave'],
    meaning: 'Casing is the flat trim around a door or window, nailed over the joint of frame and wall.',
    entry: 'jambs',
  },
  {
    names: ['caulk', 'painter’s caulk', 'caulking'],
    meaning: 'Caulk is a soft filler from a tube that closes the thin line between trim and wall and takes paint.',
    entry: 'caulk-where',
  },
  {
    names: ['click lock', 'click-lock', 'click plank', 'click flooring', 'click vinyl'],
    meaning: 'Click lock is an edge that hooks into the next plank and snaps tight, without glue or nails.',
    entry: 'glue-or-float',
  },
  {
    names: ['cope', 'coping', 'coped joint', 'coped corner'],
    meaning: 'Coping is cutting the end of one baseboard to the profile of the other, so it fits over it in a corner.',
    entry: 'cope-or-miter',
  },
  {
    names: ['drop', 'waste factor', 'overage', 'waste'],
    meaning: 'Waste is the share of a floor you buy but don’t lay: ends, rips and planks that go wrong.',
    entry: 'extra-percent',
  },
  {
    names: ['end cap', 'square nose', 'end cap molding'],
    meaning: 'An end cap is a strip that finishes a floor where it stops: at a slider, carpet, or a hearth.',
    entry: 'which-transition',
  },
  {
    names: ['expansion gap', 'expansion space', 'expansion joint'],
    meaning: 'An expansion gap is the space you leave between the planks and every wall, so the floor can grow.',
    entry: 'gap',
  },
  {
    names: ['flange', 'toilet flange', 'closet flange'],
    meaning: 'A toilet flange is the ring on the drain that the toilet is bolted to.',
    entry: 'toilet-flange',
  },
  {
    names: ['floating floor', 'floating', 'float'],
    meaning: 'A floating floor is locked plank to plank and fastened to nothing: it lies loose and moves as one.',
    entry: 'glue-or-float',
  },
  {
    names: ['flush cut saw', 'jamb saw', 'undercut saw'],
    meaning: 'A jamb saw cuts flat along the floor, to trim door casings so that planks slide under them.',
    entry: 'jambs',
  },
  {
    names: ['h joint', 'h-joint', 'h pattern', 'h-shape'],
    meaning: 'An H-joint is two end joints in line with one row between them; it looks like an H and like a mistake.',
    entry: 'stagger',
  },
  {
    names: ['jamb', 'door jamb', 'doorjamb'],
    meaning: 'A jamb is the upright side of a door frame.',
    entry: 'jambs',
  },
  {
    names: ['joist', 'joists', 'floor joist', 'floor joists'],
    meaning: 'A joist is one of the beams on edge below the subfloor that carry the floor from wall to wall.',
    entry: 'direction-joists',
  },
  {
    names: ['kerf', 'saw kerf'],
    meaning: 'The kerf is the width a saw blade turns to dust with each cut.',
    entry: 'saw-blade',
  },
  {
    names: ['laminate', 'laminate flooring'],
    meaning: 'Laminate is a printed picture of wood under a hard clear coat, on a board of pressed wood fiber.',
    entry: 'lvp-vs-laminate',
  },
  {
    names: ['leveler', 'self leveler', 'self-leveler', 'self leveling compound', 'slc', 'floor leveler'],
    meaning: 'Leveler is a cement mix you pour into low spots; it runs flat by itself and sets hard.',
    entry: 'leveler-on-wood',
  },
  {
    names: ['lot', 'lot number', 'dye lot', 'batch number', 'run number'],
    meaning: 'A lot is everything made in one run; its number is on each carton, and shades match within it.',
    entry: 'same-lot',
  },
  {
    names: ['lvp', 'luxury vinyl plank', 'vinyl plank', 'lvt', 'luxury vinyl'],
    meaning: 'LVP is vinyl plank: layers of plastic with a printed picture of wood and a clear wear layer on top.',
    entry: 'lvp-vs-laminate',
  },
  {
    names: ['mastic', 'cutback', 'black mastic', 'cutback adhesive'],
    meaning: 'Mastic is old floor glue. The black kind often holds asbestos, so test it before you scrape it.',
    entry: 'mastic',
  },
  {
    names: ['mil', 'mils'],
    meaning: 'A mil is a thousandth of an inch, not a millimeter; wear layers and plastic film are sold by it.',
    entry: 'thickness-wear',
  },
  {
    names: ['miter', 'mitre', 'miter joint', 'mitered corner', 'miter cut'],
    meaning: 'A miter is a corner joint of two pieces, each cut at half the angle.',
    entry: 'trim-angle',
  },
  {
    names: ['miter saw', 'chop saw', 'mitre saw'],
    meaning: 'A miter saw drops its blade straight through a board, square or at the angle you set.',
    entry: 'saw-safety',
  },
  {
    names: ['nosing', 'stair nosing', 'stair nose', 'stairnose'],
    meaning: 'A nosing is the strip on the front edge of a step, where the foot lands.',
    entry: 'stair-nosing-count',
  },
  {
    names: ['osb', 'oriented strand board'],
    meaning: 'OSB is a panel of wood strands pressed with glue, used for subfloors like plywood.',
    entry: 'subfloor-type',
  },
  {
    names: ['pull bar', 'pullbar'],
    meaning: 'A pull bar hooks over the end of a plank, so you can tap it tight where no hammer fits.',
    entry: 'tools',
  },
  {
    names: ['quarter round', 'quarter-round', '1/4 round', 'beading', 'scotia'],
    meaning: 'Quarter round is a small rounded strip at the foot of a baseboard that covers the gap.',
    entry: 'shoe-choice',
  },
  {
    names: ['reducer', 'reducer strip', 'reducer molding'],
    meaning: 'A reducer is a sloped strip from a higher floor down to a lower one.',
    entry: 'which-transition',
  },
  {
    names: ['return', 'trim return', 'mitered return'],
    meaning: 'A return is a tiny mitered piece that closes the open end of a molding.',
    entry: 'trim-end',
  },
  {
    names: ['riser', 'stair riser', 'risers'],
    meaning: 'A riser is the upright face between two steps.',
    entry: 'stairs-lay',
  },
  {
    names: ['scarf', 'scarf joint'],
    meaning: 'A scarf joint laps two lengths of trim with slanted cuts, so that no straight crack opens.',
    entry: 'scarf',
  },
  {
    names: ['shoe', 'shoe molding', 'base shoe', 'shoe moulding'],
    meaning: 'Shoe is a slim strip nailed to the foot of a baseboard to cover the gap at the floor.',
    entry: 'shoe-choice',
  },
  {
    names: ['sliver', 'slivers', 'sliver row'],
    meaning: 'A sliver is a strip of plank too narrow to look right or lock well, most often in the last row.',
    entry: 'last-row',
  },
  {
    names: ['spc', 'wpc', 'spc flooring', 'wpc flooring', 'rigid core', 'spc core'],
    meaning: 'SPC and WPC are cores of rigid vinyl plank: SPC is dense and stony, WPC foamed, softer and warmer.',
    entry: 'thickness-wear',
  },
  {
    names: ['square foot', 'square feet', 'sq ft', 'sf', 'sqft'],
    meaning:
      'A square foot is a square one foot on each side; length times width in feet gives the square feet of a room.',
    entry: 'measure-how',
  },
  {
    names: ['stagger', 'staggering', 'staggered', 'stair step', 'stair-step'],
    meaning: 'Stagger is how far the end joints of one row stand from those of the next.',
    entry: 'stagger',
  },
  {
    names: ['stud', 'studs', 'wall stud'],
    meaning: 'A stud is one of the upright boards inside a wall; trim is nailed into them.',
    entry: 'find-studs',
  },
  {
    names: ['subfloor', 'sub floor', 'sub-floor', 'floorboards'],
    meaning: 'The subfloor is the plywood, OSB, boards or concrete that the finished floor lies on.',
    entry: 'subfloor-type',
  },
  {
    names: ['t molding', 't-molding', 't moulding', 'tmolding', 't-moulding', 'threshold bar'],
    meaning: 'A T-molding is a T-shaped strip that covers the gap between two hard floors of the same height.',
    entry: 'which-transition',
  },
  {
    names: ['tack strip', 'tackstrip', 'tackless strip', 'gripper', 'gripper rod', 'carpet gripper', 'tack strips'],
    meaning: 'Tack strip is the thin wood with sharp pins along the walls that holds a carpet by its edge.',
    entry: 'tack-strip',
  },
  {
    names: ['tapping block', 'tap block'],
    meaning: 'A tapping block is a block you hold against a plank and hit, so the hammer never touches the lock.',
    entry: 'tools',
  },
  {
    names: ['threshold', 'transition', 'transition strip', 'saddle', 'doorway strip'],
    meaning: 'A transition is the strip that covers the joint where two floors meet, most often in a doorway.',
    entry: 'which-transition',
  },
  {
    names: ['tongue and groove', 'tongue', 'groove', 't&g', 'tongue & groove'],
    meaning: 'The tongue is the thin edge of a plank or panel that fits into the groove of the next one.',
    entry: 'start-where',
  },
  {
    names: ['tread', 'stair tread', 'treads'],
    meaning: 'A tread is the flat part of a step that you stand on.',
    entry: 'stairs-lay',
  },
  {
    names: ['undercut', 'undercutting', 'undercut a door', 'undercut a door jamb'],
    meaning: 'To undercut is to saw a slice off the foot of a door casing, so that the plank slides under it.',
    entry: 'jambs',
  },
  {
    names: ['underlayment', 'underlay', 'underlayment pad'],
    meaning: 'Underlayment is the thin layer under the planks that softens steps and sound.',
    entry: 'underlay-needed',
  },
  {
    names: ['vapor barrier', 'vapor retarder', 'moisture barrier', 'poly film', 'vapour barrier'],
    meaning: 'A vapor barrier is plastic film under the floor that keeps moisture from below out of it.',
    entry: 'vapor-barrier',
  },
  {
    names: ['wear layer', 'wearlayer'],
    meaning: 'The wear layer is the clear coat on top of vinyl plank that takes the scratches.',
    entry: 'thickness-wear',
  },
];

/** Nothing but “what does it mean” around a name: “what’s a joist”, “joist meaning”. Group 1 or 2 is the name. */
const ASKED =
  /^(?:(?:so|ok|hey|um|sorry|wait|dumb question|stupid question|quick question),? ?)?(?:(?:what(?:['’]?s| is| are| does| do| the heck is| exactly is)|define|explain|meaning of|whats|(?:i )?(?:don['’]?t|dont) know what) ?(?:meant by |they mean by |you mean by |called )?(?:an? |the )?["“']?([a-z0-9&/’' -]{1,30}?)["”']?(?: (?:means?|meaning|anyway|exactly|is|are|in flooring|for flooring)){0,3}|["“']?([a-z0-9&/’' -]{1,30}?)["”']? (?:meaning|definition|means what))$/;

const BY_NAME = new Map(TERMS.flatMap((term) => term.names.map((name) => [name, term] as const)));

export function termNamed(name: string): Term | undefined {
  const plain = name.trim().toLowerCase().replaceAll("'", '’');
  return BY_NAME.get(plain) ?? BY_NAME.get(plain.replace(/(?<!s)s$/, ''));
}

/** The word whose meaning a message asks for, and nothing else. */
export function termAsked(text: string): Term | undefined {
  if (text.length > LONGEST) return undefined;
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[?!. ]{1,9}$/, '');
  const found = ASKED.exec(plain);
  const name = found?.[1] ?? found?.[2];
  return name === undefined ? undefined : termNamed(name);
}

const LONGEST = 80;

/** The wording of cautions and of the safety answer. Local code, makers' instructions and licensed trades come first. */

import type { Caution, Source } from '../reply/reply.ts';

const TEXTS: Readonly<Record<string, string>> = {
  asbestos:
    'Old floor below? Sheet, tile, its backing or its glue may hold asbestos, most likely where it was laid up to 1980, and later is no proof: have a sample tested first; do not sand, saw, drill, dry-scrape or dry-sweep it. A licensed abatement contractor removes it.',
  lead: 'Built before 1978 (Canada 1990, UK 1992, Australia 1997)? Paint on its trim may hold lead: test before you pry, sand or cut it, keep children away, wet the work and clean with a HEPA vacuum.',
  'leak-water':
    'Leak: stop the water and switch the circuit off before you step in. Water from a drain, toilet or flood is sewage: stay out and call a water-damage company. Clean water: dry everything within 24–48 h, and ask the insurer before you throw anything out.',
  'tack-strip':
    'Tack strip: nails stand points up within about 1 3/8 in of every wall, 2 3/8 in in rooms over 30 ft. Thick soles, kneeling pads, gloves and goggles; pry it up strip by strip and drop it straight into a box, points down.',
  blade:
    'Utility knife: fresh blade, cut away from yourself, other hand out of the line, cut-resistant glove; blades go into a can, not a bag.',
  saw: 'Saw: guard on, eyes and ears covered, piece held firm, blade at rest before you reach in. Cut outdoors or with a dust collector.',
  dust: 'Dust: wear a fitted N95 mask when you saw or sand, and vacuum instead of sweeping dry.',
  silica:
    'Concrete and leveler dust holds silica: never grind it dry without a shroud, a HEPA vacuum and a respirator (action level 25 µg/m³ over 8 h).',
  fumes:
    'Adhesive, primer, caulk and paint: read the label and the safety data sheet, open windows on two sides, no flame, no pilot light and no sparks near solvents, gloves on; rags with oil dry flat outdoors.',
  noise: 'Saws and nailers are louder than 85 dBA: wear hearing protection.',
  knees: 'Knees: wear pads, kneel in short spells, change sides, never kick with the knee.',
  lifting:
    'Lifting: carry heavy cartons, rolls and bags in smaller loads; two people on the stairs; back straight, load close.',
  mould:
    'Mold over about 10 sq ft, or any sewage, is work for a professional. Smaller spots: gloves, N95 mask, goggles; dry within 24–48 h.',
  tetanus: 'Puncture or dirty wound? If your last tetanus shot was over 5 years ago, see a doctor.',
  'nail-gun':
    'Nail gun: full sequential trigger (a contact trigger doubles the risk), never point it at anybody, hose or battery off before you clear a jam, free hand a foot away, eyes and ears covered.',
  'hidden-lines':
    'Cables, pipes and heating tubes lie in walls and floors: find them first, and keep fasteners no longer than they need to be.',
};

/** The same for the first lines of an answer, where `safety` has them whole. */
const IN_SHORT: Readonly<Record<string, string>> = {
  asbestos: 'Old floor below? Have it tested for asbestos before you disturb it.',
  lead: 'Paint from before 1978? Test it for lead before you pry or cut.',
  'leak-water': 'A leak? Stop the water and cut the power before you step in.',
  'tack-strip': 'Tack strip nails point up: thick soles, gloves and goggles.',
  blade: 'Fresh blade, cut away from yourself, cut-resistant glove.',
  saw: 'Saw: guard on, eyes and ears covered, blade stopped before you reach in.',
  dust: 'Wear a fitted N95 mask when you saw or sand.',
  silica: 'Concrete and leveler dust holds silica: never grind or sweep it dry.',
  fumes: 'Fumes: open windows, no flames or pilot lights, read the label first.',
  noise: 'Saws and nailers hurt your ears: wear hearing protection.',
  knees: 'Wear knee pads and change sides.',
  lifting: 'Carry heavy cartons in smaller loads; two people on stairs.',
  mould: 'Mold over about 10 sq ft, or any sewage: leave it to a professional.',
  tetanus: 'Puncture or dirty wound? Tetanus shot over 5 years old: see a doctor.',
  'nail-gun': 'Nail gun: sequential trigger, hose off before you clear a jam.',
  'hidden-lines': 'Find cables, pipes and heating before you cut, screw or nail.',
};

/** Cautions with their words. Throws when a topic has none: a caution must never be silent. */
export function worded(cautions: readonly { readonly topic: string; readonly source: Source }[]): readonly Caution[] {
  return cautions.map(({ topic, source }) => {
    const text = TEXTS[topic];
    if (text === undefined) throw new Error(`no words for the caution ${topic}`);
    const brief = IN_SHORT[topic];
    return { topic, text, ...(brief === undefined ? {} : { brief }), source };
  });
}

// The words of the safety answer.

/** Tasks that are no deed by their bare name. */
const TASK_NAMES: Readonly<Record<string, string>> = { subfloor: 'subfloor work', leak: 'you clean up a leak' };

export const SAFETY = {
  headline: (task: string, cautions: number) =>
    `Before ${TASK_NAMES[task] ?? task}: ${cautions === 1 ? 'one thing' : `${cautions} things`} that can hurt you.`,
  first:
    'Local code, makers’ instructions and licensed trades come first. Limits for workers are given as benchmarks. If something does not look right, stop and get help.',
  noiseTitle: 'Noise in your day',
  noiseColumns: ['Noise', 'Hours', 'Level', 'Recommended at most', 'Share', 'Employer’s limit', 'Share of it'],
  level: (level: string) => `${level} dBA`,
  uncounted: 'not counted below 80 dBA',
  recommended: (percent: string, times: string | undefined) =>
    times === undefined
      ? `In all ${percent} of what NIOSH recommends in a day (85 dBA for 8 h).`
      : `In all ${times} times what NIOSH recommends in a day (85 dBA for 8 h): ${percent}.`,
  dose: (percent: string, level: string) =>
    `By OSHA’s rule for employers, which allows more, ${percent}, as loud as ${level} dBA for 8 h.`,
  quiet: 'Nothing in this day is loud enough to count.',
  overBoth: 'Over both: cut the hours, use quieter tools, and wear muffs or plugs all the time.',
  over: 'Over what is recommended: cut the hours, use quieter tools, and wear muffs or plugs all the time.',
  under: 'Within both: still wear muffs or plugs whenever you must raise your voice at arm’s length.',
  tooLoud: 'Above 115 dBA no steady noise is allowed for any time: use another tool.',
} as const;

/** Text of cautions and of the safety answer. Local codes, makers' instructions and licensed trades come first. */

import type { Caution, Source } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';

const TEXTS: Readonly<Record<string, string>> = {
  asbestos:
    'Old floor below? Sheet, tile, its backing or its glue may hold asbestos, most likely where it was laid up to 1980, and later is no proof: have a sample tested first; do not sand, saw, drill, dry-scrape or dry-sweep it. A licensed abatement contractor removes it.',
  lead: 'Built before 1978 (Canada 1990, UK 1992, Australia 1997)? Paint on its trim may hold lead: test before you pry, sand or cut it, keep children away, wet the work and clean with a HEPA vacuum.',
  'leak-water':
    'Leak: stop the water and switch the circuit off before you step in. Water from a drain, toilet or flood is sewage: stay out and call a water-damage company. Clean water: dry everything within 24–48 h, and ask the insurer before you throw anything out.',
  'tack-strip': `Tack strip: nails stand points up within about ${byUnits('1 3/8 in', '35 mm')} of every wall, ${byUnits('2 3/8 in in rooms over 30 ft', '60 mm in rooms over 9 m')}. Wear thick soles, knee pads, gloves and goggles. Pry it up strip by strip and drop it into a box, points down.`,
  blade:
    'Utility knife: fresh blade, cut away from yourself, other hand out of the line, cut-resistant glove; blades go into a can, not a bag.',
  saw: 'Saw: guard on, eyes and ears covered, piece held firm, blade stopped before you reach in. Cut outdoors or with a dust collector.',
  dust: 'Dust: wear a fitted N95 mask when you saw or sand, and vacuum instead of sweeping dry.',
  silica:
    'Concrete and leveler dust holds silica: never grind it dry without a shroud, a HEPA vacuum and a respirator (action level 25 µg/m³ over 8 h).',
  fumes:
    'Adhesive, primer, caulk and paint: read the label and the safety data sheet. Open windows on two sides and wear gloves. No flame, pilot light or spark near solvents. Dry oily rags flat outdoors.',
  noise: 'Saws and nailers are louder than 85 dBA: wear hearing protection.',
  knees: 'Knees: wear pads, kneel in short spells, change sides, never kick with the knee.',
  lifting:
    'Lifting: carry heavy cartons, rolls and bags in smaller loads; two people on the stairs; back straight, load close.',
  mould: `Mold over about ${byUnits('10 sq ft', '1 m²')}, or any sewage, is work for a professional. Smaller spots: gloves, N95 mask, goggles; dry within 24–48 h.`,
  tetanus: 'Puncture or dirty wound? If your last tetanus shot was over 5 years ago, see a doctor.',
  'nail-gun': `Nail gun: use a full sequential trigger, since a contact trigger doubles the risk. Never point it at anybody. Take the hose or battery off before you clear a jam. Keep your free hand ${byUnits('a foot', '30 cm')} away, and cover your eyes and ears.`,
  'hidden-lines':
    'Cables, pipes and heating tubes lie in walls and floors: find them first, and keep fasteners no longer than they need to be.',
};

/** A short form for the top of an answer; the `safety` section has the full text. */
const IN_SHORT: Readonly<Record<string, string>> = {
  asbestos: 'Old floor below? Test it for asbestos before you disturb it.',
  lead: 'Paint from before 1978? Test for lead before you pry or cut.',
  'leak-water': 'Leak? Water off and power off before you step in.',
  'tack-strip': 'Tack strip nails point up: thick soles, gloves, goggles.',
  blade: 'Fresh blade, cut away from yourself, cut-resistant glove.',
  saw: 'Saw: guard on, goggles, ear muffs; let the blade stop first.',
  dust: 'Wear a fitted N95 mask when you saw or sand.',
  silica: 'Silica dust in concrete and leveler: never grind or sweep dry.',
  fumes: 'Fumes: open windows, no flames or pilot lights.',
  noise: 'Loud saws and nailers: wear hearing protection.',
  knees: 'Wear knee pads and change sides.',
  lifting: 'Carry heavy cartons in smaller loads; two people on stairs.',
  mould: `Mold over ${byUnits('10 sq ft', '1 m²')}, or sewage? Call a professional.`,
  tetanus: 'Puncture or dirty wound, tetanus shot over 5 years old? See a doctor.',
  'nail-gun': 'Nail gun: use the sequential trigger, and unhook the hose to clear a jam.',
  'hidden-lines': 'Find cables, pipes and heating before you cut, screw or nail.',
};

/** Throws if a topic has no text: a caution must never be silent. */
export function worded(cautions: readonly { readonly topic: string; readonly source: Source }[]): readonly Caution[] {
  return cautions.map(({ topic, source }) => {
    const text = TEXTS[topic];
    if (text === undefined) throw new Error(`no words for the caution ${topic}`);
    const brief = IN_SHORT[topic];
    return { topic, text, ...(brief === undefined ? {} : { brief }), source };
  });
}

/** Words of a step that a caution belongs with. What has none, or stands in no step, comes before all of them. */
const AT_WORK: Readonly<Record<string, RegExp>> = {
  asbestos: /\btile\b|black glue|old floor/i,
  lead: /baseboard|casing|\bpaint/i,
  'tack-strip': /tack strip/i,
  blade: /\bslit|\bknife|you cut/i,
  saw: /you cut|set the saw/i,
  'nail-gun': /\bnailer|nail gun/i,
  dust: /pull the pad|\bvacuum|\bsand\b|you cut|set the saw/i,
  silica: /\bgrind/i,
  fumes: /\bglue\b(?! below)|adhesive|primer|\bcaulk/i,
  noise: /you cut|set the saw|\bnailer/i,
  knees: /tack strip|\bkneel|lay each row/i,
  lifting: /\bcarry/i,
  mould: /\bmold|pull the pad/i,
  tetanus: /staple/i,
  'hidden-lines': /\bscrew|\bdrill|\bfasten/i,
};

/** Cautions at the steps of the work that they are about: those that come before all steps, and those of each step. */
export function cautionsAtSteps(
  cautions: readonly Caution[],
  steps: readonly string[],
): { readonly first: readonly Caution[]; readonly at: readonly (readonly Caution[])[] } {
  const places = cautions.map(({ topic }) => steps.findIndex((step) => AT_WORK[topic]?.test(step) ?? false));
  return {
    first: cautions.filter((_, i) => places[i] === -1),
    at: steps.map((_, step) => cautions.filter((_one, i) => places[i] === step)),
  };
}

/** Tasks whose names don't fit into “before you …”. */
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

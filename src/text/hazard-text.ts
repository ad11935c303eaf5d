/** Text about hazards that aren't emergencies: why work stops, the line added to an answer, and what clears it. */

import type { Caution } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';

interface HazardWords {
  /** Why nothing is computed. */
  readonly why: string;
  readonly call: string;
  /** Added to an answer that the hazard doesn't block. */
  readonly note: string;
  /** Notes for particular subjects of a question. */
  readonly notes?: Readonly<Record<string, string>>;
  /** The direct answer to a question and two or three more sentences, by the subject of the question. */
  readonly answers: Readonly<Record<string, readonly [direct: string, more: string]>>;
  /** What to type once that is the case. */
  readonly clears: string;
}

const LAB =
  'an accredited asbestos inspector or laboratory, for samples of floor, backing and glue; a licensed abatement contractor to remove it';
const RESTORER = 'a professional water-damage restorer; a licensed plumber for the cause';
const BUILDER = 'a licensed contractor or a structural engineer';

const WORDS: Readonly<Record<string, HazardWords>> = {
  gas: {
    why: 'Gas near the work: a saw or a screw can open a line. Smell gas? Leave now, touch no switch, and call from outside.',
    call: 'the gas utility’s emergency line, then a licensed gas fitter',
    note: 'Gas line: don’t cut, screw, cap or move it. Smell gas? Leave, touch no switch, call from outside.',
    answers: {
      '': [
        'No work on a gas line yourself: a licensed gas fitter caps, moves or connects it.',
        'Don’t cut or screw near it until it is found along its whole way and shut off. Smell gas? Leave now, touch no switch, and call from outside.',
      ],
      appliance: [
        'Only with the gas shut off at its valve and the flexible line watched all the way.',
        'The line must not be kinked, stretched or stepped on, and an old one is replaced, never reused. Better to have a licensed gas fitter disconnect it, and connect and leak-test it afterwards. Smell gas or hear a hiss? Leave now, touch no switch, and call from outside.',
      ],
      marks: [
        'Wait until the gas company has marked its line, and stay well clear of the marks.',
        'In the US, 811 has the lines of the utilities marked free of charge; yellow is gas. Lines past the meter, in the house and the yard, are yours and often not marked: a licensed gas fitter finds those.',
      ],
    },
    clears: 'gas company checked it',
  },
  'carbon-monoxide': {
    why: 'Carbon monoxide has no smell and kills. An alarm or a headache means: everybody out, then call.',
    call: 'the fire department or the gas company, to measure the air; your emergency number (911, 112 …) if anybody feels sick',
    note: 'Carbon monoxide: never run an engine, a grill or an unvented heater indoors, and keep an alarm on every floor.',
    answers: {
      '': [
        'Carbon monoxide can’t be smelled: only an alarm shows it.',
        'Never run an engine, a grill or an unvented heater indoors, not even to dry a floor. Put an alarm on every floor and near bedrooms. If it sounds or anybody has a headache: everybody out, then call.',
      ],
      engine: [
        'No: no fuel-burning engine or unvented heater indoors or in a garage, open door or not.',
        `Its carbon monoxide can’t be smelled and kills within minutes. Run a generator outdoors, ${byUnits('20 ft', '6 m')} or more from doors and windows, exhaust away from the house. Use electric tools and heaters inside. One is running now, or anybody has a headache? Everybody out, then call.`,
      ],
    },
    clears: 'fire department cleared it',
  },
  fire: {
    why: 'Something burned or smoldered there: no work until it is surely out and its cause is known.',
    call: 'the fire department, your emergency number (911, 112 …); a licensed electrician for its cause',
    note: 'Fire: keep an extinguisher at hand and lay oily rags flat outdoors to dry.',
    answers: {
      '': ['Out first, then call from outside.', 'Close doors behind you and don’t go back in.'],
    },
    clears: 'fire department cleared it',
  },
  electric: {
    why: 'A cable or wire in the way: switch off its circuit and neither cut, nail nor screw there.',
    call: 'a licensed electrician',
    note: 'Wiring: switch off the circuit at the panel and test it dead before you cut, nail or screw near it.',
    answers: {
      '': [
        'Leave wires alone: switch off the circuit and have an electrician cap, move or protect them.',
        'Never bury a splice or a loose cable under a floor, and keep nails and screws away from it. Old cloth or knob-and-tube wiring is looked at before anything is covered.',
      ],
      outlet: [
        'Yes: switch off its breaker, and test it dead at the outlet before you cut beside it.',
        'Test with a tester that you have just tried on a live outlet; a box can be fed by two circuits. Set the blade no deeper than the plank or panel, since the cable runs below. Its cover and box must end up level with the new floor: an electrician raises it.',
      ],
      box: [
        'No: a box with wires in it must stay where it can be reached, so no floor goes over it.',
        'The electrical code asks for that (NFPA 70, 314.29). Switch off the circuit and have an electrician move the splice to where it can be opened, or take the wires out.',
      ],
      heater: [
        'Switch off its breaker and test it dead first; both wires of a 240-volt heater are live.',
        'Whoever takes it off its wires is an electrician. Its label and manual give the distance it needs from the floor and from what stands in front; a new floor must not take that away. Often the floor simply stops at it, or runs below with that gap.',
      ],
    },
    clears: 'electrician checked it',
  },
  wound: {
    why: 'Somebody is hurt: that comes first.',
    call: 'your emergency number (911, 112 …), or a doctor',
    note: 'Hurt? See to that first.',
    answers: {
      '': ['See to the wound first.', 'Press, rinse, cover; a doctor for anything deep, dirty or in the eye.'],
      heart: [
        'Is there pain or pressure in the chest or jaw, cold sweat, or trouble breathing? Then call now.',
        'An arm that is only sore from lifting gets better with rest. Pain that spreads from the chest, comes without moving the arm, or comes with sweat or nausea may be the heart.',
      ],
      needle: [
        'Don’t touch it with your hands: pick it up with tongs or pliers, point away from you.',
        'Drop it into a hard, lidded plastic jar, such as one for laundry soap; never put the cap back on. Ask the health department or a pharmacy where it goes. Where one lies, more may: heavy gloves and boots, roll the carpet, never press the pad with hands or knees. Stuck by one? Wash it, and an emergency room the same day.',
      ],
      caustic: [
        'Keep it off your skin: wet cement, thinset and leveler burn, and often without pain at first.',
        'Waterproof gloves, long sleeves, long pants, boots, eye protection; never kneel in it. On the skin: rinse with lots of water, and take off what is soaked. Blisters, raw or white skin, or any in the eye? A doctor now.',
      ],
      lifting: [
        'Not alone: get help or movers, and know its weight first.',
        `An appliance dolly with straps, sliders or a pry bar and cribbing, two or more people, nobody below it on stairs. A cast-iron tub often weighs more than ${byUnits('300 lb', '140 kg')}, and may be broken up in place instead, with goggles and ear protection. A floor that sags under it needs a contractor first.`,
      ],
    },
    notes: {
      heart: 'Pain in chest, jaw or arm with sweat or nausea: call your emergency number (911, 112 …).',
      needle: 'Used needles: never by hand; tongs, a hard lidded jar, heavy gloves.',
      caustic: 'Wet cement and leveler burn skin: waterproof gloves, long pants, rinse at once.',
      lifting: 'Very heavy things: never alone; helpers, a dolly, nobody below on stairs.',
    },
    clears: 'the bleeding has stopped',
  },
  cleaners: {
    why: 'Bleach must never meet ammonia, urine, vinegar or any acid: together they give off a gas that burns the lungs.',
    call: 'poison control (1-800-222-1222 in the US) if some has mixed; your emergency number (911, 112 …) if anybody coughs or can’t breathe well',
    note: 'Bleach must never meet ammonia, urine, vinegar or any acid: the gas burns the lungs.',
    answers: {
      '': [
        'No: bleach with ammonia, urine, vinegar or any acid gives off a toxic gas.',
        'Pet urine holds ammonia, so no bleach on it: use an enzyme cleaner, let it dry, then seal. If some has mixed already, leave the room and air it out from outside.',
      ],
    },
    clears: 'aired out, and rinsed with water',
  },
  sewage: {
    why: 'Sewage or flood water carries disease, and what it soaked comes out: that is not worked out here. Keep people and pets out.',
    call: RESTORER,
    note: 'Sewage: keep people and pets out; what it soaked comes out.',
    answers: {
      '': [
        'Not a job to do yourself: sewage and flood water carry disease.',
        'Keep people and pets out and run no water. Carpet, pad and whatever else it soaked comes out; the rest is cleaned, disinfected and dried before anything is laid over it.',
      ],
      smell: [
        'A drain that smells is dried out, loose or leaking: find out which before you cover the floor.',
        'Pour water into a drain that is seldom used: its trap may be dry. At a toilet, a bad wax ring lets sewer gas and dirty water out, and the subfloor around it may be soaked. A smell like rotten eggs may also be gas: then leave, and call from outside.',
      ],
    },
    clears: 'a restorer cleaned it',
  },
  water: {
    why: 'Water has been there: the leak is fixed and the floor dry before work goes on.',
    call: 'a licensed plumber; your insurer before anything is thrown out',
    note: 'Leak: fix it first, dry everything within 24–48 hours, and measure the moisture before you lay anything.',
    answers: {
      '': [
        'Stop the water first, then dry everything within 24–48 hours.',
        'Lift what is wet so that air gets below it. Lay nothing until the moisture is measured dry. Water from a drain or a toilet is sewage: stay out. Take pictures for the insurer before anything is thrown out.',
      ],
      valve: [
        'Most fixtures have their own shutoff; the main one is at the meter or where the line comes in.',
        'Look below the sink, behind the toilet, and behind the washer or the fridge. Close it and open the faucet before you take anything apart. One that sticks, drips or won’t close is never forced: close the main and have it replaced before the floor goes in.',
      ],
    },
    clears: 'plumber fixed it',
  },
  fumes: {
    why: 'Solvent fumes near a flame or in a closed room can burn or poison.',
    call: 'poison control (1-800-222-1222 in the US); your emergency number (911, 112 …) if anybody is dizzy or can’t breathe well',
    note: 'Fumes: open windows on two sides, every flame and pilot light off, nobody sleeps in there.',
    answers: {
      '': [
        'Only with two windows open and every flame and pilot light off.',
        'Read the label and the safety data sheet; an organic-vapor respirator where they ask for one, no dust mask. Children, pets and anybody pregnant stay out until the smell is gone. Dizzy or a headache? Out into fresh air.',
      ],
      mask: [
        'A respirator with organic-vapor cartridges, never a dust mask: those stop no vapor.',
        'Windows open on two sides with a fan blowing out, every flame and pilot light off, breaks in fresh air every half hour or so. Change cartridges as their maker says, or as soon as you smell it. Dizzy or a headache? Out into fresh air. The water-based kind is the safer choice.',
      ],
      rags: [
        'Never leave oily rags in a pile: they can heat up and catch fire by themselves.',
        'Spread each one flat outdoors until it is stiff, or put them under water in a closed metal can.',
      ],
    },
    clears: 'aired out',
  },
  structure: {
    why: 'What carries the floor is hurt, rotten or gives way: new work over it would hide that and not hold. Stay off that place.',
    call: BUILDER,
    note: 'What carries the floor comes first: have it looked at before anything is laid on it.',
    answers: {
      '': [
        'Stop there: what carries the floor is looked at before anything goes over it.',
        'A cracked, rotten, notched or sagging joist, beam or post is no job for filler, screws or a new panel. Keep weight off it, take pictures, and cut nothing that carries. A wall may carry too.',
      ],
      load: [
        'Not in one heap: spread it along walls and over several rooms, flat and low.',
        `Upper floors of houses are often designed for ${byUnits('30 to 40 lb per square foot', '150 to 200 kg/m²')} (the model code for US homes, IRC table R301.5), and a stack of tile or plank boxes can pass that. Add up the weights on the boxes; for anything heavier, or a floor that sags or bounces, ask a structural engineer first.`,
      ],
      panel: [
        'Soft or black means wet: find the water, then open it up.',
        'Poke it with a screwdriver until the wood is hard again, and look at the joists below. A panel that gives comes out and is replaced; a soft joist, or a floor that sinks, is for a contractor first. Nothing goes over it while it is damp.',
      ],
    },
    clears: 'contractor fixed it',
  },
  asbestos: {
    why: 'Old resilient flooring, its backing and its glue may hold asbestos: nothing is sanded, sawed, scraped, drilled or torn out before a lab has cleared it.',
    call: LAB,
    note: 'Old tile, vinyl or glue may hold asbestos: don’t sand, scrape, drill or break it; test it, or leave it whole and covered.',
    answers: {
      '': [
        'Take it for asbestos until a lab says it isn’t.',
        'You can’t see it. Don’t sand, scrape, drill, saw, break or dry-sweep it; keep it whole, and have floor, backing and glue sampled. Sound and left alone, it is little danger.',
      ],
      cover: [
        'Yes, as a rule: sound old flooring may stay and be covered.',
        'Don’t sand, scrape, drill or nail into it; float the new floor over it, and write down that it is there. Loose, broken or crumbling pieces are tested and seen to first.',
      ],
      disturbed: [
        'Stop, leave the room, and keep everybody out of it.',
        'Don’t sweep or vacuum: a household vacuum spreads the fibers. Switch off heating and fans, close the door, leave dusty clothes there, wash, and have dust and floor tested. One short exposure is seldom harmful; let your doctor know.',
      ],
      remove: [
        'Not before a test: old resilient flooring and its glue may hold asbestos.',
        'Don’t scrape, sand, heat or break it. Have floor, backing and glue sampled; clear of all three, it may come out. Sound, it may also stay and be covered.',
      ],
    },
    clears: 'tested clear',
  },
  lead: {
    why: 'Old paint may hold lead: no dust is made of it before it is tested.',
    call: 'a certified lead inspector for a test; a lead-safe certified contractor for the work; your doctor for a child’s blood test',
    note: 'Paint from before 1978 may hold lead: test before you sand, pry or cut it, work wet, keep children away.',
    answers: {
      '': [
        'Test first: paint from before 1978 may hold lead, and its dust poisons children.',
        'Don’t dry-sand, dry-scrape or use a heat gun on it. Score it, mist it, pry it off whole on plastic, wipe up wet, vacuum with a HEPA vacuum; children and anybody pregnant stay away. Dust about already? Keep them out, and ask a doctor for a blood test.',
      ],
    },
    clears: 'tested negative for lead',
  },
  plumbing: {
    why: 'A pipe, duct or heating tube in the way: neither cut nor screw there before it was found along its whole way and moved or marked.',
    call: 'a licensed plumber or heating contractor',
    note: 'Pipes: find them along their whole way before you cut or screw.',
    answers: {
      '': [
        'Find the pipe along its whole way first; then cut and screw where it isn’t.',
        'Set the saw no deeper than the panel, keep screws short, and know where the main valve is.',
      ],
    },
    clears: 'plumber marked it',
  },
  'heated-floor': {
    why: 'A heated floor: a screw or a nail through a tube or a cable floods or kills it.',
    call: 'the installer, a licensed plumber or an electrician, to map tubes and cables',
    note: 'Heated floor: no nail, screw or cut before the tubes and cables are mapped.',
    answers: {
      '': [
        'No nails, screws or cuts until the tubes or cables are mapped.',
        `A thermal camera shows them while the heat comes on. Photos from when they went in help too. Float the floor instead, and keep the surface within what the plank’s maker allows (${byUnits('80–85 °F, 27–29 °C', '27–29 °C')}).`,
      ],
    },
    clears: 'tubes are mapped',
  },
  slab: {
    why: 'A post-tensioned slab: a cable that is cut whips out and kills.',
    call: 'an engineer or a scanning company to find the cables; the builder',
    note: 'Post-tensioned slab: no drilling, no anchors, no shot nails. Glue tracks and strips down.',
    answers: {
      '': [
        'Don’t drill, nail, chip or cut a post-tensioned slab.',
        'Its steel cables are under tension and can kill when they are hit. Glue transition tracks and tack strip down; where something must go in, the slab is scanned first.',
      ],
    },
    clears: 'slab was scanned by an engineer',
  },
  opening: {
    why: 'An open floor: somebody may fall through.',
    call: 'a licensed contractor, where more than a patch is open',
    note: 'Open floor: cover it with screwed-down plywood marked HOLE, or block the room, whenever you leave it.',
    answers: {
      '': [
        'Cover or block it whenever you leave, even for a minute.',
        `Plywood of ${byUnits('3/4 in', '18 mm')}, larger than the hole all around, screwed down and marked HOLE. Never step between joists, light the room, keep children and pets out, and put a rail at an open stair.`,
      ],
      stairs: [
        'Nobody uses stairs without treads or rail: block top and bottom whenever you stop.',
        'A screwed-on gate or a sheet of plywood that a child can’t push, at both ends; lights on. Take off one flight at a time, put the old treads back for the night, and screw up a temporary 2x4 rail. Children and pets sleep on the other floor.',
      ],
    },
    notes: { stairs: 'Treads or rail off: block both ends so that no child or pet gets there.' },
    clears: 'hole is covered',
  },
  moisture: {
    why: 'Too wet: nothing is laid before it reads dry.',
    call: 'a plumber or a waterproofing contractor, where it stays wet; the maker of the planks for its limit',
    note: 'Too wet: lay nothing before a new reading is within the limit on the planks’ own sheet.',
    answers: {
      '': [
        'Wait: nothing is laid on a floor that is too wet.',
        'Find and stop where the water comes from, dry the room with heat, air and a dehumidifier, and measure again in several places. The limit on the planks’ own sheet wins; a film under them doesn’t make a wet slab dry.',
      ],
    },
    clears: 'it reads dry now',
  },
  mold: {
    why: 'Mold: it is removed and its water stopped before anything goes over it.',
    call: `a professional for more than about ${byUnits('10 sq ft (1 m²)', '1 m²')}, after sewage, or with asthma or allergies in the house`,
    note: `Mold: stop its water, remove it and dry everything before anything goes over it; over about ${byUnits('10 sq ft', '1 m²')} is for a professional.`,
    answers: {
      '': [
        'Remove it, don’t cover it: stop the water, clean it off, dry, and only then lay a floor.',
        `Up to about ${byUnits('10 sq ft (1 m²)', '1 m²')}: gloves, N95 mask, goggles; scrub wood with detergent and water, throw out pad, carpet and drywall it has grown into, dry within 24–48 hours. Bleach doesn’t reach what has grown into wood. Soft wood is rot: have it looked at.`,
      ],
    },
    clears: 'mold was removed',
  },
  droppings: {
    why: 'Droppings carry disease when their dust is stirred up.',
    call: 'your health department or a pest professional, for more than a handful or for bats and birds',
    note: 'Droppings: never sweep or vacuum them dry; wet them with disinfectant, wait 5 minutes, wipe up with gloves on.',
    answers: {
      '': [
        'Don’t sweep or vacuum droppings: their dust carries disease.',
        'Air the room for 30 minutes, wear gloves and an N95 mask, soak them with disinfectant for 5 minutes, wipe up with paper towels, bag it, wash your hands. Then close the holes they came in by.',
      ],
    },
    clears: 'droppings are cleaned up',
  },
  silica: {
    why: 'Dust of concrete, mortar and tile holds silica, which scars lungs for good.',
    call: 'a contractor with a shrouded grinder and a HEPA vacuum, for more than a spot',
    note: 'Concrete, mortar and tile dust holds silica: never grind, cut or sweep it dry; shroud, HEPA vacuum, respirator.',
    answers: {
      '': [
        'Yes, it is dangerous: dust of concrete, mortar, grout, tile and leveler holds silica.',
        'Never grind, cut or sweep it dry. Wet it, or use a shroud with a HEPA vacuum; wear at least a fitted N95, better a half mask with P100 filters. Close the room off and its vents; mix powders outdoors or at an open window.',
      ],
    },
    clears: 'dust is gone',
  },
};

function wordsOf(hazard: string): HazardWords {
  const words = WORDS[hazard];
  if (!words) throw new Error(`no words for the hazard ${hazard}`);
  return words;
}

/** Throws for a hazard without text: a refusal must never be silent. */
export function stopText(hazard: string): { readonly why: string; readonly call: string } {
  const { why, call } = wordsOf(hazard);
  return { why, call };
}

/** Quotes the words that triggered it; `before` if they were typed earlier. */
export function noteText(hazard: string, words: string, before = false, about = ''): string {
  const { note, notes } = wordsOf(hazard);
  return `${before ? rememberedLine(words) : wroteText(words)} ${notes?.[about] ?? note}`;
}

export function hazardCaution(hazard: string): Caution {
  return { topic: hazard, text: wordsOf(hazard).note };
}

export function hazardAnswer(
  hazard: string,
  about: string | undefined,
): { readonly headline: string; readonly text: string; readonly call: string } {
  const { answers, call } = wordsOf(hazard);
  const [headline, text] = answers[about ?? ''] ?? answers[''] ?? ['', ''];
  return { headline, text, call };
}

function clearsText(hazard: string): string {
  return wordsOf(hazard).clears;
}

export function wroteText(words: string): string {
  return `You wrote “${quoted(words)}”.`;
}

export function clearsLine(hazard: string): string {
  return `Once that is so, write “${clearsText(hazard)}”, and ask again.`;
}

export function rememberedLine(words: string): string {
  return `You wrote earlier: “${quoted(words)}”.`;
}

export function clearedNote(words: string): string {
  return `“${quoted(words)}” is used as you gave it`;
}

export const HAZARD_WORDS = {
  leadToo:
    'Old paint and varnish may hold lead as well: children and anybody pregnant stay out until it is wiped up wet and tested; ask a doctor for a blood test of a child.',
  call: 'Who to call',
  emergency: 'This comes first',
  /** Asks which one a misspelled word is. */
  either: (typed: string, hazard: string, other: string): string =>
    `Is “${quoted(typed)}” ${hazard}, or ${other}? Type it again with that word.`,
  cleared: (words: string): string => `Good: “${quoted(words)}” is noted.`,
  clearedMore: 'Ask again for what you need.',
} as const;

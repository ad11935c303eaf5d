/** The words of the moisture answer. Figures come in already said. */

import { counted } from './floor.ts';

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
      `${worst} is over the limit of ${limit} long after the leak; open it up and look for mould`,
    over: (worst: string, limit: string) => `${worst} is over the limit of ${limit}; dry it and measure again`,
    apart: () => 'subfloor and flooring are too far apart in moisture',
    'too-few': (more: number, concrete: boolean) =>
      `${counted(more, concrete ? 'more test' : 'more reading')} wanted for this area`,
  },
  title: 'Readings',
  method: 'Method',
  methods: {
    wood: 'pin or pinless meter on wood, % moisture content',
    chloride: 'calcium chloride on concrete, lb per 1000 sq ft in 24 h',
    rh: 'probes in the slab, % RH',
    cement: 'carbide test on concrete or a cement screed, % CM',
    gypsum: 'carbide test on a calcium sulfate screed, % CM',
  },
  count: 'Readings',
  countOf: (told: number, required: number) => `${told} told, ${required} wanted`,
  range: 'From, to',
  limit: 'Limit',
  own: 'the maker’s own',
  stop: 'Too wet to wait for',
  plank: 'Your plank',
  plankOf: {
    chloride: 'many makers allow 5 lb: if yours does, tell it as limit',
    rh: 'many makers allow 85 % RH: if yours does, tell it as limit',
  },
  also: 'Also',
  flooring: 'Flooring',
  flooringOf: (moisture: string, most: string) => `${moisture}; the subfloor within ${most} points of it`,
  areaUntold: {
    wood: 'area not told: one reading is taken as enough; tell “area” to learn how many are wanted',
    concrete: 'area not told: taken as up to 1000 sq ft (93 m²), which wants three tests',
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
        'Click vinyl lets no vapor through: what is damp below stays damp. Over a crawl space, see that its ground is covered.',
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
      'Leave the opened cartons in the room at its usual heat and humidity, and measure boards and subfloor again every two days until they are close enough.',
    over: {
      wood: [
        'Heat and air: windows when it is drier outside, else a dehumidifier; take up pads and anything that covers the floor.',
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
      ? 'More than 48 hours have passed: look under pads, in corners and behind baseboards for mould.'
      : `Dry it within 24 to 48 hours: ${left} left.`,
    'Carpet pad is thrown away; wet gypsum board and insulation too.',
    'Mould over about 10 sq ft, or any sewage: a professional.',
  ],
  hours: (hours: number) => counted(hours, 'hour'),
  grey: 'Grey water carries germs: gloves and goggles, throw pads and carpet away, clean and disinfect the subfloor before it dries; many people have it done.',
} as const;

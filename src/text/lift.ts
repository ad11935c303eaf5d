/** The words of a lifting answer. Figures come in already said. */

export const LIFT = {
  ok: (weight: string, limit: string) => `${weight} is within the ${limit} recommended for this lift.`,
  over: (weight: string, limit: string, index: string) =>
    `${weight} is ${index} times the ${limit} recommended for this lift: split it, or lift with two.`,
  title: 'By the lifting equation',
  origin: 'Limit where the lift begins',
  destination: 'Limit where it ends',
  loose: 'not counted: the load is let go there without care',
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
    pushing: 'pushing, pulling and shovelling',
    rolls: 'rolls, which bend and shift',
    unstable: 'a load that shifts, such as a bucket or a slack bag',
    'two people': 'a lift by two people',
    footing: 'slippery footing',
    climate: 'heat or cold',
    sudden: 'throwing, catching or jerking',
  },
} as const;

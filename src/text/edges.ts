/** The words of an answer on floor edges: profiles, undercuts, stairs. Figures come in already said. */

import { counted } from './floor.ts';

const SINGULAR: Readonly<Record<string, string>> = {
  't-moulding': 'T-moulding',
  reducer: 'reducer',
  'end cap': 'end cap',
  nosing: 'stair nosing',
};

export function sayProfile(profile: string): string {
  return SINGULAR[profile] ?? profile;
}

export const EDGES = {
  headline: (
    counts: readonly (readonly [profile: string, edges: number])[],
    sticks: number,
    cost: string | undefined,
  ) =>
    `${counts.map(([profile, edges]) => counted(edges, sayProfile(profile))).join(', ')}: buy ${counted(sticks, 'length')}${cost === undefined ? '' : `, ${cost}`}.`,
  title: 'At each doorway',
  stairsTitle: 'At each step',
  trip: (limit: string) => `; a step of more than ${limit} is a trip: a ramped threshold in its place`,
  columns: ['Doorway', 'Profile', 'Length', 'Step to the floor beyond', 'Why'],
  level: 'level',
  up: (by: string) => `up ${by}`,
  down: (by: string) => `down ${by}`,
  why: {
    't-moulding': 'two floors of one height',
    reducer: 'slopes down to the lower floor',
    nosing: 'over the edge of the step',
    hard: 'closes the floor beside the higher one',
    carpet: 'closes the floor; the carpet is tucked against it',
    track: 'closes the floor short of the track, so that the door still runs',
  },
  buyTitle: 'What to buy',
  buy: (sticks: string, cost: string | undefined) => (cost === undefined ? sticks : `${sticks}, ${cost}`),
  undercut: 'Undercut jambs and casings at',
  undercutValue: (height: string, floor: string, clearance: string) =>
    `${height} over the subfloor: ${floor} floor and pad + ${clearance}`,
  riser: 'Steps',
  cutTitle: (profile: string) => `Cut: ${sayProfile(profile)}`,
  stepsTitle: 'How to fit it',
  steps: (trip: string) => [
    'Measure each doorway between the jambs before you cut: profiles run from jamb to jamb, or from stop to stop.',
    'Fix every track to the subfloor, never to or through the floating floor, and keep the floor’s gap beside it. Look for heating tubes and cables before a screw goes in.',
    'Undercut jambs and casings with a flush saw laid on a scrap of plank and pad. Cut the wall side too, so that the floor keeps its gap.',
    'A T-moulding sits in its track with the gap of both floors under its wings. A reducer or an end cap closes over the last plank’s gap.',
    `A step of more than ${trip} is a trip: take a ramped threshold.`,
  ],
  nosingSteps: ['Each step: nosing glued and screwed to the tread, with nothing floating on a stair.'],
} as const;

export function riserText(floor: string, limit: string, over: boolean): string {
  const much = over ? `, more than ${limit}` : '';
  return `A landing that gains ${floor} makes the last riser higher by as much${much} unless every tread gains the same. Risers must stay alike within ${limit} from the lowest to the highest: measure all of them first, without carpet, rugs or runners, and as they will be with the new floor.`;
}

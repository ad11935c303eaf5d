/** The stages of a job in the order in which they come up. */

export const STAGES = [
  'clear',
  'tear-out',
  'subfloor',
  'flat',
  'dry',
  'acclimate',
  'lay',
  'transitions',
  'baseboards',
  'caulk',
  'paint',
] as const;

export type Stage = (typeof STAGES)[number];

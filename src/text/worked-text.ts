/** Leads of handbook answers that were worked out from the message. */

export const WORKED = {
  jambs: (height: string, jamb: string, door: string) =>
    `Saw the jamb at ${jamb}: the floor is ${height} high. Cut the door to clear ${door}.`,
  angle: (corner: number, setting: number) =>
    `Set the saw to ${setting}° for a ${corner}° corner: 180° minus the corner, halved.`,
  stagger: (least: string, third: string) => `At least ${least}; a third of your plank is ${third}, which looks best.`,
  lastRow: (last: string, rows: number) => `Your last row is ${last} wide, in row ${rows}: wide enough to lay.`,
  bothRows: (last: string, both: string) =>
    `Rip the first and last row to ${both}: a whole first row leaves only ${last}.`,
  taper: (off: string, half: string) => `Taper the last row by ${off}, or split it: ${half} at each side.`,
  nosings: (count: number, sticks: number | undefined) =>
    sticks === undefined
      ? `${count} nosings for ${count} steps: one an edge, the top landing’s included.`
      : `${count} nosings for ${count} steps, cut from ${sticks} sticks.`,
  landlord: (years: number, least: number, most: number) =>
    years >= least
      ? `Mostly no: after ${years} years carpet is near or past the ${least} to ${most} years it lasts.`
      : `Perhaps in part: after ${years} years, carpet that lasts ${least} to ${most} still has some worth.`,
  gapEnough: (gap: string) => `Yes, ${gap} is enough for most click vinyl; your carton’s figure decides.`,
  gapSmall: (gap: string, least: string) => `No, ${gap} is tight: most click vinyl wants at least ${least}.`,
} as const;

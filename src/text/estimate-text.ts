/** The words of answers by area: estimates, whether what was bought is enough, and how large the rooms are. */

function boxes(count: number): string {
  return count === 1 ? '1 box' : `${count} boxes`;
}

export const ESTIMATE = {
  boxes: (count: number, area: string, share: string, money: string | undefined) =>
    `About ${boxes(count)} for ${area} with ${share} extra${money === undefined ? '.' : `: ${money}.`}`,
  area: (amount: string, metric: boolean, area: string, share: string, money: string | undefined) =>
    `About ${amount} ${metric ? 'm²' : 'sq ft'} to buy for ${area} with ${share} extra${money === undefined ? '.' : `: ${money}.`}`,
  range: (least: number, most: number) => `${least} with 5 % extra, ${most} with 15 %.`,
  tax: (net: string, tax: string) => `${net} before ${tax} sales tax.`,
  exact: (room: boolean, carton: boolean) =>
    room
      ? carton
        ? 'For an exact count, give the plank’s width and length.'
        : 'For boxes, say what one covers; for an exact count, the plank’s size too.'
      : carton
        ? 'For an exact count, give each room’s length and width and the plank’s size.'
        : 'For boxes, say what one covers.',
  assumedExtra: (share: string) => `Assuming ${share} extra for cuts and mistakes.`,
  whyTitle: 'Why this number',
  floor: 'Floor',
  withExtra: (share: string) => `With ${share} extra`,
  box: 'One box covers',
} as const;

export const ENOUGH = {
  yes: (have: string, area: string, over: string) => `Yes: ${have} for ${area} is ${over} extra.`,
  tight: (have: string, area: string, over: string) => `Barely: ${have} for ${area} is only ${over} extra.`,
  no: (have: string, area: string, short: string) => `No: ${have} for ${area} is ${short} short.`,
  none: (have: string, area: string) => `No: ${have} for ${area} leaves nothing for cuts.`,
  much: (have: string, area: string, over: string) =>
    `Yes, and more than you need: ${have} for ${area} is ${over} extra.`,
  usual: 'Plan on 5 % extra in a plain room, 15 % with many corners or on the diagonal.',
  left: (area: string) => `About ${area} left before cuts. Return unopened boxes, keep one for repairs.`,
  more: (count: number) => `Get ${boxes(count)} more, of the same lot.`,
  moreArea: (area: string) => `Get about ${area} more, of the same lot.`,
  exact: 'For an exact answer, give each room’s length and width and the plank’s size.',
} as const;

export const AREA_TEXT = {
  headline: (total: string, rooms: readonly string[]) =>
    rooms.length > 1 ? `${total} in all (${rooms.join(' + ')}).` : `${total}, wall to wall.`,
  next: 'Boxes take 5 to 15 % more for cuts: say what a box covers and I’ll count them.',
} as const;

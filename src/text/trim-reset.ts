/** The words of an answer on setting old boards again. Figures come in already said. */

import { counted } from './floor.ts';

export const RESET = {
  headline: (boards: number, broken: number, range: string) =>
    `${counted(boards, 'board')} to label and set again; ${broken === 0 ? 'none reckoned to break' : `reckon with ${broken} that break${broken === 1 ? 's' : ''}`} (${range}).`,
  range: (least: number, most: number) => (least === most ? String(least) : `${least} to ${most}`),
  moneyTitle: 'What each way costs',
  reset: 'Set the boards again',
  resetValue: (cost: string, broken: number) =>
    broken === 0
      ? 'nothing to buy while none breaks'
      : `${cost}: new stick for the ${counted(broken, 'longest board')}, in case those are the ones`,
  replace: 'Replace all of it',
  shoe: 'Leave the boards, shoe over the gap',
  sticks: (sticks: string, cost: string | undefined) => (cost === undefined ? sticks : `${cost}: ${sticks}`),
  noPrices: 'Tell “stock: 8 ft $7.98; 12 ft $12.48” and “shoe: 8 ft $3.98” to see it in money.',
  labelsTitle: 'Labels: write each on the back of its board and on the wall behind it',
  labelColumns: ['Label', 'Wall', 'Length', 'From the left'],
  mapTitle: 'Map: round each room to the right, from its door',
  map: (letter: string, room: string, labels: readonly string[]) => `${letter} = ${room}: ${labels.join(' → ')}`,
  stepsTitle: 'How to take them off',
  steps: [
    'House older than 1978 (elsewhere than about 1997): test the paint for lead before you pry.',
    'Score the caulk and paint along the top edge with a knife.',
    'Label first: the letter is the room, then the wall, then the place from the door. Photograph each wall with its labels.',
    'Pry at the studs with a thin bar against a scrap of wood, a little at each nail, back and forth along the board.',
    'Pull nails through from the back with pliers: the face does not chip.',
    'Set again in the order of the labels. A floor that is lower or higher than the old one leaves a line on the wall or a gap at the floor: shoe covers it.',
  ],
} as const;

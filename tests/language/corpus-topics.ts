/** Messages about other topics: sums of lengths, safety, sources, help, and what is not worked out here yet. */

import { about, type Message, sum } from './message.ts';

export const TOPICS: readonly Message[] = [
  sum('what is 12\'6" plus 3\'4 1/2"?', '190.5 in'),
  sum('what’s 12 ft 6 in minus 5/8 in', '149.375 in'),
  sum('3.8 m in feet', '3800 mm'),
  sum('convert 3.8 m to feet please', '3800 mm'),
  sum('how many feet is 3.8m?', '3800 mm'),
  sum("hey whats 12'6 in mm? thanks!", '150 in'),
  sum('how much is 3,80 m minus 15 mm', '3785 mm'),
  sum('half of 3.8 m', '1900 mm'),
  sum("what's half of 12'6\"", '75 in'),
  sum('14 ft divided by 3', '56 in'),
  sum('divide 14 feet by 3', '56 in'),
  sum("12' x 14'6\" in square feet?", '174 sq ft'),
  sum('what is 3 times 4\'2"', '150 in'),
  sum('subtract 5/8" from 12\'', '143.375 in'),
  sum("add 3' and 4'6\" and 2'", '114 in'),
  sum('was ist 3,80 m plus 45 cm', '4250 mm'),
  sum('how many mm in 12 inches', '12 in'),
  sum('1220mm to inches', '1220 mm'),
  sum("15' - 2 x 4'", '84 in'),
  sum('whats 1220 mm in inches??', '1220 mm'),

  about('trim', 'need baseboard for a 12 by 10 room with two 32in doors', {
    rooms: 'room 12 ft x 10 ft',
    options: { doors: '2 x 32in' },
  }),
  about('trim', 'how much skirting for 3.6 x 4.2m?', { rooms: 'room 3.6 m x 4.2 m' }),
  about('trim', 'how many sticks of quarter round do I need for my 10x12 bedroom', { rooms: 'bedroom 10 ft x 12 ft' }),
  about('trim', 'Sockelleisten für 3 x 4 m?', { rooms: 'room 3 m x 4 m' }),
  about('tear-out', 'how do I get rid of 12x14 of carpet', { rooms: 'room 12 ft x 14 ft' }),
  about('tear-out', 'how heavy is the old carpet from a 12x14 bedroom?', { rooms: 'bedroom 12 ft x 14 ft' }),
  about('squeaks', 'how do i fix a squeaky floor'),
  about('level', 'how many bags of self leveler do i need for a dip?'),
  about('moisture', 'is 14% moisture too high for the subfloor?'),
  about('patch', 'how do I patch a hole in the subfloor?'),
  about('finish', 'how much paint for the baseboards?'),
];

/** Messages in which a fact is missing or in doubt: the one fact that must be asked back, and what is read all the same. */

import { back, type Message } from './message.ts';

const ROOM = { rooms: 'room 12 ft x 14 ft' };

export const GAPS: readonly Message[] = [
  back('2,5 auf 3,2 m', 'plank', { rooms: 'room 2.5 m x 3.2 m', metric: true }),
  back('12x14', 'plank', ROOM),
  back('12 x 14?', 'plank', ROOM),
  back('bedroom 12x14', 'plank', { rooms: 'bedroom 12 ft x 14 ft' }),
  back('how many boxes for a 12x14 room?', 'plank', ROOM),
  back('how many boxes do I need for my bedroom?', 'room'),
  back('how much flooring do i need??', 'room'),
  back('living room is 4,2 x 5,1 m, wie viele Pakete', 'plank', { rooms: 'living room 4.2 m x 5.1 m', metric: true }),
  back('12x14 room with 7x48 planks', 'plank', { ...ROOM }),
  back('how many planks of 7 x 48 in, 10 per box', 'room', { plank: '7 in x 48 in', count: 10 }),
  back('planks are 6x36, 12 to a box. how many boxes?', 'room', { plank: '6 in x 36 in', count: 12 }),
  back('12x14 bedroom, boxes cover 23.33 sq ft', 'plank', { rooms: 'bedroom 12 ft x 14 ft' }),
  back('my room is 168 sq ft, planks 7x48, 10 per box', 'room', { plank: '7 in x 48 in', count: 10 }),
  back('how many boxes for 168 square feet?', 'room'),
  back('and with 10% waste?', 'room', { options: { mistakes: '10 %' } }),
  back('what about a 3/8 inch gap', 'room', { options: { gap: '0.375 in' } }),
  back('what if i go with the thirds pattern', 'room', { options: { pattern: 'thirds' } }),
  back('12x14 or 12x15, planks 6x48, 10 a box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('half of the room 12x14, planks 6x48, 10 a box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('12x14 not counting the closet, 6x48 planks, 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('everything except the bathroom, 12x14, 6x48 planks 10 a box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('bedroom 12x14, 6x48 planks, 10 per box, 27', 'ask', {
    rooms: 'bedroom 12 ft x 14 ft',
    plank: '6 in x 48 in',
    count: 10,
  }),
  back('12x14 room, 6x48 planks, 10 per box, 5%', 'ask', { ...ROOM, plank: '6 in x 48 in', count: 10 }),
  back('12x14 room, 6x48 planks or 7x48 planks, 10 per box', 'plank', ROOM),
  back('12x14, 6x48 planks, 10 per box, chevron', 'pattern', { ...ROOM, plank: '6 in x 48 in', count: 10 }),
  back('bedroom is 12 feet, 6x48 planks, 10 per box', 'room', { plank: '6 in x 48 in', count: 10 }),
  back('laminate for my hallway pls', 'room'),
  back('Quanto... sorry, how many packs for 3.5 x 4m', 'plank', { rooms: 'room 3.5 m x 4 m', metric: true }),
  back('how many cartons for hall 3x11 and bedroom 10x12', 'plank', {
    rooms: 'hall 3 ft x 11 ft; bedroom 10 ft x 12 ft',
  }),
  back('12x14 7x48 how many', 'plank', ROOM),
  back('room 12x14, plank 7x48, price $2.89', 'plank', ROOM),
  back('12x14 bedroom, 6x48 planks, 10 a box at $3', 'plank', { rooms: 'bedroom 12 ft x 14 ft' }),
];

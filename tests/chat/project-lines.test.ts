/** Everyday sentences about projects, rooms and settings become the line that does it; asks of other commands stay asks. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { projectLine } from '../../src/language/project-lines.ts';

const room = (name: string) => ({ name, text: '12 x 14 ft', notes: [], inScope: true });
const EMPTY = { rooms: [], picks: {} };
const ROOMS = { rooms: [room('bedroom'), room('living room')], picks: {} };
const FULL = { ...ROOMS, picks: { plank: '6 x 48 in, 10 per carton' } };

const lineOf = (said: string, project?: typeof FULL | typeof ROOMS | typeof EMPTY) =>
  projectLine(said, commands, DEFAULT_PREFERENCES, project);

describe('with or without a project', () => {
  it('marks round the whole sentence are nobody’s', () => {
    expect(lineOf('“start a project called Flat”')).toBe('project new Flat');
    expect(lineOf('"settings"')).toBe('project settings');
  });

  it.each([
    ['link my accounts', 'project link'],
    ['connect my slack account', 'project link'],
    ['link 7kq2-m9xa', 'project link 7kq2-m9xa'],
    ['use the code 7KQ2 M9XA', 'project link 7KQ2 M9XA'],
    ['unlink my discord account', 'project link remove discord'],
    ['which accounts are linked?', 'project link list'],
    ['settings', 'project settings'],
    ['project settings decimal comma, currency €', 'project settings decimal: comma, currency: €'],
    ['settings metric', 'project settings units: metric'],
    ['project settings mistakes 8% and spares 3', 'project settings mistakes: 8%, spares: 3'],
    ['project settings clear units', 'project settings units: clear'],
    ['settings rules: gap: 3/8 in', 'project settings rules: gap: 3/8 in'],
    ['set my currency to EUR', 'project settings currency: EUR'],
    ['please switch to metric units', 'project settings units: metric'],
    ['use decimal commas', 'project settings decimal: comma'],
    ['what changed?', 'project undo list'],
    ['delete all my data', 'project mydata do: forget'],
    ['delete project Upstairs flat', 'project delete Upstairs flat'],
    ['bring back my project', 'project restore'],
    ['rename the project to Top floor', 'project rename Top floor'],
    ['copy the project as Oak', 'project copy Oak'],
    ['use no project', 'project use none'],
    ['found', 'project found'],
    ['log', 'project log'],
    ['picks', 'project pick'],
    ['keep planks', 'project keep planks'],
    ['save trim list room: 12 x 14', 'project keep trim list room: 12 x 14'],
  ])('“%s”', (said, line) => {
    expect(lineOf(said)).toBe(line);
    expect(lineOf(said, FULL)).toBe(line);
  });

  it.each(['project settings units: metric, decimal: comma', 'project undo', 'project settings'])(
    '“%s” is read by its command as it is',
    (said) => expect(lineOf(said, FULL)).toBeUndefined(),
  );
});

describe('of a project in use', () => {
  it.each([
    ['remove the bedroom', 'project room remove bedroom'],
    ['rename bedroom to main bedroom', 'project room rename bedroom to main bedroom'],
    ['the bedroom is actually 12’ 3” x 15’', `project room bedroom, size: 12' 3” x 15'`],
    ['there is carpet in the living room', 'project room living room, floor: carpet'],
    ['room bedroom floor carpet', 'project room bedroom floor carpet'],
    ['spend $40 on glue', 'project spend $40 on glue'],
    ['pick gap 3/8', 'project pick gap 3/8'],
    ['bedroom is back in', 'project room bedroom in scope'],
    ['include the bedroom', 'project room bedroom in scope'],
    ['the bedroom has carpet', 'project room bedroom has carpet'],
    ['bedroom doors 30 in on wall 2', 'project room bedroom doors 30 in on wall 2'],
    ['add a closet', 'project room add closet'],
    ['the house was built in 1975', 'project pick built: 1975'],
    ['use herringbone', 'project pick pattern: herringbone'],
    ['baseboards are 12 ft at $12.48', 'project pick baseboard: 12 ft at $12.48'],
    ['we picked 7 x 48 in planks, 10 per carton', 'project pick plank: 7 x 48 in planks, 10 per carton'],
  ])('“%s”', (said, line) => {
    expect(lineOf(said, FULL)).toBe(line);
    expect(lineOf(said)).toBeUndefined();
  });

  it.each([
    'remove the kitchen',
    'the bedroom is 12 x 15 and the planks are 7 x 48',
    'pick up 3 boxes of planks for 12x14',
    'room 12x14, plank 6x48, 10 a box',
    'baseboard for bedroom 12x14',
    'tearout bedroom 12x14',
    'how many boxes for bedroom 12x14',
    '12x14',
  ])('“%s” is nothing told to it', (said) => {
    for (const project of [EMPTY, ROOMS, FULL]) expect(lineOf(said, project)).toBeUndefined();
  });

  it('rooms told alone are kept while there is no plank to work them out with', () => {
    const rooms = `hall 3'6" x 14'; living 14' x 12' with a bay 8' x 2' at 45°`;
    expect(lineOf(rooms, EMPTY)).toBe(`project room ${rooms}`);
    expect(lineOf('hall 3 x 14\nbedroom 12 x 15', ROOMS)).toBe('project room hall 3 x 14; bedroom 12 x 15');
    expect(lineOf('kitchen is 10 by 12', EMPTY)).toBe('project room kitchen 10 by 12');
    expect(lineOf('kitchen is 10 by 12', FULL)).toBeUndefined();
    expect(lineOf(rooms, FULL)).toBeUndefined();
    expect(lineOf(rooms)).toBeUndefined();
  });

  it('a plank told alone is kept while there are no rooms to work it out for', () => {
    const plank = '7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft';
    expect(lineOf(plank, EMPTY)).toBe(`project pick plank: ${plank}`);
    expect(lineOf(plank, ROOMS)).toBeUndefined();
  });
});

/** Everyday sentences about a job under way become the line that keeps it; questions stay questions. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseText } from '../../src/chat/grammar.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { jobLine } from '../../src/language/job-lines.ts';
import { hear, PROBABLE_SCORE } from '../../src/language/model.ts';
import { conversation, textOf } from '../project/conversation.ts';

describe('news of a job', () => {
  it.each([
    ['I bought 10 cartons at $32.50 lot B7', 'project shopping bought 10 cartons at $32.50 lot B7'],
    ["we've returned 2 cartons", 'project shopping returned 2 cartons'],
    ['not bought caulk', 'project shopping not bought caulk'],
    ['spent $84.20 on adhesive, insurer', 'project spend spent $84.20 on adhesive, insurer'],
    ['my budget is $2500', 'project spend budget is $2500'],
    ['note: plumber comes Friday', 'project log note: plumber comes Friday'],
    ['note found water stain by the bay', 'project log note found water stain by the bay'],
    ['we found a soft spot 2x3 ft in the bedroom', 'project found found a soft spot 2x3 ft in the bedroom'],
    ['done tear-out bedroom', 'project progress done tear-out bedroom'],
    ['acclimating everywhere since Friday 18:00', 'project progress acclimating everywhere since Friday 18:00'],
    ['the hall is not flat', 'project progress the hall is not flat'],
    ['Küche is dry', 'project progress Küche is dry'],
    ['my notes', 'project log'],
  ])('“%s”', (said, line) => expect(jobLine(said)).toBe(line));

  it.each([
    'how many boxes for 12x14, 7 inch by 4 foot planks, 23.33 a box?',
    'I bought 10 boxes, is that enough for 12x14?',
    'planks room: 12x14',
    'finish room: 12x14',
    'laid 7 rows, row 7 ended at 31 1/4, 22 planks left',
    '7 rows are laid',
    'note',
    'spent',
    'found',
  ])('“%s” is none', (said) => expect(jobLine(said)).toBeUndefined());
});

describe('a question about the job or the project', () => {
  it.each([
    ['what’s next?', 'project progress'],
    ['whats next', 'project progress'],
    ['how far are we?', 'project progress'],
    ['shopping list', 'project shopping'],
    ['what do I still need to buy?', 'project shopping'],
    ['how much have I spent so far?', 'project spend'],
    ['how much has it cost?', 'project spend'],
    ['spend', 'project spend'],
    ['my data', 'project mydata'],
    ['what do you know about me?', 'project mydata'],
    ['my projects', 'project list'],
    ['who can see my project?', 'project share'],
    ['what have I shared?', 'project share'],
    ['what is left to measure?', 'project measure'],
    ['show the open measurements', 'project measure'],
  ])('“%s” is heard as %s', (text, name) => {
    const heard = hear(text);
    expect(heard).toMatchObject({ kind: 'command', name });
    expect(heard.score).toBeGreaterThan(PROBABLE_SCORE);
    expect(jobLine(text)).toBeUndefined();
  });
});

it.each([
  ['list my projects', 'project list'],
  ['list your sources', 'sources'],
  ['list for the store please', 'project shopping'],
  ['list living room and bedroom', 'trim list'],
  ['list 12 x 14', 'trim list'],
  ['where does the gap come from?', 'sources'],
  ['what can you do?', 'help'],
  ['the cautions for lifting, dust and blades in one place', 'safety'],
])('“%s” is %s, whatever command its first word begins', (text, name) => {
  const holdings = { preferences: DEFAULT_PREFERENCES, project: undefined, named: undefined };
  const { parsed } = parseText({ commands, access: undefined, holdings }, text, 'line');
  expect(parsed.ok && fullName(parsed.command)).toBe(name);
});

it('a week on the job, in its own words', async () => {
  const talk = await conversation();
  await talk.reply('I bought 10 cartons at $62.50, lot B7');
  await talk.reply('spent $45 on a saw rental');
  await talk.reply('We found mould 4 x 5 ft in the living room.');
  await talk.reply('done clear everywhere');
  await talk.reply('Note that the plumber comes on Friday');
  const project = await talk.project();
  expect(project.shopping.bought).toMatchObject([{ lot: 'B7', cost: { cents: 62_500 } }]);
  expect(project.spend.entries).toMatchObject([{ cents: 4500, stage: 'tools' }]);
  expect(project.stages.marks).toHaveLength(4);
  expect(project.log).toMatchObject([{ text: 'the plumber comes on Friday' }]);
  expect(project.found).toMatchObject([{ room: 'living' }]);
  expect(textOf(await talk.reply('what have we found so far?'))).toMatch(/mold remediator/);
  expect(textOf(await talk.reply('what do we still need to buy?'))).toMatch(/cartons of 10 more, of lot B7/);
});

it('without a project such a sentence is answered as before', async () => {
  const talk = await conversation('none');
  expect(await talk.ask('spent $45 on a saw rental')).not.toHaveProperty('reference');
});

/** Asks of tear-out, lifting, plans and safety, mutated at random: none is a fault, none takes long, every fix of their own options is read, and no mutation opens a refused floor. */

import { expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import lift from '../../commands/prep/lift.ts';
import plan from '../../commands/prep/plan.ts';
import tearout from '../../commands/prep/tearout.ts';
import safety from '../../commands/safety.ts';
import { readOptions } from '../../src/chat/command.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { mutatedLines } from '../bench/mutate.ts';
import { answerTo, problemsOf } from '../chat/asked.ts';

const OWN = [tearout, lift, plan, safety];
const SEEDS = OWN.flatMap(({ examples }) => examples.map(({ ask }) => ask));
const REFUSED = [
  'tearout room: 12x14, floor: sheet vinyl, built: 1962, tested: no',
  'tearout room: 12x14, floor: lino, below: black mastic, built: 1950s',
  'plan room: 12x14, floor: asphalt tile, built: 1970',
];

/** Problems that the fix of another one leaves open: a fix mends its own option. */
function openAfter(fix: string, option: string): readonly string[] {
  const parsed = parseLine(fix, commands, DEFAULT_PREFERENCES);
  if (!parsed.ok) return [fix];
  const options = readOptions(parsed.command, parsed.optionTexts, DEFAULT_PREFERENCES);
  return options.ok ? [] : options.problems.filter((problem) => problem.option === option).map(({ got }) => got);
}

it('300 mutated lines are no faults, and every fix of an own option mends it', async () => {
  let problems = 0;
  for (const line of mutatedLines(31, 300, SEEDS)) {
    for (const { option, fix } of problemsOf(await answerTo(line))) {
      problems++;
      if (
        fix !== undefined &&
        option !== 'ask' &&
        option !== 'room' &&
        OWN.some(({ name, group }) => fix.startsWith(`${name} `) || fix.startsWith(`${group} ${name} `))
      )
        expect(openAfter(fix, option), JSON.stringify([line, fix])).toEqual([]);
    }
  }
  expect(problems).toBeGreaterThan(50);
});

it('400 mutations of a refused ask: answered only where the floor’s words, its year or its test are no longer told', async () => {
  let refused = 0;
  for (const line of mutatedLines(32, 400, REFUSED)) {
    const given = await answerTo(line);
    if ('why' in given) refused++;
    if (!('headline' in given) || !['tearout', 'plan'].includes(given.data.kind)) continue;
    const parsed = parseLine(line, commands, DEFAULT_PREFERENCES);
    const optionTexts = parsed.ok ? parsed.optionTexts : new Map<string, string>();
    const floor = optionTexts.get('floor') ?? 'carpet';
    const open =
      /^carpet$/i.test(floor) || Number(optionTexts.get('built') ?? 0) > 1989 || optionTexts.get('tested') === 'clear';
    expect(open, line).toBe(true);
  }
  expect(refused).toBeGreaterThan(50);
});

it('long words repeated are read or asked back at once', async () => {
  for (const word of ['boards ', 'tile ', 'underlay ', 'plank ', 'black glue ', '9 x ', '1 h ', ', ', 'two hands ']) {
    const long = word.repeat(Math.floor(3500 / word.length));
    for (const ask of [
      `tearout room: 12x14, floor: ${long}zz`,
      `tearout room: 12x14, below: ${long}zz`,
      `tearout room: 12x14, built: ${long}zz`,
      `tearout room: 12x14, doors: ${long}zz`,
      `tearout room: 12x14, trim: ${long}zz`,
      `tearout room: 12x14, vehicle: trailer ${long}zz`,
      `tearout room: 12x14, weight: 1 ${long}zz`,
      `lift 45 lb, way: ${long}zz`,
      `lift 45 lb ${long}zz`,
      `lift 45 lb, stretch: ${long}zz`,
      `lift 45 lb, often: ${long}zz`,
      `safety day: ${long}zz`,
      `safety day: ${long}at 90`,
    ])
      await answerTo(ask);
  }
});

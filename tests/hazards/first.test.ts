/** An emergency is answered first and alone: with no store, no turn left and any text around it; other hazards refuse, or add a line. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { isEmergency } from '../../src/chat/hazard-answers.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Ports, Request } from '../../src/chat/ports.ts';
import { inTurn } from '../../src/chat/rate-limit.ts';
import { screen } from '../../src/hazards/screen.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { Outage, type Store } from '../../src/storage/types.ts';
import { answersTo, answerTo, problemsOf } from '../chat/asked.ts';
import { cpuOf } from '../reading/cpu.ts';
import { sentencesIn } from './sentences.ts';

const down = (): Promise<never> => Promise.reject(new Outage('down'));

const STORE_DOWN: Store = {
  kept: { get: down, set: down, delete: down, claim: down },
  shelf: () => ({
    load: down,
    create: down,
    change: down,
    remove: down,
    ids: () => {
      throw new Outage('down');
    },
  }),
};

/** No store, and nobody may ask any more. */
const NOTHING_WORKS: Partial<Ports> = {
  store: STORE_DOWN,
  allowed: async () => ({ again: 60_000, everybody: false }),
};

const DISCORD = { platform: 'discord', id: '1' } as const;
const emergencies = sentencesIn('told.jsonl').filter(({ text }) => isEmergency(text));

function isAlone(given: readonly Answer[]): void {
  expect(given).toHaveLength(1);
  expect(given[0]).toMatchObject({ cautions: [], data: { kind: 'hazard', emergency: true } });
}

describe('an emergency', () => {
  it('is meant by many of the sentences', () => expect(emergencies.length).toBeGreaterThan(80));

  it.each(emergencies.map(({ text }) => [text]))('%s', async (text) => {
    isAlone(await answersTo(text, { asker: DISCORD, ports: NOTHING_WORKS }));
    isAlone(
      await answersTo(`${'We lay planks. '.repeat(334)}\n${text}\n${'Thanks. '.repeat(625)}`, { asker: DISCORD }),
    );
    isAlone(await answersTo(text, { asker: DISCORD, ports: NOTHING_WORKS, written: 'message' }));
  });

  it('says what to do in its first words, and the number', async () => {
    const given = await answerTo('i smell gas, how many boxes for 12x14?');
    expect(given).toMatchObject({
      why: expect.stringMatching(/^Leave now, touch no switch, and call from outside\. You wrote “i smell gas”\.$/),
      call: expect.stringMatching(/^your emergency number \(911, 112 …\).*“gas company checked it”/),
    });
  });

  it('has a line in the language it was told in', async () => {
    const given = await answerTo('huele a gas');
    expect('why' in given && given.why.split('\n')).toEqual([
      'Leave now, touch no switch, and call from outside. You wrote “huele a gas”.',
      'Salga ya, no toque ningún interruptor y llame desde fuera al número de emergencias (911, 112 …).',
    ]);
  });

  it('waits for no turn', async () => {
    const stuck = new Promise<never>(() => undefined);
    const slow = inTurn(
      async function* (request: Request) {
        if (request.text === 'slow') await stuck;
        yield* answer(request, commands, { fault: () => undefined });
      },
      () => stuck,
      ({ text }) => isEmergency(text),
    );
    const ask = (text: string) =>
      slow({ asker: DISCORD, preferences: DEFAULT_PREFERENCES, text })[Symbol.asyncIterator]();
    void ask('slow').next();
    void ask('slow').next();
    expect((await ask('i smell gas').next()).value).toMatchObject({ data: { emergency: true } });
  });

  it('is seen in a text of any length up to 20,000 characters, in little time', () => {
    for (const around of ['plank ', 'gas smel ', 'my hand ', 'old tile, ', 'xqz ', '9x9 ', '. ']) {
      const text = `${around.repeat(9950 / around.length)} the pipe burst, water everywhere ${around.repeat(9950 / around.length)}`;
      expect(isEmergency(text)).toBe(true);
    }
    for (const word of ['gas smell ', 'my hand cut ', 'no gas ', 'asbestozz ', 'a.', 'x']) {
      let run = 0;
      // Another text each time: what was just looked at is known.
      expect(cpuOf(() => screen(`${++run} ${word.repeat(8000 / word.length)}`))).toBeLessThan(50);
    }
  });
});

describe('what is no message', () => {
  it('is not screened: somebody’s own data brought back', async () => {
    const line = `project mydata import: ${JSON.stringify({ projects: [], note: 'i smell gas' })}`;
    expect(problemsOf(await answerTo(line))).not.toEqual([]);
  });
});

describe('work over a hazard is refused, with whom to call, what set it off and what clears it', () => {
  it.each([
    ['tearout room: 12x14, floor: carpet, built: 1995, below: sewage', 'sewage', /restorer/],
    ['tearout room: 12x14, floor: carpet, built: 1995, below: gas pipe', 'gas', /gas/],
    ['tearout room: 12x14, floor: carpet, built: 1995, below: rotten joists', 'structure', /engineer/],
    ['tearout room: 12x14, floor: sewage soaked carpet, built: 1995', 'sewage', /restorer/],
    ['tearout room: 12x14, floor: wet carpet from a toilet flood, built: 1995', 'sewage', /restorer/],
    ['tearout room: 12x14, floor: carpet, built: 1995, found: sewage', 'sewage', /restorer/],
    ['plan room: 12x14, floor: carpet, built: 1995, below: sewage', 'sewage', /restorer/],
    ['planks room: 12x14, plank: 6 x 48 in, 10 per carton, found: sewage', 'sewage', /restorer/],
    ['list room: 12x14, found: rotten joists', 'structure', /engineer/],
    ['edges doors: bath 30 in to tile, below: sewage', 'sewage', /restorer/],
    ['patch damage: 20 x 30 in, first-joist: 16 in, found: gas line', 'gas', /gas/],
    ['squeaks area: 4 x 6 ft, found: radiant heat tubes', 'plumbing', /plumber|heating/],
    ['raw sewage came up last week, how many boxes for 12x14, 7 x 48 in planks, 10 a box?', 'sewage', /restorer/],
  ])('%s', async (line, hazard, who) => {
    const given = await answerTo(line);
    expect(given).toMatchObject({ call: expect.stringMatching(who), data: { kind: 'hazard', hazard } });
    if (!('why' in given)) return;
    expect(`${given.why} ${given.call}`).toMatch(/You wrote “.+”/);
    expect(given.call).toMatch(/Once that is so, write “.+”/);
  });
});

describe('a question about a hazard is answered', () => {
  it.each([
    ['are these 9x9 tiles asbestos', 'asbestos'],
    ['can i cover asbestos tile with vinyl plank', 'asbestos'],
    ['i sanded the asbestos tile, what now', 'asbestos'],
    ['is my paint from 1972 dangerous to sand', 'lead'],
    ['black mold all over the subfloor', 'mold'],
    ['grinding concrete inside with no mask', 'silica'],
    ['mouse droppings under the carpet', 'droppings'],
    ['joist is cracked all the way through', 'structure'],
    ['can i screw into a post tension slab', 'slab'],
    ['oily rags in a pile in the garage', 'fumes'],
    ['can i use bleach on dog urine', 'cleaners'],
  ])('%s', async (text, hazard) => {
    const given = await answerTo(text);
    expect(given).toMatchObject({ data: { kind: 'hazard', hazard, emergency: false } });
    if (!('headline' in given)) throw new Error('no reply');
    const said = [given.headline, ...given.blocks.map((block) => JSON.stringify(block))].join(' ');
    expect(given.headline.length).toBeLessThan(121);
    expect(said).toMatch(/Who to call/);
  });
});

describe('a hazard that does not bear on the sum adds its line', () => {
  it.each([
    ['the house has lead paint, how many boxes for 12x14, 7 inch by 4 foot planks, 23.33 a box', /lead/],
    ['planks room: 12x14, plank: 6 x 48 in, 10 per carton, hazard: mold on the subfloor', /[Mm]old/],
  ])('%s', async (line, text) => {
    const given = await answerTo(line);
    if (!('headline' in given)) throw new Error(JSON.stringify(given));
    expect(given.blocks[0]).toMatchObject({ kind: 'text', text: expect.stringMatching(text) });
  });
});

describe('no line that is suggested drops what was typed of a hazard', () => {
  const hazards = [
    'lead paint on the trim',
    'mold on the drywall',
    'mouse droppings',
    'oily rags',
    'asbestos tile',
    'cracked joist',
  ];
  const requests = [
    'how many boxes for 12x14',
    'need baseboard for a 12 by 10 room',
    'planks room: ??, plank: 6 x 48 in',
    'plank 12x14, 6 x 48 in, 10 per carton',
    'planks room: 12x14, plank: 6 x 48 in, 10 per carton, patern: half',
    'planks room: 12x14, plank: big',
    'tape 5 +',
    'level readings: ??',
    'list room: 12 ft by what',
    'planks room: 12x14, plank: 6 x 48 in, 10 per carton',
    'edges doors: ??',
    'finish room: 12x14, walls: abc',
  ];
  it.each(requests.flatMap((one) => hazards.flatMap((hazard) => [[`${one}, ${hazard}`], [`${hazard}. ${one}`]])))(
    '%s',
    async (line) => {
      const typed = screen(line).sightings.map(({ hazard }) => hazard);
      expect(typed).not.toEqual([]);
      const given = await answerTo(line);
      const lines =
        'headline' in given ? given.actions.map(({ ask }) => ask) : problemsOf(given).flatMap(({ fix }) => fix ?? []);
      // Opening an entry of the handbook works nothing out.
      for (const one of lines.filter((each) => !each.startsWith('handbook entry: '))) {
        expect(
          screen(one).sightings.map(({ hazard }) => hazard),
          one,
        ).toEqual(expect.arrayContaining(typed));
        expect(parseLine(one, commands, DEFAULT_PREFERENCES).ok, one).toBe(true);
      }
    },
  );
});

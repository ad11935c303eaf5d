/** Judges how a message was read against how a person reads it, through the readers of the planks ask and the tape. */

import planks from '../../commands/floor/planks.ts';
import { readOptions } from '../../src/chat/command.ts';
import { readTape } from '../../src/input/parse-tape.ts';
import { DEFAULT_PREFERENCES, type ParsedPlank, type ParsedRooms, type Preferences } from '../../src/input/reading.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import type { SentenceReading } from '../../src/language/sentence.ts';
import { readSentence } from '../../src/language/sentence.ts';
import type { Message, Wanted } from './message.ts';

export const METRIC: Preferences = { units: 'metric', decimal: ',', currency: 'EUR' };

/** `right` as a person reads it, `asked` where an answer was possible and a question or nothing came, `wrong` an answer to another ask. */
export type Verdict = 'right' | 'asked' | 'wrong';

/** Exact sizes by the definitions of the units: 1 in = 25.4 mm, 1 ft = 12 in (NIST), 1 tick = 1/8128 in. */
const TICKS: Readonly<Record<string, number>> = { in: 8128, ft: 97_536, mm: 320, cm: 3200, m: 320_000 };

function length(text: string): number {
  const [figure = '', unit = ''] = text.trim().split(' ');
  return Math.round(Number(figure) * (TICKS[unit] ?? Number.NaN));
}

function area(text: string): number {
  const [figure = '', unit = ''] = text.trim().split(/ (?:sq )?/);
  return Number(figure) * (TICKS[unit.replace('2', '')] ?? Number.NaN) ** 2;
}

export function preferencesOf(message: Message): Preferences {
  return message.metric ? METRIC : DEFAULT_PREFERENCES;
}

/** The verdict on one message, and what speaks against it. */
export function judge(message: Message): {
  readonly verdict: Verdict;
  readonly flaws: readonly string[];
  readonly read: SentenceReading;
} {
  const preferences = preferencesOf(message);
  const read = readSentence(message.text, preferences);
  const flaws = flawsOf(read, message.wanted, preferences);
  const verdict = flaws.length === 0 ? 'right' : read.kind === 'ask' ? 'wrong' : 'asked';
  return { verdict, flaws, read };
}

function flawsOf(read: SentenceReading, wanted: Wanted, preferences: Preferences): string[] {
  if (read.kind === 'nothing') return wanted.topic === undefined ? [] : ['nothing was read'];
  if (wanted.topic !== read.topic) return [`topic ${read.topic}, not ${wanted.topic}`];
  const back = read.kind === 'ask-back' ? read.missing : undefined;
  if (back !== wanted.back) return [`asked back ${back}, not ${wanted.back}`];
  if (read.topic === 'tape')
    return wanted.comes === sumOf(read, wanted.comes, preferences)
      ? []
      : [`comes to ${sumOf(read, wanted.comes, preferences)}`];
  return [
    ...roomFlaws(read, wanted, preferences),
    ...(read.topic === 'planks' ? plankFlaws(read, wanted, preferences) : plainFlaws(read, wanted)),
  ];
}

type Said = Exclude<SentenceReading, { kind: 'nothing' }>;

function sumOf(read: Said, wanted: string | undefined, preferences: Preferences): string | undefined {
  const tape = readTape(
    read.optionTexts.get('sum') ?? '',
    { option: 'sum', preferences, note: () => undefined },
    preferences.units === 'metric' ? 'mm' : 'in',
  );
  if (!tape.ok || wanted === undefined) return undefined;
  const { value } = tape;
  const same =
    value.kind === 'number'
      ? value.value === Number(wanted)
      : value.kind === 'length'
        ? Math.abs(value.length - length(wanted)) < 1
        : Math.abs(Number(value.area) - area(wanted)) < 1;
  return same ? wanted : JSON.stringify(value, (_, one: unknown) => (typeof one === 'bigint' ? String(one) : one));
}

function roomFlaws({ optionTexts }: Said, { rooms }: Wanted, preferences: Preferences): string[] {
  const text = optionTexts.get('room');
  if (text === undefined || rooms === undefined)
    return (text === undefined) === (rooms === undefined) ? [] : [`room ${text}, not ${rooms}`];
  const reading = { option: 'room', preferences, note: () => undefined };
  const given = readRooms(text, reading);
  if (!given.ok) return [`room ${text} is not read`];
  const shown = (value: ParsedRooms) =>
    value.rooms.map(({ name, outline }) => `${name} ${outline.join(' ')}`).join('; ');
  if (rooms.startsWith('=')) {
    const same = readRooms(rooms.slice(1), reading);
    return same.ok && shown(same.value) === shown(given.value) ? [] : [`room ${text}, not ${rooms}`];
  }
  const expected = rooms.split(';').map((one) => {
    const parts = /^(.+?) ([\d.]+ [a-z]+) x ([\d.]+ [a-z]+)$/.exec(one.trim());
    const [x, y] = [length(parts?.[2] ?? ''), length(parts?.[3] ?? '')];
    return `${parts?.[1]} 0,0 ${x},0 ${x},${y} 0,${y}`;
  });
  return shown(given.value) === expected.join('; ')
    ? []
    : [`room ${text} = ${shown(given.value)}, not ${expected.join('; ')}`];
}

function plankFlaws({ optionTexts }: Said, wanted: Wanted, preferences: Preferences): string[] {
  const flaws: string[] = [];
  const text = optionTexts.get('plank');
  if ((text === undefined) !== (wanted.plank === undefined)) flaws.push(`plank ${text}, not ${wanted.plank}`);
  // Options that are missing are filled in, so that those told can be read.
  const whole = new Map([['room', '12 ft x 14 ft'], ['plank', '6 x 48 in, 10 per carton'], ...optionTexts]);
  const options = readOptions(planks, whole, preferences);
  if (!options.ok) return [...flaws, `not read: ${options.problems.map(({ expected }) => expected).join(' ')}`];
  const { plank, cartonArea, cartonPrice } = options.values.plank as ParsedPlank;
  const differs = (what: string, got: unknown, right: unknown) =>
    got === right ? [] : [`${what} ${got}, not ${right}`];
  if (text !== undefined && wanted.plank !== undefined) {
    const [width = '', long = ''] = wanted.plank.split(' x ');
    flaws.push(...differs('width', plank.width, length(width)), ...differs('length', plank.length, length(long)));
    if (wanted.count !== undefined) flaws.push(...differs('count', plank.perCarton, wanted.count));
    if (wanted.area !== undefined)
      flaws.push(...differs('area', Math.abs(Number(cartonArea) - area(wanted.area)) < 10_000, true));
    flaws.push(...differs('price', cartonPrice && `${cartonPrice.cents} ${cartonPrice.currency}`, wanted.price));
  }
  const others = [...optionTexts.keys()].filter((option) => option !== 'room' && option !== 'plank').sort();
  flaws.push(
    ...differs(
      'options',
      others.join(),
      Object.keys(wanted.options ?? {})
        .sort()
        .join(),
    ),
  );
  for (const [option, right] of Object.entries(wanted.options ?? {})) {
    const value = options.values[option];
    if (/%$/.test(right)) flaws.push(...differs(option, value, Math.round(Number.parseFloat(right) * 100)));
    else if (/^[\d.]+ [a-z]+$/.test(right)) flaws.push(...differs(option, value, length(right)));
    else if (option === 'spares') flaws.push(...differs(option, value, Number(right)));
    else flaws.push(...differs(option, optionTexts.get(option), right));
  }
  return flaws;
}

function plainFlaws({ optionTexts }: Said, wanted: Wanted): string[] {
  const given = Object.fromEntries([...optionTexts].filter(([option]) => option !== 'room'));
  const right = wanted.options ?? {};
  return JSON.stringify(given) === JSON.stringify(right)
    ? []
    : [`told ${JSON.stringify(given)}, not ${JSON.stringify(right)}`];
}

/** How many of some messages were read as a person would, and those given a wrong answer. */
export function tally(messages: readonly Message[]): { share: number; wrong: number; notes: readonly string[] } {
  const judged = messages.map((message) => ({ message, ...judge(message) }));
  const right = judged.filter(({ verdict }) => verdict === 'right').length;
  return {
    share: right / messages.length,
    wrong: judged.filter(({ verdict }) => verdict === 'wrong').length,
    notes: judged
      .filter(({ verdict }) => verdict !== 'right')
      .map(({ message, verdict, flaws }) => `${verdict}: ${message.text} — ${flaws.join('; ')}`),
  };
}

/** A message that goes on from the last request: the plank after the room, a correction, “what about”, an answer to a question. */

import { fullName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern, plainSigns } from '../input/rooms/room-text.ts';
import { type Measured, measured } from '../language/measured.ts';
import type { Command } from './command.ts';

/** The last request, as far as it was said; `open` is what was asked back. */
interface Before {
  readonly command: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly open?: string | undefined;
}

interface FollowUp {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  /** Units asked for from here on. */
  readonly units?: Preferences['units'];
}

const GOES_ON =
  /^(?:and|no|nope|sorry|actually|what about|how about|what if|make (?:it|that)|with|in|instead|or|but|also|ok(?:ay)?|then|use|change|turned?|plus|minus|less|only|just|i meant|should be|it'?s|its|how much (?:at|for|is that)|same)(?![a-z])/;
const METRIC =
  /(?<![a-z])(?:in )?(?:metric|meters|metres|centimeters|centimetres|cm|m2|square meters)(?: please)?[.!?]?$/;
const FEET = /(?<![a-z])in (?:feet|inches|imperial|feet and inches|square feet|us units)(?: please)?[.!?]?$/;
const TURNED =
  /(?<![a-z])(?:turn(?:ed)?(?: (?:it|them|the rows|the planks))?(?: (?:around|round|sideways))?|the other (?:way|direction)|other way|crosswise|90 degrees|perpendicular)(?![a-z])/;
/** Words after which a size is taken off. */
const OUT = /(?<![a-z])(?:cut|take|minus|less|without|missing|subtract|leave)(?![a-z])/;

/** The first two sides in a text. */
function pairIn(text: string): string | undefined {
  return pairPattern().exec(text)?.[0];
}

const OF_FLOORS = /^floor (?:planks|estimate|enough|area|layout)$/;
const ENOUGH_WORDS = /enough|too (?:many|much|few)|will .* do(?![a-z])|sufficient/;
const FEWEST_WORDS = 4;
const MOST_WORDS = 14;

/** The request that a follow-up makes of the last one; undefined where the message stands for itself. */
export function followUp(
  text: string,
  memory: Before,
  commands: readonly Command[],
  preferences: Preferences,
): FollowUp | undefined {
  const last = commands.find((command) => fullName(command) === memory.command);
  if (!last) return undefined;
  const given = measured(text, preferences);
  const plain = given.plain.toLowerCase().trim();
  const words = plain.split(/\s+/).length;
  const letters = plain.replace(/[\d'".,/$€£%x-]+/g, ' ').match(/[a-z]{3,}/g) ?? [];
  const onlyBox =
    (given.size ?? given.carton ?? given.price) !== undefined && given.room === undefined && given.areas.length === 0;
  const goesOn =
    GOES_ON.test(plain) ||
    letters.length < FEWEST_WORDS ||
    memory.open !== undefined ||
    ((onlyBox || (given.boxes !== undefined && ENOUGH_WORDS.test(plain))) && OF_FLOORS.test(memory.command));
  if (!goesOn || words > MOST_WORDS) return undefined;
  const texts = new Map(Object.entries(memory.texts));
  const units = METRIC.test(plain) ? 'metric' : FEET.test(plain) ? 'imperial' : undefined;
  const changed = merged(plain, given, memory, texts);
  if (changed === undefined && units === undefined) return undefined;
  const command = commands.find((one) => fullName(one) === (changed ?? memory.command)) ?? last;
  const known = Object.keys(command.options.shape);
  const news = [...texts].filter(([option, value]) => memory.texts[option] !== value);
  // What the last request has no place for is a request of its own.
  if (units === undefined && !news.some(([option]) => known.includes(option))) return undefined;
  return {
    command,
    optionTexts: new Map([...texts].filter(([option]) => known.includes(option))),
    assumed: given.assumed,
    ...(units === undefined ? {} : { units }),
  };
}

/** Puts what was said into the texts; the command that it is now for, or undefined where nothing fits. */
function merged(
  plain: string,
  given: Measured,
  { command, open }: Before,
  texts: Map<string, string>,
): string | undefined {
  const byArea = ['floor estimate', 'floor enough'].includes(command);
  const place = byArea ? 'area' : 'room';
  let found = false;
  let now = command;
  const set = (option: string, value: string): void => {
    texts.set(option, value);
    found = true;
  };
  const cut = OUT.exec(plain);
  const out = cut ? pairIn(plain.slice(cut.index)) : undefined;
  const before = texts.get(place);
  const room = given.room ?? (open === 'room' || open === 'area' ? given.doubtful : undefined);
  if (out !== undefined && before !== undefined) set(place, `${before} - ${out.trim()}`);
  else if (room !== undefined) {
    set(place, /^(?:and|also|plus)(?![a-z])/.test(plain) && before !== undefined ? `${before}; ${room}` : room);
  } else if (given.areas[0] !== undefined && (open === 'box' || isBox(given.areas[0], texts)))
    set('box', given.areas[0]);
  else if (given.areas[0] !== undefined && byArea)
    set(command === 'floor enough' && open === 'have' ? 'have' : 'area', given.areas[0]);
  else if (open === 'room' && pairIn(plain) !== undefined) set(place, pairIn(plain) ?? '');
  else if (byArea && !texts.has('box') && isBareBox(plain))
    set('box', `${BARE_BOX.exec(plain)?.[1]} ${/\d ?m/.test(before ?? '') ? 'm²' : 'sq ft'}`);
  else if (byArea && !found && BARE.test(plain)) set('area', `${BARE.exec(plain)?.[1]} sq ft`);
  const spacing = command === 'prep squeaks' ? SPACING.exec(plain)?.[1] : undefined;
  if (spacing !== undefined) set('spacing', `${spacing} in`);
  now = withPlank(given, now, texts, set);
  if (given.price !== undefined) {
    if (texts.has('plank')) set('plank', `${withoutPrice(texts.get('plank') ?? '')}, ${given.price}`);
    else set('price', given.price);
  }
  if (given.share !== undefined) set(now === 'floor estimate' ? 'extra' : 'mistakes', `${given.share} %`);
  if (given.boxes !== undefined && (command === 'floor enough' || open === 'have')) set('have', `${given.boxes} boxes`);
  const floor = texts.get('area') ?? texts.get('room');
  if (given.boxes !== undefined && floor !== undefined && now !== 'floor enough' && ENOUGH_WORDS.test(plain)) {
    texts.set('area', floor);
    set('have', `${given.boxes} boxes`);
    const plank = texts.get('plank');
    if (!texts.has('box') && plank !== undefined) texts.set('box', plank);
    return 'floor enough';
  }
  for (const [option, value] of given.layout) if (option !== 'mistakes') set(option, value);
  if (TURNED.test(plain)) set('direction', texts.get('direction') === 'short' ? 'long' : 'short');
  if (!found && open !== undefined && /\d/.test(plain) && !['room', 'area', 'box', 'have'].includes(open))
    set(open, plain);
  return found ? now : undefined;
}

/** An area that is too small for a floor, where what a box covers is still open. */
function isBox(area: string, texts: ReadonlyMap<string, string>): boolean {
  return texts.has('area') && !texts.has('box') && Number.parseFloat(area) < MOST_A_BOX;
}

const MOST_A_BOX = 45;

/** A bare number that corrects an area. */
const BARE = /^[^\d]{0,24}(?<![\d.,$])(\d{2,5})[^\d]{0,12}$/;
/** A number alone, where what a box covers is still open. */
const BARE_BOX = /^(?:about |its |it's |they are )?(\d{1,2}(?:[.,]\d{1,2})?)(?: each| a box)?[.!?]?$/;

function isBareBox(plain: string): boolean {
  const figure = Number(BARE_BOX.exec(plain)?.[1]?.replace(',', '.'));
  return figure >= 1 && figure <= MOST_A_BOX;
}

const SPACING = /(?<![\d.,])(12|16|19\.2|24)(?![\d.,]*\d)/;

/** A plank that was said, or what its box holds; with rooms known, the exact count takes the place of an estimate. */
function withPlank(
  { plank, size, carton }: Measured,
  command: string,
  texts: Map<string, string>,
  set: (option: string, value: string) => void,
): string {
  const area = texts.get('area') ?? '';
  const rooms = pairIn(plainSigns(area)) !== undefined;
  if (command === 'floor estimate' && rooms && plank !== undefined) {
    texts.set('room', area);
    set('plank', [plank, ...(texts.has('price') ? [texts.get('price')] : [])].join(', '));
    return 'floor planks';
  }
  if (command === 'floor estimate' && rooms && size !== undefined && texts.has('box')) {
    texts.set('room', area);
    set('plank', `${size}, ${texts.get('box')} per carton`);
    return 'floor planks';
  }
  const room = texts.get('room');
  // What a box covers is enough for an estimate where no plank was said.
  if (
    ['floor area', 'floor planks'].includes(command) &&
    room !== undefined &&
    plank === undefined &&
    carton !== undefined &&
    !texts.has('plank')
  ) {
    texts.set('area', room);
    set('box', carton);
    return 'floor estimate';
  }
  const before = texts.get('plank');
  if (plank !== undefined) set('plank', plank);
  else if (carton !== undefined && before !== undefined) set('plank', `${sizeOf(before)}, ${boxed(carton)}`);
  else if (carton !== undefined) set('box', carton);
  return command;
}

function boxed(carton: string): string {
  return /per (?:carton|box)/.test(carton) ? carton : `${carton} per carton`;
}

function sizeOf(plank: string): string {
  return plank.split(',')[0] ?? plank;
}

function withoutPrice(plank: string): string {
  return plank
    .split(/,\s*/)
    .filter((part) => !/[$€£]|usd|eur|gbp/i.test(part))
    .join(', ');
}

/** A message that goes on from the last request: the plank after the room, a correction, “what about”, an answer to a question. */

import { saysMetric, workedFrom } from '../handbook/worked.ts';
import { fullName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern, plainSigns } from '../input/rooms/room-text.ts';
import { stockedIn } from '../language/counted.ts';
import { type Measured, measured } from '../language/measured.ts';
import { READER } from '../text/reader-text.ts';
import { type Command, unitsOfRequest } from './command.ts';
import { type Before, OF_FLOORS, ownNews, pairIn } from './own-options.ts';

interface FollowUp {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  /** Units asked for from here on. */
  readonly units?: Preferences['units'];
}

const GOES_ON =
  /^(?:and|no|nope|sorry|oops|wait|hmm|actually|what about|how about|what if|make (?:it|that)|with|without|in|instead|or|but|also|ok(?:ay)?|then|use|change|turned?|plus|minus|less|only|just|i meant|should be|it'?s|they'?re|they only|that'?s|there'?s|theres|how much (?:at|for|is that|would (?:it|that))|same|now|times|divided|except|skip|drop|if|scratch|forget|never ?mind|nix|remove|leave|add|straight|normal|both|how many (?:boxes )?again|(?:we'?re|i'?m) not doing)(?![a-z])/;
/** What talk begins with before it says anything. */
const FILLER =
  /^(?:(?:oh|um+|uh+|ok(?:ay)?|so|hey|hi|well|right|alright|yeah|yep|hm+|great|cool|thanks|thank you|thx|good|perfect|nice|got it|i see|wait|and then|oops)(?:[,.!]+ ?| |$))+/;
const METRIC =
  /(?<![a-z])(?:in )?(?:metric|meters|metres|centimeters|centimetres|cm|m2|square meters)(?: please)?[.!?]?$/;
const FEET = /(?<![a-z])in (?:feet|inches|imperial|feet and inches|square feet|us units)(?: please)?[.!?]?$/;
const TURNED =
  /(?<![a-z])(?:turn(?:ed)?(?: (?:it|them|the rows|the planks))?(?: (?:around|round|sideways))?|the other (?:way|direction)|other way|crosswise|90 degrees|perpendicular)(?![a-z])/;
/** Back from the diagonal. */
const STRAIGHT = /(?<![a-z])(?:straight|not (?:on the )?diagonal(?:ly)?|normal|regular)(?![a-z])/;
/** Words after which a size is taken off. */
const OUT = /(?<![a-z])(?:cut|take|minus|less|without|missing|subtract|leave)(?![a-z])/;

const ENOUGH_WORDS =
  /enough|too (?:many|much|few)|will .* do(?![a-z])|sufficient|(?<![a-z])only (?:has|have|had|got|carries)/;
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
  const whole = given.plain.toLowerCase().trim();
  const lean = whole.replace(FILLER, '');
  const plain = lean === '' || (!GOES_ON.test(lean) && GOES_ON.test(whole)) ? whole : lean;
  const words = plain.split(/\s+/).length;
  if (words > MOST_WORDS) return undefined;
  if (memory.command === 'handbook') return entryGoesOn(text, plain, memory, last);
  const texts = new Map(Object.entries(memory.texts));
  const units = METRIC.test(plain) ? 'metric' : FEET.test(plain) ? 'imperial' : undefined;
  const lifted = atATime(plain, memory, commands);
  if (lifted) return lifted;
  const swapped = swap(plain, texts);
  const own = swapped ? undefined : ownNews(plain, given, memory, preferences, last);
  if (!swapped && !goesOn(plain, given, memory) && (own === undefined || (isAsking(plain) && !SAME_COUNT.test(plain))))
    return undefined;
  const task = alsoOf(plain, memory, commands) ?? edgeRows(whole, memory, commands);
  if (task) return task;
  const changed = swapped ? memory.command : merged(plain, given, { ...memory, own }, texts);
  if (changed === undefined && units === undefined) return undefined;
  const command = commands.find((one) => fullName(one) === (changed ?? memory.command)) ?? last;
  const known = Object.keys(command.options.shape);
  const news = [...texts].filter(([option, value]) => memory.texts[option] !== value);
  // What the last request has no place for is a request of its own.
  const restated = memory.command === 'floor enough' && given.share !== undefined;
  if (units === undefined && own === undefined && !restated && !news.some(([option]) => known.includes(option)))
    return undefined;
  // The units that an answer is said in say nothing of the country whose rules count.
  const isUs = units === 'metric' && unitsOfRequest(Object.values(memory.texts), preferences) === 'imperial';
  if (isUs && !texts.has('country')) texts.set('country', 'US');
  return {
    command,
    optionTexts: new Map([...texts].filter(([option]) => known.includes(option))),
    assumed:
      own?.get('doors')?.includes(READER.usualDoor) && !plain.includes('32')
        ? [...given.assumed, READER.doorsTaken]
        : given.assumed,
    ...(units === undefined ? {} : { units }),
  };
}

/** Boxes lifted at once. */
const AT_A_TIME =
  /(?<![\d.])(\d{1,2}) (?:boxes |cartons |bags |of them )?(?:at a time|at once|per trip|each trip|together)(?![a-z])/;

/** Whether several of the things that were carried one by one may be lifted together. */
function atATime(plain: string, { command, texts }: Before, commands: readonly Command[]): FollowUp | undefined {
  const lift = commands.find((one) => fullName(one) === 'prep lift');
  const [, one, unit] = /^([\d.]+) ?([a-z]+)/.exec((command === 'prep carry' ? texts.load : undefined) ?? '') ?? [];
  const times = AT_A_TIME.exec(plain)?.[1];
  if (!lift || times === undefined || one === undefined) return undefined;
  return { command: lift, optionTexts: new Map([['weight', `${Number(times) * Number(one)} ${unit}`]]), assumed: [] };
}

const ALSO =
  /^(?:(?:and|what about|how about|also|now|plus|then|with|do i need|how much|how many|what'?s|need|get|the|new|any|for|some|feet of|sticks of|about) )*(?<what>trim|base ?boards?|baseboard trim|mou?ldings?|quarter[- ]rounds?|shoe(?: mou?lding)?|tear[- ]?out|tearing (?:it )?out|old carpet|carpet removal|squeaks|nails(?: and caulk)?|caulk|paint)(?: (?:for|in|of|around|on|to) (?:it|that|this|them|the (?:same )?(?:room|rooms)|the same|there|both|go with it))?(?: too| as well| then| do i need| will i need| i need| needed)*[?.!]*$/;
const ALSO_COMMANDS: readonly (readonly [RegExp, string])[] = [
  [/trim|board|ld|round|shoe/, 'trim list'],
  [/tear|carpet/, 'prep tearout'],
  [/squeak/, 'prep squeaks'],
  [/nail|caulk|paint/, 'trim finish'],
];

const EDGE_ROW =
  /^(?:(?:and|so|ok|how wide(?: is| are| will)?|what(?: about|'s|s| is)?|how about|what will|will|does|is|are|the|width of|with) ){0,6}(?<which>last|first|final|end) (?:row|one|rip)(?: (?:be|come out|end up|is|width|size|too|then|narrow|same|look|there|the same|how wide)){0,6}[?.! ]*$/;

/** How wide the rows along the walls of the last floor are. */
function edgeRows(plain: string, { command, texts }: Before, commands: readonly Command[]): FollowUp | undefined {
  const { room, plank } = texts;
  const handbook = commands.find((one) => fullName(one) === 'handbook');
  if (command !== 'floor planks' || room === undefined || plank === undefined || !handbook || !EDGE_ROW.test(plain))
    return undefined;
  const said = `last row of a ${listOf(room)[0]} room, ${sizeOf(plank)} planks`;
  return {
    command: handbook,
    optionTexts: new Map([
      ['entry', 'last-row'],
      ['said', said],
    ]),
    assumed: [],
  };
}

/** Another task in the rooms that were just counted: “and trim for it?”. */
function alsoOf(plain: string, { command, texts }: Before, commands: readonly Command[]): FollowUp | undefined {
  const { what } = ALSO.exec(plain)?.groups ?? {};
  const rooms = [texts.room, texts.area].find((one) => one !== undefined && pairIn(plainSigns(one)) !== undefined);
  const supplies = what !== undefined && /nail|caulk|paint/.test(what) ? suppliesOf(command, texts) : undefined;
  const same = supplies && commands.find((one) => fullName(one) === command);
  if (same) return { command: same, optionTexts: new Map(Object.entries(supplies)), assumed: [] };
  if (what === undefined || rooms === undefined) return undefined;
  const name = ALSO_COMMANDS.find(([words]) => words.test(what))?.[1];
  const next = commands.find((one) => fullName(one) === name);
  if (!next || name === command) return undefined;
  const option = name === 'prep squeaks' ? 'area' : 'room';
  const kept = Object.entries(texts).filter(([key]) => ['doors', 'built'].includes(key) && key in next.options.shape);
  return { command: next, optionTexts: new Map([[option, rooms], ...kept]), assumed: [] };
}

/** Nails, caulk and paint for the same trim, which one answer gives together. */
function suppliesOf(command: string, texts: Before['texts']): Before['texts'] | undefined {
  if (command === 'trim finish') return texts;
  return command === 'trim run' ? { ...texts, list: 'supplies' } : undefined;
}

/** The units that a message asks for, and nothing else. */
export function unitsWanted(text: string): Preferences['units'] | undefined {
  const plain = text.toLowerCase().trim().replace(FILLER, '');
  if (/\d/.test(plain) || plain.split(/\s+/).length > MOST_UNIT_WORDS) return undefined;
  if (METRIC.test(plain) || /(?<![a-z])in (?:mm|millimet(?:er|re)s|cm|centimet(?:er|re)s)(?![a-z])/.test(plain))
    return 'metric';
  return FEET.test(plain) ? 'imperial' : undefined;
}

const MOST_UNIT_WORDS = 8;

/** The same count asked for something else: “how many bags then at 1/2 in”. */
const SAME_COUNT =
  /^(?:so |and |ok |then )*(?:how (?:many|much)|what|can i)(?: [a-z']+){0,4} (?:at|with|for|in|if|when|then|carry) /;

function isAsking(plain: string): boolean {
  return /\?|^(?:how|what|which|should|can|is|do|does|are|will|why|when|where)(?![a-z])/.test(plain);
}

function goesOn(plain: string, given: Measured, { command, open }: Before): boolean {
  const letters = plain.replace(/[\d'".,/$€£%x-]+/g, ' ').match(/[a-z]{3,}/g) ?? [];
  const onlyBox =
    (given.size ?? given.carton ?? given.price) !== undefined && given.room === undefined && given.areas.length === 0;
  return (
    GOES_ON.test(plain) ||
    TOO.test(plain) ||
    (given.room !== undefined && AGAIN.test(plain)) ||
    letters.length < FEWEST_WORDS ||
    open !== undefined ||
    (stockedIn(plain) !== undefined && OF_FLOORS.test(command)) ||
    ((onlyBox || (given.boxes !== undefined && ENOUGH_WORDS.test(plain))) && OF_FLOORS.test(command))
  );
}

const AGAIN = /(?<![a-z])(?:again|was it|did you say|were there)(?![a-z])/;

/** More figures for the answer that a handbook entry works out. */
function entryGoesOn(text: string, plain: string, { texts }: Before, command: Command): FollowUp | undefined {
  const { entry = '', said = '' } = texts;
  if (!/\d/.test(plain)) return undefined;
  const both = `${said} ${text}`.trim();
  const metric = saysMetric(both);
  const figure = BARE_FIGURE.exec(plain)?.[1];
  const [only, ...others] = said.match(FIGURE) ?? [];
  // One figure in the place of the one that was answered: “and 88?”.
  if (figure !== undefined && only !== undefined && others.length === 0) {
    const again = said.replace(only, figure);
    if (workedFrom(entry, again, metric) !== undefined)
      return { command, optionTexts: new Map(Object.entries({ ...texts, said: again })), assumed: [] };
  }
  // The later figures count where both messages have some.
  const fresh = workedFrom(entry, text, metric);
  if (fresh !== undefined && JSON.stringify(fresh) !== JSON.stringify(workedFrom(entry, said, metric)))
    return { command, optionTexts: new Map(Object.entries({ ...texts, said: text })), assumed: [] };
  const worked = JSON.stringify(workedFrom(entry, both, metric));
  if (worked === undefined || worked === JSON.stringify(workedFrom(entry, said, metric))) return undefined;
  return { command, optionTexts: new Map(Object.entries({ ...texts, said: both })), assumed: [] };
}

const BARE_FIGURE =
  /^(?:(?:and|or|what about|how about|if|what if|for|at|it'?s|is|mine is|no|actually|make it|the other is|the other one is)(?: |,|$) ?){0,4}(\d{1,3}(?:\.\d{1,2})?)(?: ?(?:degrees?|deg|°|"|in(?:ch(?:es)?)?))?[?.!]*$/;

const SWAPS = [
  /(?<![\d.,/])(?<now>\d[\d./]{0,8})(?: ?(?:"|'|[a-z]{1,6}\.?))?,? not (?<before>\d[\d./]{0,8})/,
  /not (?<before>\d[\d./]{0,8})(?: ?(?:"|'|[a-z]{1,6}\.?))?,? (?:but |it'?s |is )?(?<now>\d[\d./]{0,8})/,
  /(?<![\d.,/])(?<now>\d[\d./]{0,8})(?: ?(?:"|'|[a-z]{1,6}\.?))? instead of (?<before>\d[\d./]{0,8})/,
];
const FIGURE = /\d[\d.,/]*/g;

/** Puts one figure in the place of another that was said: “13, not 12”. */
function swap(plain: string, texts: Map<string, string>): boolean {
  for (const pattern of SWAPS) {
    const { now, before } = pattern.exec(plain)?.groups ?? {};
    if (now === undefined || before === undefined) continue;
    for (const [option, value] of texts) {
      const place = [...value.matchAll(FIGURE)].find(([figure]) => figure === before)?.index;
      if (place === undefined) continue;
      texts.set(option, `${value.slice(0, place)}${now}${value.slice(place + before.length)}`);
      return true;
    }
  }
  return false;
}

/** Puts what was said into the texts; the command that it is now for, or undefined where nothing fits. */
function merged(
  plain: string,
  given: Measured,
  { command, open, own }: Before & { readonly own: ReadonlyMap<string, string> | undefined },
  texts: Map<string, string>,
): string | undefined {
  if (own) {
    const before = texts.get('room');
    for (const [option, value] of own) texts.set(option, option === 'room' ? roomsWith(value, before, plain) : value);
    // What a whole delivery weighs is carried, and no longer one lift.
    return command === 'prep lift' && Number.parseFloat(own.get('weight') ?? '') > HEAVIEST_LIFT
      ? 'prep carry'
      : command;
  }
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
  const corrects = open === 'room' || open === 'area' || before !== undefined;
  const room = given.room ?? (corrects && given.size === undefined ? given.doubtful : undefined);
  const fewer = before === undefined ? undefined : roomsWithout(plain, before);
  if (out !== undefined && before !== undefined) set(place, `${before} - ${out.trim()}`);
  else if (fewer !== undefined) set(place, fewer);
  else if (room !== undefined) set(place, roomsWith(room, before, plain));
  else if (given.areas[0] !== undefined && (open === 'box' || isBox(given.areas[0], texts))) set('box', given.areas[0]);
  else if (given.areas[0] !== undefined && byArea)
    set(command === 'floor enough' && open === 'have' ? 'have' : 'area', given.areas[0]);
  else if (open === 'room' && pairIn(plain) !== undefined) set(place, pairIn(plain) ?? '');
  else if (!texts.has('box') && !texts.has('plank') && before !== undefined && isBareBox(plain)) {
    set('box', `${BARE_BOX.exec(plain)?.[1]} ${/\d ?m/.test(before) ? 'm²' : 'sq ft'}`);
  } else if (byArea && texts.has('extra') && SHARE_AGAIN.test(plain)) {
    set('extra', `${SHARE_AGAIN.exec(plain)?.[1]}%`);
  } else if (
    byArea &&
    !found &&
    !(stockedIn(plain) !== undefined) &&
    (given.share ?? given.price ?? given.boxes ?? given.carton) === undefined &&
    BARE.test(plain)
  ) {
    const count = command === 'floor enough' ? COUNT.exec(plain)?.[1] : undefined;
    const sided = before === undefined ? undefined : otherSide(before, BARE.exec(plain)?.[1] ?? '');
    if (sided !== undefined) set('area', sided);
    else if (count !== undefined) set('have', `${count} boxes`);
    else set('area', `${BARE.exec(plain)?.[1]} sq ft`);
  } else if (place === 'room' && before !== undefined && !found && BARE_SIDE.test(plain)) {
    const sided = otherSide(before, BARE_SIDE.exec(plain)?.[1] ?? '');
    if (sided !== undefined) set('room', sided);
  } else if (command === 'floor enough' && COUNT.test(plain)) set('have', `${COUNT.exec(plain)?.[1]} boxes`);
  now = withPlank(given, now, texts, set);
  if (given.price !== undefined) {
    if (texts.has('plank')) set('plank', `${withoutPrice(texts.get('plank') ?? '')}, ${given.price}`);
    else set('price', given.price);
  }
  if (given.share !== undefined && now === 'floor enough') found = true;
  else if (given.share !== undefined) set(now === 'floor estimate' ? 'extra' : 'mistakes', `${given.share}%`);
  else if (now === 'floor estimate' && given.layout.get('direction') === 'diagonal') set('extra', READER.diagonalExtra);
  const stocked = stockedIn(plain) ?? given.boxes;
  if (given.boxes !== undefined && (command === 'floor enough' || open === 'have')) set('have', `${given.boxes} boxes`);
  const floor = texts.get('area') ?? texts.get('room');
  const enough = ENOUGH_WORDS.test(plain) || stockedIn(plain) !== undefined;
  if (
    stocked !== undefined &&
    floor !== undefined &&
    (now !== 'floor enough' || stockedIn(plain) !== undefined) &&
    enough
  ) {
    texts.set('area', floor);
    set('have', `${stocked} boxes`);
    const plank = texts.get('plank');
    if (!texts.has('box') && plank !== undefined) texts.set('box', plank);
    return 'floor enough';
  }
  if (NO_EXTRA.test(plain)) set(now === 'floor estimate' ? 'extra' : 'mistakes', now === 'floor estimate' ? '0%' : '0');
  for (const [option, value] of given.layout) if (option !== 'mistakes') set(option, value);
  if (byArea && STRAIGHT.test(plain) && (texts.get('extra') ?? READER.diagonalExtra) === READER.diagonalExtra)
    set('extra', READER.usualExtra);
  if (STRAIGHT.test(plain) && texts.get('direction') === 'diagonal') set('direction', 'long');
  if (TURNED.test(plain)) set('direction', texts.get('direction') === 'short' ? 'long' : 'short');
  if (!found && open !== undefined && /\d/.test(plain) && !['room', 'area', 'box', 'have', 'plank'].includes(open))
    set(open, plain);
  // Without a plank, boxes are counted by area, as they would be for the whole request.
  const rooms = texts.get('room');
  if (found && now === 'floor planks' && rooms !== undefined && !texts.has('plank')) {
    texts.set('area', rooms);
    return 'floor estimate';
  }
  return found ? now : undefined;
}

const NO_EXTRA =
  /^(?:(?:and|with|what about|what if|ok|but) )*(?:no|without|zero|0) (?:any )?(?:extra|waste|overage|spares?|allowance)[?.!]*$/;

/** Another figure after a share was changed: “and 15”. */
const SHARE_AGAIN = /^(?:and|or|what about|how about|what if)(?: only| at| with| it'?s)? (\d{1,2})[.!?]*$/;

const HEAVIEST_LIFT = 150;

/** A count of boxes without the word. */
const COUNT =
  /(?:get|got|buy|bought|have|order|take|with|make (?:it|that)|only) (?:only |just )?(\d{1,3})(?: instead| more)?[.!?]*$/;
const PLUS = /^(?:and|also|plus|add|then|as well as|oh and|don'?t forget)(?![a-z])/;
const TOO =
  /(?<![a-z])(?:too|as well|also)(?=[?,.] |$)|(?<![a-z])(?:too|as well|also)(?:,? ?\d[^a-z]*(?:x[^a-z]*)?(?:[a-z]{1,6})?)?[.!?]*$/;

/** The name of a room with its size behind it. */
function nameOf(room: string): string {
  const size = pairPattern().exec(room)?.index ?? room.length;
  return room
    .slice(0, size)
    .replace(/^(?:the|my) /i, '')
    .replace(':', ' ')
    .trim()
    .toLowerCase();
}

function listOf(rooms: string): readonly string[] {
  return rooms.split(/;\s*/).filter((room) => room.trim() !== '');
}

/** The rooms of the request with those of a follow-up: added, corrected by name, or in the place of all. */
function roomsWith(rooms: string, before: string | undefined, plain: string): string {
  if (before === undefined) return rooms;
  const told = listOf(rooms).map((room) => withUnit(room, before));
  const known = listOf(before);
  const names = known.map(nameOf);
  const corrected = told.every((room) => nameOf(room) !== '' && names.includes(nameOf(room)));
  if (corrected) return known.map((room) => told.find((one) => nameOf(one) === nameOf(room)) ?? room).join('; ');
  return PLUS.test(plain) || TOO.test(plain) ? [...known, ...told].join('; ') : told.join('; ');
}

const UNIT = /\d ?(mm|cm|m|in(?:ch(?:es|s)?)?|ft|feet)(?![a-z\d])/;

/** A size without a unit is in that of the rooms before it. */
function withUnit(room: string, before: string): string {
  const unit = UNIT.exec(before)?.[1];
  return unit === undefined || /\d ?(?:[a-wyz'"]|x[a-z])/.test(room.slice(nameOf(room).length))
    ? room
    : `${room} ${unit}`;
}

const FEWER =
  /(?<![a-z])(?:without|except|minus|less|drop|skip|forget(?: about)?|leave (?:out|off)|take (?:out|off)|not(?: doing)?|no|scratch|never ?mind|nix|remove|exclude|excluding) (?:the |my )?([a-z][a-z0-9' ]{1,30}?)(?: then| now| after all| anymore| for now| please)?[.!?]*$/;
const ONLY =
  /^(?:just|only|what about just|how about just|what about only)(?: do| for| doing)? (?:the |my )?([a-z][a-z0-9' ]{1,30}?)(?: then| now| for now| please| first)?[.!?]*$/;

/** The rooms without one that is left out by its name; undefined where none is. */
function roomsWithout(plain: string, before: string): string | undefined {
  const name = FEWER.exec(plain)?.[1];
  const known = listOf(before);
  const only = ONLY.exec(plain)?.[1];
  const kept = only === undefined ? [] : known.filter((room) => nameOf(room) === only);
  if (kept.length > 0) return kept.length < known.length ? kept.join('; ') : undefined;
  const left = known.filter((room) => nameOf(room) !== name);
  return left.length > 0 && left.length < known.length ? left.join('; ') : undefined;
}

/** An area that is too small for a floor, where what a box covers is still open. */
function isBox(area: string, texts: ReadonlyMap<string, string>): boolean {
  return texts.has('area') && !texts.has('box') && Number.parseFloat(area) < MOST_A_BOX;
}

const MOST_A_BOX = 45;

/** A bare number that corrects an area. */
const BARE = /^[^\d]{0,24}(?<![\d.,$])(\d{2,5})[^\d]{0,12}$/;
/** “no, 13”: one side of a room, said anew. */
const BARE_SIDE =
  /^(?:no|nope|sorry|actually|wait|i meant|i mean|make (?:it|that)|should be|it'?s)(?: actually| sorry)?,? (?:it'?s |is |that'?s )?(\d{1,2}(?:\.\d{1,2})?)(?: ?(?:'|ft|feet|foot))?[.!]*$/;
const ONE_ROOM =
  /^([^;\d]*)(\d{1,2}(?:\.\d{1,2})?)( ?(?:'|ft|feet|foot)? ?(?:x|by|×) ?)(\d{1,2}(?:\.\d{1,2})?)( ?(?:'|ft|feet|foot)?)$/;
const MOST_A_SIDE = 60;
const FARTHEST = 4;

/** A room of two sides with the nearer one changed; undefined where that isn't plain. */
function otherSide(room: string, figure: string): string | undefined {
  const [, name = '', one = '', by = '', other = '', unit = ''] = ONE_ROOM.exec(room.trim()) ?? [];
  const [now, first, second] = [Number(figure), Number(one), Number(other)];
  if (one === '' || figure === '' || now > MOST_A_SIDE) return undefined;
  const [near, far] = [Math.abs(now - first), Math.abs(now - second)];
  if (near === far || Math.min(near, far) > FARTHEST) return undefined;
  return near < far ? `${name}${figure}${by}${other}${unit}` : `${name}${one}${by}${figure}${unit}`;
}

/** A number alone, where what a box covers is still open. */
const BARE_BOX = /^(?:about |its |it's |they are )?(\d{1,2}(?:[.,]\d{1,2})?)(?: each| a box)?[.!?]?$/;

function isBareBox(plain: string): boolean {
  const figure = Number(BARE_BOX.exec(plain)?.[1]?.replace(',', '.'));
  return figure >= 1 && figure <= MOST_A_BOX;
}

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

/** A message that goes on from what was said before it, made whole: figures said back, pieces of a plank, a question about an answer. */

import { fullName, isCalculating, optionsOf } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { pairPattern } from '../input/rooms/room-text.ts';
import { measured } from '../language/measured.ts';
import { ASK_FOR, READER } from '../text/reader-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { sectionNamed } from './brief.ts';
import type { Command, Understood } from './command.ts';
import type { ParsedCommand } from './command-line.ts';
import { ASIDES, type ConversationMemory, lastOf } from './conversation.ts';
import type { Reader, TextParsed } from './grammar.ts';
import { figuresTalk } from './last-figures.ts';
import { namedOptions } from './own-options.ts';
import { piecesIn, plankKnown, roomKnown, rowEnds, saidOnly } from './said-before.ts';

/** More than this is a sentence of its own. */
const LONGEST_FEW = 40;

/** The last answer once more: “ok and the boxes again?”, “what was the number?”. */
const AGAIN =
  /^(?!.*\d)(?!.*\b(?:start|begin|over|try|do it|redo)\b)(?:[a-z',.]+ ){0,8}?(?:(?:again|once more)[?!.]*$|(?:what was|remind me(?: of)?|repeat) (?:that|it|the (?:number|count|answer|total|figure|boxes|amount))\b[a-z ]{0,30}[?!.]*$)/i;

/** A text that goes on from the last request, made whole with it: a section to open, or what a follow-up changes. */
export async function goingOn(
  text: string,
  memory: ConversationMemory,
  reader: Reader,
): Promise<TextParsed | undefined> {
  const { commands, access, holdings } = reader;
  const named = withNamed(text, lastOf(memory) ?? memory, memory, commands, holdings.preferences);
  if (named) return named;
  const home =
    holdings.project && ALL_ROOMS.test(text.trim()) ? wholeHome(lastOf(memory) ?? memory, memory, commands) : undefined;
  if (home) return home;
  const section = sectionNamed(text) ?? (await sectionMeant(text));
  if (section === 'why' && memory.command === 'handbook') {
    return sameAgain({ ...memory, texts: { ...memory.texts, reason: 'yes' } }, memory, commands);
  }
  if (section) {
    const again = memory.open === undefined ? sameAgain(memory, memory, commands) : undefined;
    return again && { ...again, sentence: undefined };
  }
  if (AGAIN.test(text.trim())) {
    const again = sameAgain(lastOf(memory) ?? memory, memory, commands);
    if (again) return again;
  }
  const last = lastOf(memory) ?? memory;
  if (AGAIN_OF.test(text) && sameSides(text, last.texts.room ?? last.texts.area))
    return sameAgain(last, memory, commands);
  if (SHORTER.test(text.trim()) && memory.open === undefined) {
    const again = sameAgain(memory, memory, commands);
    if (again) return { ...again, short: true };
  }
  const [{ commandTyped, parseText, projectLineFor }, { HOW_TO }] = await Promise.all([
    import('./grammar.ts'),
    import('./sentences.ts'),
  ]);
  const typed = commandTyped(text, commands);
  if (typed && !isAboutFloor(text, typed, holdings.preferences)) return undefined;
  // A statement about a project's room changes the project, whatever was asked before it.
  const ofAnswer = !memory.project && CORRECTS_IT.test(text) && (last.texts.room ?? last.texts.area) !== undefined;
  const line = access && !ofAnswer ? projectLineFor(text, commands, holdings) : undefined;
  if (line !== undefined)
    return line.startsWith('project ') || holdings.project?.picks.plank !== undefined
      ? undefined
      : boxLent(parseText(reader, text, undefined), memory, holdings.preferences);
  const ends = rowEnds(text, memory, commands, holdings);
  if (ends) return { said: undefined, units: memory.units, ...ends };
  const [{ followUp, unitsWanted }, { correctionIn, isComplaint }] = await Promise.all([
    import('./follow-up.ts'),
    import('./wrong.ts'),
  ]);
  const { earlier } = memory;
  const ahead = NEXT.test(text.trim()) && !holdings.project ? planOf(memory, commands) : undefined;
  if (ahead) return ahead;
  const parse = (whole: string): TextParsed => parseText(reader, whole, undefined);
  const units = memory.command === 'handbook' ? unitsWanted(text) : undefined;
  if (units) return { ...sameAgain(memory, memory, commands), units } as TextParsed;
  if (NO_BOX.test(text.trim()) && !/\d/.test(text)) {
    const again = sameAgain(lastOf(memory) ?? memory, memory, commands);
    if (again && /^floor (?:estimate|area)$/.test((lastOf(memory) ?? memory).command)) return again;
  }
  const unsure = UNSURE.test(text.trim()) && memory.open !== undefined ? withoutIt(memory, commands) : undefined;
  if (unsure) return unsure;
  const pieced = readInTime(
    () =>
      reckoned(text, memory, commands, holdings.preferences) ??
      piecesTogether(text, memory, commands, holdings) ??
      answering(text, memory, parse),
    () => undefined,
  );
  if (pieced) return pieced;
  const next = readInTime(
    () => {
      const said = correctionIn(text);
      const onLast = followUp(said, memory, commands, holdings.preferences);
      return onLast ?? (earlier && followUp(said, earlier, commands, holdings.preferences));
    },
    () => undefined,
  );
  if (next) {
    const { units: wanted = memory.units, ...parsed } = next;
    const whole = withPlankKnown({ ok: true, ...parsed }, text, memory, commands, holdings);
    return { said: undefined, parsed: whole, sentence: memory.said, units: wanted };
  }
  const { command, texts: told, said = '' } = memory;
  if (isComplaint(text)) return questioned({ command, told, said }, commands, holdings.preferences);
  // What a project fills in isn't said again in a conversation about it.
  if (holdings.project?.picks.plank !== undefined) return undefined;
  if (holdings.project) return plankLent(parse, text, memory, holdings.preferences);
  const about =
    aboutRoom(text, memory, parse) ??
    aboutRule(text, memory, parse, {
      commands,
      entry: memory.command === 'floor enough' ? 'same-lot' : HOW_TO[memory.command],
    });
  if (about) return about;
  const alone = parse(text);
  const lent = { ...memory.known, ...earlier?.texts, ...told };
  if (alone.said !== undefined || alone.sentence === undefined) return undefined;
  return withSaidBefore(alone, lent, commands) ?? boxLent(alone, memory, holdings.preferences);
}

const ALL_ROOMS =
  /^(?:(?:and|ok|so|now|what about|how about|for|do),? ){0,4}(?:all (?:the |of the |of my |my |our )?rooms|everything|the whole (?:house|home|floor|place|project|thing)|all of (?:it|them))(?: together| too)?[?.!]*$/i;

/** The last request for all rooms of the project. */
function wholeHome(
  { command, texts, said }: Pick<ConversationMemory, 'command' | 'texts' | 'said'>,
  memory: ConversationMemory,
  commands: readonly Command[],
): TextParsed | undefined {
  const { room, area, ...others } = texts;
  return (room ?? area) === undefined ? undefined : sameAgain({ command, texts: others, said }, memory, commands);
}

/** A size that corrects whatever was spoken of last. */
const CORRECTS_IT =
  /^(?:(?:no|nope|actually|sorry|wait|oops|i meant),? ){0,3}(?:(?:it|that|this|the room)(?:'s|’s| is| was)? |its |make (?:it|that) |should be |it should be )?(?:actually |really )?\d/i;

/** The last request with options that are said by their names. */
function withNamed(
  text: string,
  { command: name, texts, said }: Pick<ConversationMemory, 'command' | 'texts' | 'said'>,
  { units }: ConversationMemory,
  commands: readonly Command[],
  preferences: Preferences,
): TextParsed | undefined {
  const command = commands.find((one) => fullName(one) === name);
  if (!command || !isCalculating(command)) return undefined;
  const named = readInTime(
    () => namedOptions(text, command, preferences),
    () => undefined,
  );
  if (!named) return undefined;
  const optionTexts = new Map([...Object.entries(texts), ...named]);
  return { said: undefined, parsed: { ok: true, command, optionTexts }, sentence: said, units };
}

/** “How many again of the 12x14”. */
const AGAIN_OF = /(?<![a-z])(?:again|was it|were there|did you say)(?![a-z])/i;

function sameSides(text: string, room: string | undefined): boolean {
  const sides = (said: string): string => (pairPattern().exec(said)?.[0] ?? '').replace(/[^\d.]+/g, ' ').trim();
  return room !== undefined && sides(text) !== '' && sides(text) === sides(room);
}

const NEXT =
  /^(?:(?:ok|so|and|now|thanks|great|then|alright),? )*(?:what(?:'s| is|s)? (?:do (?:i|we) do )?(?:next|first|now)|what (?:do|should) (?:i|we) do (?:next|first|now)|now what|where do i start|what comes next|what order)(?: then)?[?.! ]*$/i;

/** The order of the work in the room that was spoken of. */
function planOf(
  { known = {}, command: last }: ConversationMemory,
  commands: readonly Command[],
): TextParsed | undefined {
  const room = roomKnown(known);
  const command = commands.find((one) => fullName(one) === 'prep plan');
  if (room === undefined || !command || !/^(?:floor|tally|trim)/.test(last)) return undefined;
  return {
    said: undefined,
    parsed: { ok: true, command, optionTexts: new Map([['room', room]]), assumed: [READER.before(room)] },
  };
}

/** The request of a conversation once more. */
function sameAgain(
  { command: name, texts, said }: Pick<ConversationMemory, 'command' | 'texts' | 'said'>,
  { units }: ConversationMemory,
  commands: readonly Command[],
): TextParsed | undefined {
  const command = commands.find((one) => fullName(one) === name);
  if (!command) return undefined;
  const optionTexts = new Map(Object.entries(texts));
  return { said: undefined, parsed: { ok: true, command, optionTexts }, sentence: said, units };
}

const SHORTER =
  /^(?:(?:ok|please|can you|could you|pls|sorry|too long|no),? )*(?:(?:make|say|put|give|keep|explain) (?:it|that|this|me)?(?: to me)?(?: in| the)? ?)?(?:(?:a )?(?:bit |lot |much |little )?(?:shorter|simpler|simply|briefly|short(?: version| answer)?|simple(?: words| terms| version| english)?|plain english|one line|one sentence|in short|tl;?dr|bottom line|quick version)|too long|dumb it down|just the (?:number|answer))(?: please| pls| version| answer)?[?.!]*$/i;

const UNSURE =
  /^(?:(?:um|uh|oh|hmm?|sorry),? )*(?:idk|i (?:really )?(?:don'?t|do not) know(?: yet| that)?|not sure(?: yet)?|no (?:idea|clue)|dunno|unsure|haven'?t (?:picked|chosen|decided)(?: one)?(?: yet)?|can'?t tell|whatever|any|doesn'?t say|it doesn'?t say|don'?t have (?:it|that|one)(?: yet)?|skip (?:it|that)|(?:just )?(?:standard|normal|usual|the usual|regular|average|typical))(?:,? (?:idk|standard|normal|whatever(?: is)? (?:standard|normal|usual)|the usual|i guess|maybe|yet|something))*[?.! ]*$/i;

const NO_BOX =
  /^(?:(?:um|uh|oh|well|sorry|but),? )*(?:i )?(?:(?:don'?t|do not) (?:know|have)|no (?:clue|idea)|not sure|haven'?t (?:picked|chosen|decided)|didn'?t (?:pick|choose))(?: yet)?(?: (?:on|about|what|which|the|a|any|kind of|size of))* (?:box(?:es)?|planks?|floor(?:ing)?|brand|one|product|kind)(?![a-z]).{0,40}$/i;

/** The answer by area, where a box or a plank was asked for and isn't known. */
function withoutIt(
  { open, command, texts, said, units }: ConversationMemory,
  commands: readonly Command[],
): TextParsed | undefined {
  const area = texts.area ?? texts.room;
  if (open === 'doorways' || open === 'doors') {
    const edges = commands.find((one) => fullName(one) === command);
    const optionTexts = new Map([...Object.entries(texts), [open, READER.usualDoor] as const]);
    return (
      edges && {
        said: undefined,
        parsed: { ok: true, command: edges, optionTexts, assumed: [READER.doorsTaken] },
        sentence: said,
        units,
      }
    );
  }
  const estimate = commands.find((one) => fullName(one) === 'floor estimate');
  if (!estimate || area === undefined || (open !== 'box' && open !== 'plank')) return undefined;
  const price = texts.price === undefined ? [] : [['price', texts.price] as const];
  const optionTexts = new Map([['area', area] as const, ...price]);
  return { said: undefined, parsed: { ok: true, command: estimate, optionTexts }, sentence: said, units };
}

const MOST_ANSWER_WORDS = 9;

/** A few words that answer what was asked back, read together with the sentence that it was asked about. */
function answering(
  text: string,
  { open, command, said, texts, units }: ConversationMemory,
  parse: (whole: string) => TextParsed,
): TextParsed | undefined {
  if (open === undefined || said === undefined || !/^(?:prep|trim) /.test(command)) return undefined;
  if (/\?/.test(text) || text.trim().split(/\s+/).length > MOST_ANSWER_WORDS) return undefined;
  const words = text.replace(/(?<![.!])[.!]+$/, '');
  const both = parse(
    `${said.replace(/(?<![?.!])[?.!]+$/, '')}, ${words}`.replace(open === 'readings' ? BARE_DEPTH : /(?!)/g, '$& deep'),
  );
  const { parsed } = both;
  if (both.said !== undefined) return undefined;
  const known = parsed.ok ? parsed : parsed.partly;
  const name = known && fullName(known.command);
  if (!known || name?.split(' ')[0] !== command.split(' ')[0]) return undefined;
  const grown = [...known.optionTexts.keys()].some((option) => texts[option] === undefined);
  return (parsed.ok && name === command) || grown || DEPTH.test(text) ? { ...both, units } : undefined;
}

const BARE_DEPTH =
  /(?:half an? inch|(?:a )?quarter(?: of an)? inch|(?<![\d./])\d{1,2}\/\d{1,2}(?: ?(?:"|in(?:ch(?:es)?)?))?|(?<![\d./])\d{1,2}(?:\.\d)? ?(?:"|in(?:ch(?:es)?)?|mm|cm)(?![a-z])|an inch)(?! ?(?:deep|low|over|in \d|across))/gi;

/** A depth and nothing else: “about half an inch”. */
const DEPTH =
  /^(?:(?:it'?s|about|like|maybe|around|roughly|probably|i think|um|uh),? )*(?:half an? inch|(?:a )?quarter(?: of an)? inch|\d{1,2}(?:[ -]\d\/\d|\/\d{1,2}|\.\d)? ?(?:"|in(?:ch(?:es)?)?|mm|cm)?|an inch)(?: or so| deep| low)?[.!]*$/i;

const THAT_ROOM =
  /(?<![a-z])(?:that|this|the same|same|the) (?:room|space|area)(?![a-z])(?! (?:is|was|has))|(?<=(?:boxes|planks|flooring|floor|packs|cartons|trim|baseboards?|much|many|need) for )(?:it|that|this)(?= (?:at|with|if|in)|[?.!]*$)/i;

/** “That room” by what was said of it. */
function aboutRoom(
  text: string,
  { known = {}, units }: ConversationMemory,
  parse: (whole: string) => TextParsed,
): TextParsed | undefined {
  const room = roomKnown(known);
  if (room === undefined || !THAT_ROOM.test(text) || pairPattern().exec(text)) return undefined;
  const alone = parse(text.replace(THAT_ROOM, room));
  return alone.parsed.ok && alone.said === undefined && alone.parsed.optionTexts.size > 0
    ? { ...alone, units }
    : undefined;
}

const MOST_RULE_WORDS = 8;

/** A question or a figure that is only whole with the question before it: “how much do i cut off?”. */
function aboutRule(
  text: string,
  { command, said = '', texts, units }: ConversationMemory,
  parse: (whole: string) => TextParsed,
  { commands, entry }: { readonly commands: readonly Command[]; readonly entry: string | undefined },
): TextParsed | undefined {
  if (said === '') return undefined;
  const how = HOW.test(text.trim()) ? howTo(entry, commands) : undefined;
  if (how) return { said: undefined, parsed: how, sentence: `${said} ${text}`, units };
  if (command !== 'handbook' || text.trim().split(/\s+/).length > MOST_RULE_WORDS) return undefined;
  const both = parse(`${said} ${text}`);
  if (!both.parsed.ok) return isFigure(text) && both.parsed.partly ? both : undefined;
  const name = fullName(both.parsed.command);
  if (name.startsWith('project ')) return undefined;
  const alone = parse(text);
  // A figure after a rule: the question and the figure as one message.
  if (isFigure(text))
    return ASIDES.includes(name) && (alone.parsed.ok || !sameEntry(both, texts.entry)) ? undefined : both;
  // A question with a subject of its own is asked for itself.
  if (!LEANS.test(text) && text.trim().split(/\s+/).length >= FEWEST_OWN_WORDS && isEntry(alone)) return undefined;
  const talk =
    alone.parsed.ok &&
    fullName(alone.parsed.command) === 'small-talk' &&
    NOT_MINE.includes(alone.parsed.optionTexts.get('about') ?? '');
  const clear =
    alone.parsed.ok && !talk && !alone.parsed.optionTexts.has('near') && !alone.parsed.optionTexts.has('also');
  const same = sameEntry(both, texts.entry);
  return !clear && (same || talk || !alone.parsed.ok) ? { ...both, sentence: said } : undefined;
}

/** What stands for something said before, or begins in the middle of a sentence. */
const LEANS =
  /(?<![a-z])(?:it|its|that|this|them|those|these|they|there|one|ones)(?![a-z])|^(?:and|but|or|so|what about|how about|even|also|with|on|over|in|for|when|if|then)(?![a-z])/i;
const FEWEST_OWN_WORDS = 4;

function isEntry({ parsed }: TextParsed): boolean {
  return parsed.ok && fullName(parsed.command) === 'handbook' && parsed.optionTexts.has('entry');
}

function sameEntry({ parsed }: TextParsed, entry: string | undefined): boolean {
  return parsed.ok && fullName(parsed.command) === 'handbook' && parsed.optionTexts.get('entry') === entry;
}

/** Small talk that may be a question about a floor with its subject left out. */
const NOT_MINE = ['other-trade', 'chat'];

const HOW =
  /^(?:ok |so |and |then |well )*(?:how (?:do|to|can|should|would|am i supposed to) ?(?:i|we|you)? ?(?:to )?(?:fix|do|repair|level|handle|deal with|solve|patch|install|go about|mend|stop) (?:it|that|this|them)|what (?:do|should|can) (?:i|we) do(?: about (?:it|that)| now| then)?|(?:so )?(?:now what|what now|what next|and now))[?.!]*$/i;

/** How the work of the last request is done. */
function howTo(entry: string | undefined, commands: readonly Command[]): ParsedCommand | undefined {
  const handbook = commands.find((one) => fullName(one) === 'handbook');
  return entry !== undefined && handbook
    ? { ok: true, command: handbook, optionTexts: new Map([['entry', entry]]) }
    : undefined;
}

/** What a message about the last figures asks for. */
function reckoned(
  text: string,
  memory: ConversationMemory,
  commands: readonly Command[],
  preferences: Preferences,
): TextParsed | undefined {
  const given = measured(text, preferences);
  const { command: last, texts, known = {}, figures = [] } = memory;
  const plain = given.plain.toLowerCase().trim();
  const own = figuresTalk(plain, given, { command: last, texts, known, figures });
  // After a question or an aside, the figures are those of the request before it.
  const { earlier } = memory;
  const found =
    own ?? (earlier && figuresTalk(plain, given, { command: earlier.command, texts: earlier.texts, known, figures }));
  const command = found && commands.find((one) => fullName(one) === found.command);
  if (!command) return undefined;
  const options = Object.entries(found.texts).filter(([option]) => option in command.options.shape);
  const parsed = { ok: true as const, command, optionTexts: new Map(options), assumed: [] };
  const next = { said: undefined, parsed, sentence: memory.said, units: memory.units };
  return found.aside ? { ...next, aside: true } : next;
}

/** Boxes are counted by planks where the pieces of one are said over several messages. */
function piecesTogether(
  text: string,
  memory: ConversationMemory,
  commands: readonly Command[],
  { preferences, project }: Reader['holdings'],
): TextParsed | undefined {
  const given = measured(text, preferences);
  if (project || !saidOnly(given) || !/^floor (?:planks|estimate|area)$/.test(memory.command)) return undefined;
  if (memory.texts.extra !== undefined || memory.texts.plank === undefined) {
    // Nothing is put together here that one message said whole.
    if (given.plank !== undefined || (given.count === undefined && memory.known?.count === undefined)) return undefined;
  } else if (plankKnown({ plank: memory.texts.plank }, preferences) !== undefined) return undefined;
  const known = piecesIn(text, {}, memory.known ?? {}, preferences);
  return planksOf({ known, texts: memory.texts, said: memory.said }, commands, preferences);
}

/** Boxes of the plank and the room that are known, or the question for what is missing. */
function planksOf(
  { known, texts, said }: Pick<ConversationMemory, 'texts' | 'said'> & { readonly known: Record<string, string> },
  commands: readonly Command[],
  preferences: Preferences,
): TextParsed | undefined {
  const command = commands.find((one) => fullName(one) === 'floor planks');
  if (!command) return undefined;
  const room = roomKnown(known);
  const plank = plankKnown(known, preferences);
  const price = known.price !== undefined && plank?.match(/[$€£]/) === null ? `, ${known.price}` : '';
  const layout = Object.entries(texts).filter(([option]) => option in command.options.shape);
  const told = plank ?? known.size ?? known.count;
  const optionTexts = new Map([
    ...layout,
    ...(room === undefined ? [] : [['room', room] as const]),
    ...(told === undefined ? [] : [['plank', `${told}${price}`] as const]),
  ]);
  if (room !== undefined && plank !== undefined)
    return { said: undefined, parsed: { ok: true, command, optionTexts, assumed: [] }, sentence: said };
  const option = plank === undefined && (known.size === undefined || known.count === undefined) ? 'plank' : 'room';
  const expected =
    plank !== undefined ? (ASK_FOR.room ?? '') : known.size === undefined ? READER.plankSize : (ASK_FOR.box ?? '');
  const open = plank !== undefined ? 'room' : known.size === undefined ? option : 'box';
  const parsed = {
    ok: false as const,
    problems: [{ option, got: '', expected }] as const,
    about: { command, optionTexts },
    open,
  };
  return { said: undefined, parsed, sentence: said };
}

/** A request for boxes with the plank that was said in pieces before it. */
function withPlankKnown(
  parsed: ParsedCommand,
  text: string,
  memory: ConversationMemory,
  commands: readonly Command[],
  { preferences, project }: Reader['holdings'],
): ParsedCommand {
  const name = fullName(parsed.command);
  if (project || !/^floor (?:planks|estimate)$/.test(name) || parsed.optionTexts.has('extra')) return parsed;
  const told = parsed.optionTexts.get('plank');
  if (told !== undefined && plankKnown({ plank: told }, preferences) !== undefined) return parsed;
  if (told === undefined && parsed.optionTexts.has('box')) return parsed;
  const texts = Object.fromEntries(parsed.optionTexts);
  const known = piecesIn(text, texts, memory.known ?? {}, preferences);
  const whole = planksOf(
    { known: { ...known, ...memory.known, ...roomOf(texts) }, texts, said: memory.said },
    commands,
    preferences,
  );
  return whole?.parsed.ok ? { ...parsed, ...whole.parsed } : parsed;
}

function roomOf({ room, area }: Readonly<Record<string, string>>): Record<string, string> {
  const place = room ?? area;
  return place === undefined ? {} : { room: place, area: place };
}

/** Boxes for a project's rooms with the plank that was said a message before, where none is saved. */
function plankLent(
  parse: (whole: string) => TextParsed,
  text: string,
  { known = {} }: ConversationMemory,
  preferences: Preferences,
): TextParsed | undefined {
  const plank = plankKnown(known, preferences);
  if (plank === undefined) return undefined;
  const alone = parse(text);
  const { parsed } = alone;
  const partly = parsed.ok ? undefined : parsed.partly;
  if (parsed.ok || !partly || !('plank' in partly.command.options.shape) || partly.optionTexts.has('plank'))
    return undefined;
  const optionTexts = new Map([...partly.optionTexts, ['plank', plank]]);
  const assumed = [...partly.assumed, READER.before(plank)];
  const missing = partly.missing.filter((one) => one !== 'plank');
  return { ...alone, parsed: { ...parsed, partly: { ...partly, optionTexts, assumed, missing } } };
}

/** An estimate by area with the box that was said before. */
function boxLent(alone: TextParsed, memory: ConversationMemory, preferences: Preferences): TextParsed | undefined {
  const { parsed } = alone;
  if (!parsed.ok || !/^floor (?:estimate|enough)$/.test(fullName(parsed.command)) || parsed.optionTexts.has('box'))
    return undefined;
  const { known = {} } = memory;
  const box = known.box ?? plankKnown(known, preferences);
  if (box === undefined) return undefined;
  const optionTexts = new Map([...parsed.optionTexts, ['box', box]]);
  return { ...alone, parsed: { ...parsed, optionTexts, assumed: [...(parsed.assumed ?? []), READER.before(box)] } };
}

/** Whether a text is hardly more than a figure. */
function isFigure(text: string): boolean {
  const words = text.toLowerCase().match(/[a-z]{3,}/g) ?? [];
  return text.length <= LONGEST_FEW && /\d/.test(text) && words.length <= 3;
}

const STATES_PLANKS = /^planks? (?:are|is|come|comes|measure|measures|have|has) /i;

/** Whether a text starts with “planks” or “enough” as a word of a sentence, and not as the command. */
function isAboutFloor(text: string, typed: Command, preferences: Preferences): boolean {
  if (fullName(typed) === 'floor enough') return !text.includes(':');
  if (fullName(typed) !== 'floor planks' || text.includes(':')) return false;
  if (STATES_PLANKS.test(text)) return true;
  const { room, plank, size, carton } = measured(text, preferences);
  return room === undefined && (plank ?? size ?? carton) !== undefined;
}

/** Options that one request may lend another, and what stands for each where it wasn't said by this name. */
const LENT: Readonly<Record<string, readonly string[]>> = {
  room: ['room', 'area'],
  area: ['area', 'room'],
  plank: ['plank'],
  box: ['box', 'plank'],
  have: ['have'],
};

/** A request that lacks a room or a plank, with those said before in this conversation; undefined if it lacks nothing. */
function withSaidBefore(
  { said, parsed, sentence }: TextParsed,
  told: ConversationMemory['texts'],
  commands: readonly Command[],
): TextParsed | undefined {
  const known = parsed.ok ? parsed : parsed.partly;
  if (!known || known.command.group === 'project') return undefined;
  const lacks = needed(known.command).filter((option) => !known.optionTexts.has(option));
  const lent = new Map(lacks.flatMap((option) => lentFor(option, told)));
  if (lent.size === 0) return undefined;
  const optionTexts = new Map([...known.optionTexts, ...lent]);
  // Without a plank, boxes are counted by area.
  const byArea = fullName(known.command) === 'floor planks' && !optionTexts.has('plank');
  const command = byArea ? commands.find((one) => fullName(one) === 'floor estimate') : known.command;
  if (!command || (!byArea && lacks.some((option) => !lent.has(option)))) return undefined;
  if (byArea) {
    for (const [option, value] of [...lentFor('area', Object.fromEntries(optionTexts)), ...lentFor('box', told)])
      optionTexts.set(option, value);
  }
  const own = new Map([...optionTexts].filter(([option]) => option in command.options.shape));
  const assumed = [...(known.assumed ?? []), READER.before([...lent.values()].join('; '))];
  return { said, parsed: { ok: true, command, optionTexts: own, assumed }, sentence };
}

/** A bare area has no walls, so it is no room. */
function lentFor(option: string, told: ConversationMemory['texts']): readonly [string, string][] {
  const value = (LENT[option] ?? []).flatMap((name) => told[name] ?? [])[0];
  return value === undefined || (option === 'room' && pairPattern().exec(value) === null) ? [] : [[option, value]];
}

function needed(command: Command): readonly string[] {
  return optionsOf(command).flatMap(({ name, standard }) => (standard === undefined ? [name] : []));
}

/** The one question after an answer that was said to be wrong. */
export async function questioned(
  understood: Understood,
  commands: readonly Command[],
  preferences: Preferences,
): Promise<TextParsed | undefined> {
  const { whatWasWrong } = await import('./wrong.ts');
  const parsed = whatWasWrong(understood, commands, preferences);
  return parsed && { said: undefined, parsed };
}

/** “why 10 boxes?”: the figure that was answered. */
const WHY = /^(?:but )?why (?:is (?:it|that) |so (?:many|much),? ?|not )?\d[\d.,]* ?[a-z ]{0,12}\?*$/i;

/** A question about the thing itself: “is that too narrow?”. */
const ABOUT_IT =
  /^(?:is|are|was|will|can|could|should|do|does) (?:that|it|this|they) (?:too|ok|okay|fine|bad|good|enough|safe|normal|wide|narrow|long|short)/i;

/** The section that a few words ask for: “how did you get that”. */
export async function sectionMeant(text: string): Promise<'why' | 'more' | undefined> {
  if (WHY.test(text.trim())) return 'why';
  if (text.length > LONGEST_FEW || /\d/.test(text)) return undefined;
  const { hear, PROBABLE_SCORE } = await import('../language/model.ts');
  const heard = hear(text);
  if (heard.kind !== 'talk' || heard.score < PROBABLE_SCORE) return undefined;
  if (heard.about === 'why' && ABOUT_IT.test(text)) return undefined;
  return heard.about === 'why' || heard.about === 'more' ? heard.about : undefined;
}

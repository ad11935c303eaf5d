/** “That’s wrong”: what was understood, the one thing that was most likely misread, and what else may have been meant. */

import { entryOf } from '../handbook/all-entries.ts';
import { workedFrom } from '../handbook/worked.ts';
import { askLine, fullName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { sentenceFrame } from '../language/frames.ts';
import { type Measured, measured } from '../language/measured.ts';
import { type Heard, hear, type Option, PROBABLE_SCORE } from '../language/model.ts';
import type { Action } from '../reply/reply.ts';
import { CORRECT, INTENT_WORDS, WRONG } from '../text/reader-text.ts';
import type { Command, Understood } from './command.ts';
import type { Parsed } from './command-line.ts';

const WRONG_WORD =
  '(?:wrong|incorrect|not (?:right|correct|it|true|helpful|helping)|false|off|nonsense|useless|worthless|garbage|trash|crap|bs|stupid|dumb|rubbish|no (?:help|good|use)|unhelpful)';
const VERY = '(?:(?:just|all|so|totally|completely|plain|still|really|way|not even|pretty|simply|even) )*';
const COMPLAINT = [
  `(?:(?:that|this|it|you|the (?:answer|number|size|room|area|total)|your (?:answer|number)|everything)(?: answer| number| bot| thing)?(?:'s|s| is| was| are|'re|re| looks| seems| sounds)? )?${VERY}${WRONG_WORD}(?: (?:answer|number|question|room|size|bot|again|there|app|thing))?`,
  "(?:(?:that|this|it)(?:'s| is|s| was)?(?:n't)? )?not (?:at all )?what i(?:'m| was| am)? (?:asked|asking|meant|said|wanted|want|need|needed|looking)(?: for| about| to know)?",
  "(?:(?:that|this|it) )(?:isn'?t|wasn'?t) (?:right|correct|it|what i (?:asked|meant|said|wanted|want|need|needed)(?: for| about)?)",
  "you (?:totally |completely )?(?:misunderstood|misread|got (?:it|that|me|this) (?:all )?wrong|have (?:it|that) wrong|(?:didn'?t|don'?t|do not|did not) (?:understand|answer|get|listen|read)(?: me| it| that| to me| my question| the question| what i (?:said|asked|wrote))?)(?: me| it| that)?",
  "(?:that|this|it) (?:makes no sense|doesn'?t make (?:any )?sense|can'?t be (?:right|correct)|doesn'?t (?:look|seem|sound) (?:right|correct)|doesn'?t help|didn'?t help)",
  "i (?:didn'?t|never|did not) (?:ask|mean|say)(?: for| about)?(?: that| this| it)?",
].join('|');
const BEFORE = '(?:(?:no|nope|nah|ugh|hey|um|well|but|ok|okay|come on|wtf|sorry|dude|man)[,.! ]+)*';
const WHOLE = new RegExp(`^${BEFORE}(?:${COMPLAINT})[.!? ]*$`);
const AHEAD = new RegExp(`^${BEFORE}(?:${COMPLAINT})[,.!;:—– -]+(?=.*\\d)`);

/** More than this is a request of its own. */
const LONGEST_COMPLAINT = 80;

function plain(text: string): string {
  return text.toLowerCase().replace(/[’‘]/g, "'").replace(/\s+/g, ' ').trim();
}

/** Whether a message only says that the last answer was wrong, or is angry about it. */
export function isComplaint(text: string): boolean {
  if (text.length > LONGEST_COMPLAINT || /\d/.test(text)) return false;
  if (WHOLE.test(plain(text))) return true;
  const heard = hear(text);
  return heard.kind === 'talk' && heard.about === 'angry' && heard.score >= PROBABLE_SCORE;
}

/** What follows a complaint in the same message, as a correction: “that’s wrong, it’s 12x16”. */
export function correctionIn(text: string): string {
  const said = plain(text);
  const ahead = AHEAD.exec(said)?.[0];
  return ahead === undefined ? text : `no, ${said.slice(ahead.length)}`;
}

/** The one question after a wrong answer, with a form that keeps everything; undefined if there is no such command any more. */
export function whatWasWrong(
  { command: name, told, said }: Understood,
  commands: readonly Command[],
  preferences: Preferences,
): Extract<Parsed, { ok: false }> | undefined {
  const command = commands.find((one) => fullName(one) === name);
  if (!command) return undefined;
  const heard = hear(said);
  const given = measured(said, preferences);
  const others = otherMeanings(heard, name, told);
  const own = askLine(command, new Map(Object.entries(told)));
  const choices = others
    .flatMap((one) => choiceOf(one, { said, told, given, commands, preferences }) ?? [])
    .filter(({ ask }, i, all) => ask !== own && all.findIndex((one) => one.ask === ask) === i);
  const open = Object.keys(CORRECT).find((option) => (told[option] ?? '') !== '' && option in command.options.shape);
  // What was meant is asked only where something else was nearly as likely, or nothing else can be wrong.
  const aboutSize = open !== undefined && (isSure(heard, name) || choices.length === 0);
  const expected = aboutSize ? (CORRECT[open] ?? '') : choices.length > 0 ? WRONG.meant : WRONG.again;
  const undo = command.group === 'project' ? [{ label: WRONG.undo, ask: 'project undo' }] : [];
  const form = formFor(command, others, { told, given, commands, preferences });
  return {
    ok: false,
    problems: [{ option: aboutSize ? open : 'ask', got: understoodAs(command, told), expected }],
    ...(form ? { about: form } : {}),
    ...(open === undefined ? {} : { open }),
    choices: [...undo, ...choices].slice(0, MOST_CHOICES),
    complaint: true,
  };
}

const MOST_CHOICES = 3;

/** Whether a size was misread more likely than what to do with it; an estimate stands for the exact count. */
function isSure(heard: Heard, name: string): boolean {
  const alike = (one: string): string => (['floor planks', 'floor area'].includes(one) ? 'floor estimate' : one);
  if (heard.kind !== 'command' || alike(heard.name) !== alike(name)) return false;
  const [next] = heard.others;
  return heard.score >= CERTAIN || (next !== undefined && 'command' in next && alike(next.command) === alike(name));
}

const CERTAIN = 0.9;

/** The likeliest meanings but the one that was answered. */
function otherMeanings(heard: Heard, name: string, told: Understood['told']): readonly Option[] {
  const own: readonly Option[] =
    heard.kind === 'entry' ? [{ entry: heard.id }] : heard.kind === 'command' ? [{ command: heard.name }] : [];
  const entries = heard.entries.map(({ id }) => ({ entry: id }));
  const alike: readonly Option[] = FROM_SIZES.includes(name) ? FROM_SIZES.map((command) => ({ command })) : [];
  const keys = new Set([name === 'handbook' ? `handbook ${told.entry}` : name]);
  return [...own, ...heard.others, ...alike, ...entries].filter((option) => {
    const key = 'entry' in option ? `handbook ${option.entry}` : option.command;
    if (keys.has(key)) return false;
    keys.add(key);
    return true;
  });
}

/** Computed from the same sizes, the likeliest first. */
const FROM_SIZES = ['floor estimate', 'floor planks', 'floor area', 'trim list'];

interface Said {
  readonly said?: string;
  readonly told: Understood['told'];
  readonly given: Measured;
  readonly commands: readonly Command[];
  readonly preferences: Preferences;
}

/** Another meaning as a request that keeps everything that was said. */
function choiceOf(option: Option, said: Said): Action | undefined {
  if ('command' in option) {
    const other = asOther(option.command, said);
    // A command that nothing was said for would have to ask for everything.
    if (!other || other.optionTexts.size === 0) return undefined;
    return { label: intentWords(other.command), ask: askLine(other.command, other.optionTexts) };
  }
  const entry = entryOf(option.entry);
  if (!entry) return undefined;
  const figures = workedFrom(entry.id, said.said ?? '', false)
    ? `, said: ${(said.said ?? '').replace(/[:;\n]+/g, ' ').trim()}`
    : '';
  return { label: entry.title, ask: `handbook entry: ${entry.id}${figures}` };
}

/** The same values for another command. */
function asOther(
  name: string,
  { told, given, commands, preferences }: Said,
): { readonly command: Command; readonly optionTexts: ReadonlyMap<string, string> } | undefined {
  const frame = sentenceFrame(name, given, preferences);
  const command = commands.find((one) => fullName(one) === (frame?.command ?? name));
  if (!command || command.group === 'project') return undefined;
  const floor = told.room ?? told.area;
  const box = told.box ?? told.plank;
  const kept = {
    ...(floor === undefined ? {} : { room: floor, area: floor }),
    ...(box === undefined ? {} : { box }),
    ...told,
  };
  const texts = new Map([...(frame?.optionTexts ?? []), ...Object.entries(kept)]);
  return { command, optionTexts: new Map([...texts].filter(([option]) => option in command.options.shape)) };
}

/** The form of the command that was answered; of an answer from the handbook, that of the nearest command. */
function formFor(
  command: Command,
  others: readonly Option[],
  said: Said,
): { readonly command: Command; readonly optionTexts: ReadonlyMap<string, string> } | undefined {
  if (fullName(command) !== 'handbook') return { command, optionTexts: new Map(Object.entries(said.told)) };
  return others.flatMap((one) => ('command' in one ? (asOther(one.command, said) ?? []) : []))[0];
}

/** What was understood, in one line. */
function understoodAs(command: Command, told: Understood['told']): string {
  if (fullName(command) === 'handbook') {
    const title = entryOf(told.entry ?? '')?.title;
    return title === undefined ? command.summary : WRONG.question(title);
  }
  const values = Object.entries(told).filter(([option]) => option in command.options.shape);
  return WRONG.understood(intentWords(command), values);
}

function intentWords(command: Command): string {
  return INTENT_WORDS[fullName(command)] ?? command.summary;
}

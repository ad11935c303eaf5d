/** Worst-case texts made from a pattern itself: parts of it that may repeat, repeated, behind what leads to them and before an end that does not fit. */

import { mulberry32 } from '../bench/random-rooms.ts';

/** Any of some texts; a sequence; one of some parts; a part some times over; or a part that is looked at, and taken by others. */
type Part =
  | { readonly kind: 'one'; readonly of: readonly string[] }
  | { readonly kind: 'all'; readonly parts: readonly Part[] }
  | { readonly kind: 'any'; readonly parts: readonly Part[] }
  | { readonly kind: 'many'; readonly part: Part; readonly least: number; readonly most: number }
  | { readonly kind: 'look'; readonly part: Part };

/** Characters that stand for classes: those on which two classes of a pattern are likely to overlap. */
const STAND_INS = [...' 1a0xtséA.,\'"/-:;()½²×&#$€%+=@_*~|\\\t\n\u00a0°£'];
/** Repeated at least so often, a part is taken to repeat without an end. */
const MANY = 8;
const ENDS = ['', '\u0001', '~\n¬'];

/** A pattern as a tree of parts. */
class Reader {
  private at = 0;
  private readonly groups = new Map<string, Part>();
  private readonly source: string;
  private readonly flags: string;

  constructor(source: string, flags: string) {
    this.source = source;
    this.flags = flags.replace(/[^iuvs]/g, '');
  }

  read(): Part {
    const parts: Part[] = [];
    let run: Part[] = [];
    for (;;) {
      const sign = this.source[this.at];
      if (sign === undefined || sign === ')' || sign === '|') {
        parts.push({ kind: 'all', parts: run });
        run = [];
        if (sign !== '|') break;
        this.at += 1;
      } else run.push(this.repeated(this.atom()));
    }
    return parts.length === 1 && parts[0] ? parts[0] : { kind: 'any', parts };
  }

  private repeated(part: Part): Part {
    const match = /^(?:[*+?]|\{\d{1,9}(?:,\d{0,9})?\})\??/.exec(this.source.slice(this.at, this.at + 24))?.[0];
    if (match === undefined) return part;
    this.at += match.length;
    const [least = 0, most = least] = /\d/.test(match)
      ? match
          .split(',')
          .map((bound) => (/\d/.test(bound) ? Number(bound.replace(/\D/g, '')) : Number.POSITIVE_INFINITY))
      : [match[0] === '+' ? 1 : 0, match[0] === '?' ? 1 : Number.POSITIVE_INFINITY];
    return { kind: 'many', part, least, most };
  }

  private atom(): Part {
    const sign = this.source[this.at] ?? '';
    if (sign === '(') return this.group();
    if (sign === '[') return this.standing(this.bracket());
    if (sign === '\\') return this.escape();
    this.at += sign.length;
    if (sign === '^' || sign === '$') return { kind: 'all', parts: [] };
    if (sign === '.') return this.standing('.');
    return { kind: 'one', of: [sign] };
  }

  private group(): Part {
    const [head = '('] = /^\((?:\?(?:[:=!]|<[=!]|<[^>]{1,50}>))?/.exec(this.source.slice(this.at, this.at + 60)) ?? [];
    this.at += head.length;
    const part = this.read();
    this.at += 1;
    if (/^\(\?<?[=!]/.test(head)) return { kind: 'look', part };
    if (head !== '(?:') this.groups.set(/<(.*)>/.exec(head)?.[1] ?? String(this.groups.size + 1), part);
    return part;
  }

  private bracket(): string {
    const from = this.at;
    for (this.at += 1; this.source[this.at] !== ']'; this.at += 1) if (this.source[this.at] === '\\') this.at += 1;
    this.at += 1;
    return this.source.slice(from, this.at);
  }

  private escape(): Part {
    const rest = this.source.slice(this.at, this.at + 60);
    const [whole = ''] =
      /^\\(?:[pP]\{[^}]*\}|u\{[^}]*\}|u[\da-fA-F]{4}|x[\da-fA-F]{2}|k<[^>]*>|[1-9]\d?|[\s\S])/.exec(rest) ?? [];
    this.at += whole.length;
    if (/^\\[bB]$/.test(whole)) return { kind: 'all', parts: [] };
    const back = /^\\(?:k<(.*)>|([1-9]\d?))$/.exec(whole);
    if (back) return this.groups.get(back[1] ?? back[2] ?? '') ?? { kind: 'all', parts: [] };
    return this.standing(whole);
  }

  private standing(source: string): Part {
    const whole = new RegExp(`^(?:${source})$`, this.flags);
    const of = STAND_INS.filter((sign) => whole.test(sign));
    if (of.length > 0) return { kind: 'one', of };
    for (let code = 1; code < 0xffff; code++) {
      const sign = String.fromCharCode(code);
      if (whole.test(sign)) return { kind: 'one', of: [sign] };
    }
    return { kind: 'one', of: ['\u{1f600}'] };
  }
}

/** A text that a part takes: the plainest one (`random` undefined), or one by chance. */
function sample(part: Part, random?: () => number): string {
  const drawn = random ?? (() => 0);
  const pick = <T>(items: readonly T[]): T | undefined => items[Math.floor(drawn() * items.length)];
  switch (part.kind) {
    case 'one':
      return pick(part.of) ?? '';
    case 'all':
      return part.parts.map((inner) => sample(inner, random)).join('');
    case 'any': {
      const inner = pick(part.parts);
      return inner ? sample(inner, random) : '';
    }
    case 'many': {
      const times = part.least + (random ? Math.floor(drawn() * Math.min(3, part.most - part.least + 1)) : 0);
      return Array.from({ length: Math.min(times, 40) }, () => sample(part.part, random)).join('');
    }
    default:
      return '';
  }
}

interface Pump {
  readonly lead: string;
  readonly again: string;
}

/** What may be repeated in a pattern, and what leads to it. */
function* pumps(part: Part, lead: string, random: () => number): Generator<Pump> {
  if (part.kind === 'all') {
    let before = lead;
    for (const inner of part.parts) {
      yield* pumps(inner, before, random);
      before += sample(inner);
    }
  } else if (part.kind === 'any') for (const inner of part.parts) yield* pumps(inner, lead, random);
  else if (part.kind === 'look') yield* pumps(part.part, lead, random);
  else if (part.kind === 'many') {
    if (part.most - part.least >= MANY) {
      const bodies = [sample(part.part), ...Array.from({ length: 5 }, () => sample(part.part, random))];
      for (const again of bodies) yield { lead, again };
      yield { lead, again: bodies.join('') };
    }
    yield* pumps(part.part, lead, random);
  }
}

/** Every sign that a pattern names or that stands for a class of it, and every word. */
function alphabet(part: Part, into: { signs: Set<string>; words: Set<string> }): void {
  if (part.kind === 'one') for (const sign of part.of.slice(0, 6)) into.signs.add(sign);
  else if ('parts' in part) {
    let word = '';
    for (const inner of part.parts) {
      alphabet(inner, into);
      if (inner.kind === 'one' && inner.of.length === 1) word += inner.of[0];
      else {
        if (word.length > 1) into.words.add(word);
        word = '';
      }
    }
    if (word.length > 1) into.words.add(word);
  } else alphabet(part.part, into);
}

/** Texts of a length that give a pattern as much work as it may have, the same ones each time. */
export function worstCases(source: string, flags: string): ((length: number) => string)[] {
  const random = mulberry32(7);
  const whole = new Reader(source, flags).read();
  const letters = { signs: new Set<string>(), words: new Set<string>() };
  alphabet(whole, letters);
  const all: Pump[] = [];
  const seen = new Set<string>();
  const add = (pump: Pump): void => {
    const key = `${pump.lead}\u0000${pump.again}`;
    if (pump.again === '' || seen.has(key)) return;
    seen.add(key);
    all.push(pump);
  };
  for (const pump of pumps(whole, '', random)) add(pump);
  for (const sign of [...letters.signs].slice(0, 30)) add({ lead: '', again: sign });
  for (const word of [...letters.words].slice(0, 20)) add({ lead: '', again: `${word} ` });
  for (let turn = 0; turn < 6; turn++) {
    const text = sample(whole, random);
    add({ lead: '', again: text });
    add({ lead: '', again: `${text} ` });
    add({ lead: '', again: text.slice(0, -1) });
  }
  return all.flatMap(({ lead, again }) => ENDS.map((end) => repeated(lead, again, end)));
}

/** A text of some length: a lead, a part as often as fits, and an end. */
export function repeated(lead: string, again: string, end: string): (length: number) => string {
  return (length) => {
    const times = Math.max(1, Math.floor((length - lead.length - end.length) / again.length));
    return `${`${lead}${again.repeat(times)}`.slice(0, length - end.length)}${end}`;
  };
}

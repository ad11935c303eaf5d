/** Doorways where the new floor ends: `bath 30 in to tile 1/2 in; bedroom 32 in to carpet; balcony 6 ft to track`. */

import type { Problem } from '../../reply/reply.ts';
import { beyondTaken, doorwayUnread } from '../../text/trim-problems-text.ts';
import type { Beyond, EdgeDoorway } from '../../trim/pieces.ts';
import { inches, type Length, millimetres } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';

const KINDS: readonly (readonly [RegExp, Beyond])[] = [
  [/^(?:carpet|rug)/i, 'carpet'],
  [/^(?:sliding|track|slider|patio)/i, 'track'],
  [/^/, 'hard'],
];
const BEYOND =
  /(?:[,:]\s*|(?<!\s)\s+)?\b(?:(?:to|against|meets?|and|next to|beside)\s+(?:an?\s+|the\s+)?)?(carpet(?:ing)?|rug|tiles?|tiled floor|stone|vinyl|laminate|hardwood|wood|timber|concrete|plank|same floor|sliding(?:[ -]door)?(?:\s+track)?|slider|patio(?:[ -]door)?(?:\s+track)?|track)\b/i;
const NAME_IN_FRONT = /^([\p{L}][\p{L}\d'’ -]*?)(?<!\s)(?:\s*:)?\s+(?=\d|[½¼¾])/u;
/** The name may stand behind the width: `30" bath`. */
const NAME_BEHIND = /^(\D*\d.*?)(?<!\s)\s+(?!(?:in|inch|inches|ft|feet|foot|mm|cm|m)\b)(\p{L}[\p{L}'’ -]*)$/iu;
const COUNT = /^(\d{1,2})\s*(?:x|×|\*)\s*(?=\d)/i;

const LEAST_EDGE_WIDTH = inches(6);
const MOST_EDGE_WIDTH = millimetres(10_000);
const MOST_HEIGHT = inches(4);
export const MOST_DOORWAYS = 60;

/** Doorways apart by `;` or a new line, none for `none`; each its width, what lies beyond and that floor's height over the subfloor. All problems at once. */
export function readEdgeDoorways(text: string, reading: Reading): Read<readonly EdgeDoorway[]> {
  if (/^\s*(?:none|no|no doorways?)\s*$/i.test(text)) return read([]);
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const doorways: EdgeDoorway[] = [];
  const wrong: string[] = [];
  const standard = reading.habits.units === 'metric' ? '800 mm to tile 10 mm' : '32 in to tile 1/2 in';
  const mended = parts.map((part) => {
    const found = edgeDoorwaysOf(part, doorways.length, reading);
    if (found) doorways.push(...found);
    else wrong.push(part);
    return found ? part : standard;
  });
  const got = { option: reading.option, got: text };
  if (parts.length === 0 || doorways.length > MOST_DOORWAYS) return unread(doorwayUnread(got, MOST_DOORWAYS, standard));
  const [first, ...more] = wrong.map(
    (part): Problem => doorwayUnread({ ...got, got: part }, MOST_DOORWAYS, mended.join('; ')),
  );
  if (first) return unread(first, ...more);
  for (const { name, beyond, height } of doorways) {
    if (beyond === 'hard' && height === undefined) reading.note(beyondTaken(name));
  }
  return read(doorways);
}

function edgeDoorwaysOf(part: string, before: number, reading: Reading): readonly EdgeDoorway[] | undefined {
  const kind = BEYOND.exec(part);
  if (!kind) return undefined;
  const front = part.slice(0, kind.index).trim();
  const behind = part
    .slice(kind.index + kind[0].length)
    .replace(/\b(?:high|thick|tall|at)\b/gi, ' ')
    .replace(/^[\s,:]+|(?<![\s,])[\s,]+$/g, '');
  const named = NAME_IN_FRONT.exec(front);
  const counted = COUNT.exec(named ? front.slice(named[0].length) : front);
  const size = front
    .slice((named?.[0].length ?? 0) + (counted?.[0].length ?? 0))
    .replace(/\b(?:door(?:way)?s?|openings?|wide)\b/gi, ' ');
  const behindSize = named ? undefined : NAME_BEHIND.exec(size);
  const width = sizeOf(size, reading) ?? (behindSize ? sizeOf(behindSize[1] ?? '', reading) : undefined);
  const name = named?.[1] ?? (sizeOf(size, reading) === undefined ? behindSize?.[2]?.trim() : undefined);
  const height = behind === '' ? undefined : sizeOf(behind, reading);
  const beyond = KINDS.find(([pattern]) => pattern.test(kind[1] ?? ''))?.[1] ?? 'hard';
  if (width === undefined || width < LEAST_EDGE_WIDTH || width > MOST_EDGE_WIDTH) return undefined;
  if (behind !== '' && (height === undefined || height > MOST_HEIGHT)) return undefined;
  const count = Number(counted?.[1] ?? 1);
  if (count < 1) return undefined;
  return Array.from({ length: count }, (_, i) => {
    const number = count > 1 ? ` ${i + 1}` : '';
    return { name: name ? `${name}${number}` : `doorway ${before + i + 1}`, width, beyond, height };
  });
}

function sizeOf(text: string, reading: Reading): Length | undefined {
  const size = readLength(text, reading, reading.habits.units === 'metric' ? 'mm' : 'in');
  return size.ok ? size.value : undefined;
}

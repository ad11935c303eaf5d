/** Drawings read back as a person reads them: texts, their boxes, rows with their labels, and walls with their lengths. */

import { textWidth } from '../../src/drawing/text.ts';
import type { Drawing, Text, TextRole } from '../../src/reply/drawing.ts';

/** Where a text's ink may be: x to the right, y down. */
export interface InkBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function textsOf({ shapes }: Drawing, ...roles: readonly TextRole[]): readonly Text[] {
  const texts = shapes.filter((shape): shape is Text => shape.kind === 'text');
  return roles.length === 0 ? texts : texts.filter(({ role }) => roles.includes(role));
}

/** Turned by the rotation matrix of SVG 1.1 §7.6: x′ = x cos − y sin, y′ = x sin + y cos, y down. */
export function inkBox(text: Text): InkBox {
  const width = textWidth(text.text, text.size, text.bold);
  const before = { start: 0, middle: width / 2, end: width }[text.anchor];
  const angle = (text.turn * Math.PI) / 180;
  const corners = [-before, width - before].flatMap((x) =>
    [-0.76 * text.size, 0.21 * text.size].map((y) => [
      text.x + x * Math.cos(angle) - y * Math.sin(angle),
      text.y + x * Math.sin(angle) + y * Math.cos(angle),
    ]),
  );
  const xs = corners.map(([x = 0]) => x);
  const ys = corners.map(([, y = 0]) => y);
  return {
    text: text.text,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** Pairs of texts that share ink, and texts that leave the sheet. */
export function clashes(drawing: Drawing): readonly string[] {
  const boxes = textsOf(drawing).map(inkBox);
  const found = boxes
    .filter(({ left, right, top, bottom }) => left < 0 || top < 0 || right > drawing.width || bottom > drawing.height)
    .map(({ text }) => `${drawing.title}: “${text}” leaves the sheet`);
  boxes.forEach((a, i) => {
    for (const b of boxes.slice(i + 1)) {
      const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      if (!apart) found.push(`${drawing.title}: “${a.text}” and “${b.text}” meet`);
    }
  });
  return found;
}

/** One label line: its row (empty at the far end of a row in one part), its cut, and the plank it shares. */
export interface Line {
  readonly row: string;
  readonly cut: string;
  readonly offcut: string;
  readonly level: number;
}

/** Label lines of a sheet: those with a row number, and the others, each by level in laying order. */
export function labelLines(drawing: Drawing): { readonly starts: readonly Line[]; readonly ends: readonly Line[] } {
  const texts = textsOf(drawing, 'row-number', 'run-name', 'cut', 'offcut');
  const upright = texts.some(({ turn }) => turn !== 0);
  const lines = textsOf(drawing, 'cut').map((cut) => {
    const [level, place] = upright ? [cut.x, cut.y] : [cut.y, cut.x];
    const near = (role: TextRole): string =>
      texts.find((text) => {
        const [otherLevel, otherPlace] = upright ? [text.x, text.y] : [text.y, text.x];
        return text.role === role && Math.abs(otherLevel - level) < 0.05 && Math.abs(otherPlace - place) < 110;
      })?.text ?? '';
    return { row: near('row-number'), name: near('run-name'), cut: cut.text, offcut: near('offcut'), level };
  });
  const starts = lines.filter(({ row }) => row !== '');
  const [first, last] = [starts[0], starts.at(-1)];
  const down =
    !first || !last || Number.parseInt(first.row, 10) < Number.parseInt(last.row, 10) === first.level < last.level;
  const inOrder = (some: readonly Line[]): readonly Line[] =>
    [...some].sort((a, b) => (down ? a.level - b.level : b.level - a.level));
  const ends = lines.filter(({ row }) => row === '').map(({ name, ...line }) => ({ ...line, row: name }));
  return { starts: inOrder(starts), ends: inOrder(ends) };
}

/** Lengths of walls in inches by number, as written on walls and in the notes below them; feet and inches only. */
export function wallsOf(drawings: readonly Drawing[]): ReadonlyMap<number, number> {
  const written = drawings.flatMap((drawing) => [
    ...textsOf(drawing, 'dimension', 'dimension-start').map(({ text }) => text),
    textsOf(drawing, 'note')
      .map(({ text }) => text)
      .join(' '),
  ]);
  const walls = written.flatMap((text) => [...text.matchAll(/wall (\d+) · ((?:\d+')?(?: ?[\d /]+")?)/g)]);
  return new Map(walls.map((match) => [Number(match[1]), inchesOf(match[2] ?? '')]));
}

function inchesOf(text: string): number {
  const {
    feet = '0',
    whole = '0',
    top = '0',
    bottom = '1',
  } = /^(?:(?<feet>\d+)')? ?(?:(?<whole>\d+)(?: |"|$))?(?:(?<top>\d+)\/(?<bottom>\d+)")?$/.exec(text)?.groups ?? {};
  return Number(feet) * 12 + Number(whole) + Number(top) / Number(bottom);
}

/** A carton's label as people paste it: width, length and count of the planks, proved by the area that is printed too. */

interface LabelPlank {
  /** In the words of the plank's reader. */
  readonly text: string;
}

interface Figure {
  readonly value: number;
  readonly unit: Unit | undefined;
  /** In square meters or feet: an area. */
  readonly square: 'ft' | 'm' | undefined;
  readonly counted: boolean;
}

type Unit = 'in' | 'mm' | 'ft' | 'cm';

const MOST_FIGURES = 30;
const MOST_TEXT = 900;
/** How far the printed area may be from width × length × count: labels round. */
const CLOSE = 0.012;

const FIGURE =
  /(?<![\d.,/])(?:(\d{1,2})[ -](\d{1,2})\/(\d{1,2})|(\d{1,2})\/(\d{1,2})|(\d{1,4}(?:[.,]\d{1,4})?))(?![\d/])/g;
const UNIT_AFTER =
  /^ ?[-(]? ?(sq(?:uare)?\.? ?(?:ft|feet)|sqft|sf|ft ?[2²]|m ?[2²]|sq\.? ?m|sqm|qm|pies ?2|"|''|in(?:ch(?:es)?)?(?![a-z])|mm|cm|'|ft(?![a-z])|feet|p(?:ie)?ce?s?\b|pcs|planks?|boards?|ea\b|stk|stück|planches|piezas|lamas|tablas|units?|count|ct\b)/;
const LABEL_BEFORE =
  /(?<![a-z])(sq ?ft|sqft|sf|area|covers?|cubre|couvre|coverage|pcs|pieces|piezas|contains?|contient|contents|qty|count|ct|planks)[ _/.:|=-]{0,10}(?:box|ctn|carton|pieces|planks|contains|covers)?[ _/.:|=-]{0,10}$/;

/** The plank of a label; undefined where no width, length and count agree with an area. Linear in the text. */
export function plankOfLabel(typed: string): LabelPlank | undefined {
  const figures = figuresIn(typed);
  let best: { readonly off: number; readonly text: string } | undefined;
  const areas = figures.flatMap((figure) => areasOf(figure).map((area) => ({ ...area, figure })));
  const bare = figures.flatMap((figure) => bareAreas(figure).map((area) => ({ ...area, figure })));
  for (const area of areas.length > 0 ? areas : bare) {
    for (const [i, width] of figures.entries()) {
      for (const [j, length] of figures.entries()) {
        if (i === j || area.figure === width || area.figure === length) continue;
        for (const [w, l, unit] of pairsOf(width, length)) {
          const count = area.inches / (w * l);
          const whole = Math.round(count);
          if (whole < 2 || whole > 40) continue;
          const off = Math.abs(count - whole) / whole;
          const printed = figures.some(
            (one) =>
              one.value === whole &&
              (one.counted || one.unit === undefined) &&
              one !== width &&
              one !== length &&
              one !== area.figure,
          );
          if (off > CLOSE || !printed) continue;
          // A figure that carries its own unit is believed before one that could be anything.
          const doubt = off + (width.unit === undefined ? 0.004 : 0) + (length.unit === undefined ? 0.004 : 0);
          if (best && best.off <= doubt) continue;
          const size =
            unit === 'mm' ? `${round(w * 25.4, 1)} x ${round(l * 25.4, 1)} mm` : `${round(w, 3)} x ${round(l, 3)} in`;
          best = { off: doubt, text: `${size}, ${whole} per carton, ${area.text} per carton` };
        }
      }
    }
  }
  return best && { text: best.text };
}

function round(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

function figuresIn(typed: string): readonly Figure[] {
  const text = typed
    .slice(0, MOST_TEXT)
    .toLowerCase()
    .replace(/[”“″]/g, '"')
    .replace(/[’‘′]/g, "'")
    .replace(/' '|''/g, '"')
    .replace(/m m\b/g, 'mm')
    .replace(/sq ?\. ?ft/g, 'sq ft')
    .replace(/\s{1,40}/g, ' ');
  const found: Figure[] = [];
  for (const match of text.matchAll(FIGURE)) {
    if (found.length >= MOST_FIGURES) break;
    const [whole, a, b, c, d, e, f] = match;
    const after = UNIT_AFTER.exec(text.slice(match.index + whole.length, match.index + whole.length + 16))?.[1] ?? '';
    const before = LABEL_BEFORE.exec(text.slice(Math.max(0, match.index - 30), match.index))?.[1] ?? '';
    const square = squareOf(after) ?? (after === '' ? squareOf(before) : undefined);
    const value = f === undefined ? Number(a ?? 0) + Number(b ?? d) / Number(c ?? e) : numeral(f, square !== undefined);
    if (!Number.isFinite(value) || value <= 0) continue;
    found.push({
      value,
      square,
      unit: square ? undefined : unitOf(after),
      counted:
        /^(?:p(?:ie)?c|pcs|plank|board|ea|st|planche|pieza|lama|tabla|unit|c(?:oun)?t)/.test(after) ||
        /pcs|pieces|piezas|contain|content|qty|count|ct|planks/.test(before),
    });
  }
  return sharedUnits(found);
}

/** “1,219 mm” is more than a thousand; “2,196 m²” is a little over two. */
function numeral(typed: string, area: boolean): number {
  return Number(/^\d{1,2},\d{3}$/.test(typed) && !area ? typed.replace(',', '') : typed.replace(',', '.'));
}

function squareOf(word: string): Figure['square'] {
  if (/^(?:sq(?:uare)?\.? ?(?:ft|feet)|sqft|sf|ft ?[2²]|pies|area|cover|cubre|couvre)/.test(word)) return 'ft';
  return /^(?:m ?[2²]|sq\.? ?m|sqm|qm)/.test(word) ? 'm' : undefined;
}

function unitOf(word: string): Unit | undefined {
  if (/^(?:"|''|in)/.test(word)) return 'in';
  if (/^(?:'|ft|feet)/.test(word)) return 'ft';
  return word === 'mm' || word === 'cm' ? word : undefined;
}

/** “7 x 48 in”: the unit stands once, behind the last of them. */
function sharedUnits(figures: readonly Figure[]): readonly Figure[] {
  const only = new Set(figures.flatMap(({ unit }) => (unit === 'in' || unit === 'mm' ? [unit] : [])));
  return figures.map((one) => {
    if (one.unit !== undefined || one.square || one.counted) return one;
    const unit = only.size === 1 && only.has('mm') && one.value > 60 ? 'mm' : undefined;
    return unit ? { ...one, unit } : one;
  });
}

/** What a figure is in inches, by every unit that it may be in. */
function inchesOf({ value, unit, square, counted }: Figure): readonly (readonly [inches: number, unit: Unit])[] {
  if (square || counted) return [];
  if (unit === 'in') return [[value, 'in']];
  if (unit === 'ft') return [[value * 12, 'in']];
  if (unit === 'cm') return [[value / 2.54, 'mm']];
  if (unit === 'mm') return [[value / 25.4, 'mm']];
  return value > 60 ? [[value / 25.4, 'mm'], ...(value <= 96 ? [[value, 'in'] as const] : [])] : [[value, 'in']];
}

/** Widths with lengths that make a plank, in one unit. */
function pairsOf(width: Figure, length: Figure): readonly (readonly [width: number, length: number, unit: Unit])[] {
  return inchesOf(width).flatMap(([w, unit]) =>
    inchesOf(length).flatMap(([l, other]) =>
      unit === other && w >= 2.5 && w <= 14 && l >= 11.5 && l <= 96 && l > w * 1.5 ? [[w, l, unit] as const] : [],
    ),
  );
}

/** A figure as what a carton covers, in square inches. */
function areasOf({ value, square }: Figure): readonly { readonly inches: number; readonly text: string }[] {
  if (square === 'm') return [{ inches: value / 0.0254 ** 2, text: `${value} m²` }];
  if (square === 'ft') {
    const areas = [{ inches: value * 144, text: `${value} sq ft` }];
    // “Covers” alone doesn't say of what.
    return value < 6 ? [...areas, { inches: value / 0.0254 ** 2, text: `${value} m²` }] : areas;
  }
  return [];
}

/** In a table without units, a bare figure of that size may be the area. */
function bareAreas({ value, unit, counted }: Figure): readonly { readonly inches: number; readonly text: string }[] {
  return unit === undefined && !counted && value >= 8 && value <= 50
    ? [{ inches: value * 144, text: `${value} sq ft` }]
    : [];
}

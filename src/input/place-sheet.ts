/** A sheet of subfloor panel and a tube of adhesive, as printed on them. */

import { notASheet, notATube, tubeRead } from '../text/prep-problems-text.ts';
import { inches, type Length, millimetres } from '../units/length.ts';
import { unitIn } from './length.ts';
import { figureOf } from './price.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';
import { pairPattern, readSide } from './rooms/room-side.ts';

/** Exactly 231/128 in³ of 16.387064 ml each. */
const WHOLE_PAIR = new RegExp(`^${pairPattern().source}$`);
const ML_PER_FLUID_OUNCE = 29.5735295625;

/** `4 x 8 ft`, `1220 x 2440 mm`: the longer side is the strength axis. Never throws. */
export function readSheet(text: string, reading: Reading): Read<{ readonly width: Length; readonly length: Length }> {
  const metric = reading.habits.units === 'metric';
  const typed = withoutHidden(text.trim(), ' ').slice(0, 60);
  const bad = unread(notASheet({ option: reading.option, got: typed }));
  const match = WHOLE_PAIR.exec(plainSigns(typed));
  const { a, b } = match?.groups ?? {};
  if (a === undefined || b === undefined) return bad;
  const [one, other] = [
    readSide(a, unitIn(b) ?? (metric ? 'mm' : 'ft'), reading),
    readSide(b, unitIn(a) ?? (metric ? 'mm' : 'ft'), reading),
  ];
  if (!one.ok || !other.ok) return bad;
  const [width, length] = one.length <= other.length ? [one.length, other.length] : [other.length, one.length];
  return width < millimetres(300) || length > inches(192) ? bad : read({ width, length });
}

/** `28 fl oz`, `10.1 oz`, `825 ml`: fluid ounces. A figure alone is fluid ounces, and noted. Never throws. */
export function readTube(text: string, reading: Reading): Read<number> {
  const typed = withoutHidden(text.trim(), ' ').slice(0, 60);
  const match =
    /^(?<figure>\d+(?:[.,]\d+)*) ?(?<unit>(?:us )?(?:fl\.? ?)?oz\.?|fluid ounces?|ounces?|ml|cc|l(?:it(?:re|er)s?)?)?$/.exec(
      plainSigns(typed),
    );
  const ratio = match?.groups?.figure ? figureOf(match.groups.figure, reading.habits) : undefined;
  const figure = ratio ? Number(ratio.top) / Number(ratio.bottom) : Number.NaN;
  const unit = match?.groups?.unit;
  const size =
    unit === undefined || /o/.test(unit) ? 1 : /^l/.test(unit) ? 1000 / ML_PER_FLUID_OUNCE : 1 / ML_PER_FLUID_OUNCE;
  const ounces = figure * size;
  if (!(ounces >= 1 && ounces <= 100)) return unread(notATube({ option: reading.option, got: typed }));
  if (unit === undefined) reading.note(tubeRead(typed));
  return read(ounces);
}

/** Texts with figures that differ by units: both are written in the text, and the pipeline picks one for the request. */

const [START, MIDDLE, END] = ['\u0002', '\u0003', '\u0004'];
const EITHER = new RegExp(`${START}([^${START}-${END}]*)${MIDDLE}([^${START}-${END}]*)${END}`, 'g');

/** Both wordings, between control characters that no typed text keeps; `inUnits` picks one. */
export function byUnits(imperial: string, metric: string): string {
  return `${START}${imperial}${MIDDLE}${metric}${END}`;
}

/** Plain data with one wording in every text; unchanged parts are returned as they are. */
export function inUnits<T>(value: T, units: 'imperial' | 'metric'): T;
export function inUnits(value: unknown, units: 'imperial' | 'metric'): unknown {
  if (typeof value === 'string')
    return value.includes(END) ? value.replace(EITHER, units === 'metric' ? '$2' : '$1') : value;
  if (Array.isArray(value)) {
    const items = value.map((item: unknown) => inUnits(item, units));
    return items.some((item, i) => item !== value[i]) ? items : value;
  }
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  const entries = Object.entries(value).map(([key, item]) => [key, item, inUnits(item, units)] as const);
  if (entries.every(([, before, after]) => before === after)) return value;
  return Object.fromEntries(entries.map(([key, , after]) => [key, after]));
}

/** Option values to be said in the units requested, whatever they were typed in; unchanged for undefined. */
export function withUnits<Values extends Readonly<Record<string, unknown>>>(
  values: Values,
  units: 'imperial' | 'metric' | undefined,
): Values {
  if (units === undefined) return values;
  const said = Object.entries(values).map(([option, value]) => {
    const typedIn = typeof value === 'object' && value !== null && 'units' in value;
    return [option, typedIn ? { ...value, units } : value];
  });
  return Object.fromEntries(said) as Values;
}

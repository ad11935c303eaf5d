/** JSON bent at random as no client sends it: values of other kinds, missing, repeated, deep and long; the same for the same seed. */

/** Draws: a number from 0 to below 1, and one of several. */
export interface Draw {
  /** Set once something was bent or damaged. */
  bent: boolean;
  random(): number;
  pick<T>(items: readonly [T, ...T[]]): T;
}

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

const DEPTH = 3_000;

/** One value of a body replaced, removed or moved. */
export function bent(value: unknown, draw: Draw): Json {
  draw.bent = true;
  return bend(value as Json, draw, 1 + Math.floor(draw.random() * 3));
}

function bend(value: Json, draw: Draw, steps: number): Json {
  if (steps === 0) return value;
  if (typeof value !== 'object' || value === null || draw.random() < 0.15) return odd(value, draw);
  const entries = Object.entries(value);
  if (entries.length === 0) return odd(value, draw);
  const at = Math.floor(draw.random() * entries.length);
  const [key = '', inner = null] = entries[at] ?? [];
  const changed = draw.random() < 0.2 ? undefined : bend(inner, draw, draw.random() < 0.6 ? steps : steps - 1);
  if (Array.isArray(value)) {
    const list: readonly Json[] = value;
    return changed === undefined ? list.filter((_, i) => i !== at) : list.map((one, i) => (i === at ? changed : one));
  }
  const rest = Object.fromEntries(entries.filter(([name]) => name !== key));
  return changed === undefined ? rest : { ...rest, [draw.random() < 0.1 ? `${key}x` : key]: changed };
}

function odd(value: Json, { random, pick }: Draw): Json {
  return pick<() => Json>([
    () => null,
    () => [],
    () => ({}),
    () => -1,
    () => 1e308,
    () => '',
    () => 'x'.repeat(Math.floor(random() * 20_000)),
    () => '\ud800',
    () => '__proto__',
    () => [value, value, value],
    () => ({ type: value, id: value, value, constructor: value }),
    () => true,
    deep,
  ])();
}

function deep(): Json {
  let value: Json = 'bottom';
  for (let i = 0; i < DEPTH; i++) value = i % 2 ? [value] : { options: value };
  return value;
}

/** Some bytes of a body changed, cut or doubled: JSON and UTF-8 no more, mostly. */
export function damaged(bytes: Uint8Array, draw: Draw): Uint8Array<ArrayBuffer> {
  const { random } = draw;
  draw.bent = true;
  const at = Math.floor(random() * (bytes.length + 1));
  const kind = random();
  if (kind < 0.3) return Uint8Array.from(bytes.slice(0, at));
  if (kind < 0.5) return Uint8Array.from([...bytes.slice(0, at), ...bytes.slice(Math.max(0, at - 50))]);
  const copy = Uint8Array.from(bytes);
  for (let i = 0; i < 1 + random() * 6; i++) copy[Math.floor(random() * copy.length)] = Math.floor(random() * 256);
  return copy;
}

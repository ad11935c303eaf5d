/** Ids seen by this process, as many as could come again. */

/** Deliveries come again within the hour, nearly all within minutes: a few hundred bytes each, and never more than so many. */
const REMEMBERED = 20_000;

/** Tells whether an id is new, and remembers it. */
export function freshIds(): (id: string) => boolean {
  const ids = new Set<string>();
  return (id) => {
    if (ids.has(id)) return false;
    ids.add(id);
    const [oldest] = ids;
    if (ids.size > REMEMBERED && oldest !== undefined) ids.delete(oldest);
    return true;
  };
}

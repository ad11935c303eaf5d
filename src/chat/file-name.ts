/** Names of files, made from titles. */

const LONGEST = 60;

/** A title in small letters, figures and hyphens; empty where it has none. */
export function fileStem(title: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .match(/[a-z0-9]+/g);
  return (words ?? []).join('-').slice(0, LONGEST).replace(/-$/, '');
}

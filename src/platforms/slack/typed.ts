/** What a person typed, out of what Slack sends: its tags and entities undone, our own name taken off the front. */

import { Buffer } from 'node:buffer';

const TAG = /<([^<>]*)>/g;
/** Where something is shared, a member is told by their id: a name may be anybody's. */
const SHARING = /\b(?:un)?shar(?:e|ed|ing)\b|\b(?:let|send|give|show) +<@/i;
const MEMBER = /^<@([UW][A-Z0-9]+)(?:\|[^<>]*)?>$/;

const ENTITY: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&amp;': '&' };

/** The text as typed, empty where there is none; `bot` is our own user id, whose mention is no part of the ask. */
export function typedText(told: unknown, bot?: string): string {
  // Half a character, as JSON can hold one, could be sent back to nobody.
  const raw = typeof told === 'string' ? Buffer.from(told).toString() : '';
  const sharing = SHARING.test(raw);
  const untagged = raw.replace(TAG, (tag, inner: string) => {
    const member = sharing ? MEMBER.exec(tag)?.[1] : undefined;
    return member === undefined || member === bot ? tagText(inner, bot) : `<@${member}>`;
  });
  const text = untagged
    .replace(/&(?:lt|gt|amp);/g, (entity) => ENTITY[entity] ?? entity)
    .replace(/\u00a0/g, ' ')
    .replace(/[\u200b\u2060\ufeff]/g, '')
    .trim();
  return withoutName(withoutCode(text)).trim();
}

/** A user, channel, group, date or link as its reader saw it. */
function tagText(inner: string, bot: string | undefined): string {
  const bar = inner.indexOf('|');
  const target = bar < 0 ? inner : inner.slice(0, bar);
  const label = bar < 0 ? '' : inner.slice(bar + 1);
  if (target === `@${bot}`) return ' ';
  if (target.startsWith('@') || target.startsWith('#')) {
    return label === '' ? target : `${target.charAt(0)}${label.replace(/^[@#]/, '')}`;
  }
  if (target.startsWith('!')) return label === '' ? `@${target.slice(1).split('^')[0]}` : label;
  return label === '' ? target.replace(/^(?:mailto|tel):/, '') : label;
}

/** Without the marks of a piece of code round the whole of it, as an ask copied from help has. */
function withoutCode(text: string): string {
  const code = /^(`{3}|`)([\s\S]*)\1$/.exec(text)?.[2];
  return code === undefined || code.includes('`') ? text : code.trim();
}

/** Without the command that starts an ask in a channel, typed out of habit. */
function withoutName(text: string): string {
  return text.replace(/^[\s:,]+/, '').replace(/^\/?floorhand(?![\p{L}-])[\s:,]*/iu, '');
}

/** The contract of renderers, for every platform that has one. */

import { sectionsOf } from '../../src/chat/brief.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { renderSections as discordSections, render as renderDiscord } from '../../src/platforms/discord/render.ts';
import {
  drawingsOf,
  renderSection,
  render as renderSlack,
  type SlackMessage,
} from '../../src/platforms/slack/render.ts';
import { pictureFile } from '../../src/platforms/slack/send.ts';
import { render as renderTerminal } from '../../src/platforms/terminal/render.ts';
import { render as renderPage } from '../../src/platforms/web/render.ts';
import { discordWords } from '../discord/words.ts';
import { slackWords } from '../slack/words.ts';
import { pageWords } from '../web/page-words.ts';
import { rendererContract } from './renderer-contract.ts';

rendererContract({
  name: 'the terminal',
  shows: 'all',
  // Narrow, where tables are lists: a wrapped cell of a table stands in pieces between its neighbours'.
  tell: (answer) => ({ shown: renderTerminal(answer, { width: 46, colour: false }), reachable: '' }),
});

rendererContract({
  name: 'Slack',
  shows: 'the brief',
  tell: (answer) => {
    const words = (messages: readonly SlackMessage[]): string =>
      messages.map(({ blocks }) => slackWords(blocks)).join(' ');
    return {
      shown: words(renderSlack(answer, { id: 'abcdefghijk' })),
      reachable: 'headline' in answer ? parts(answer, words) : '',
    };
  },
});

rendererContract({
  name: 'Discord',
  shows: 'the brief',
  tell: (answer) => {
    const behind =
      'headline' in answer ? sectionsOf(answer).flatMap(({ id }) => discordSections(answer, id) ?? []) : [];
    return { shown: discordWords(renderDiscord(answer)), reachable: discordWords(behind) };
  },
});

rendererContract({
  name: 'the share page',
  shows: 'all',
  tell: (answer) => {
    const made = renderPage(answer);
    // Nothing in an answer is waited for: only then are the pieces of a page put together at once.
    if (made instanceof Promise) throw new Error('a piece of a page that is waited for');
    return { shown: pageWords(`${made}`), reachable: '' };
  },
});

/** What the buttons bring: sections, the pictures as files, and what is too long as one text. */
function parts(
  reply: Extract<Answer, { readonly headline: string }>,
  words: (messages: readonly SlackMessage[]) => string,
): string {
  const each = sectionsOf(reply).map(({ id }) => words(renderSection(reply, id) ?? []));
  const pictures = drawingsOf(reply).map(({ drawing }) => pictureFile(drawing, Buffer.alloc(0)));
  const given = pictures.flatMap(({ title, alt = '' }) => [title, alt]);
  return [...each, ...given].join(' ');
}

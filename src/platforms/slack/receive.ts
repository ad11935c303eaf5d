/** What people do in Slack, out of Bolt's events: commands, buttons, forms, shortcuts, mentions, direct messages, the Home tab. */

import type { App, BlockAction, Context, KnownEventFromType, webApi } from '@slack/bolt';
import { accountKey } from '../../accounts/records.ts';
import { faultReference } from '../../chat/request-id.ts';
import { Outage } from '../../storage/types.ts';
import { SLACK, sayFault } from '../../text/chat-text.ts';
import { onBehalfOf } from '../../workers/queue.ts';
import { answerAsk, answerOrForm, openForm, typedText, widenForm } from './ask.ts';
import { doneView, FORM, MORE_FIELDS, submitted, widened } from './forms.ts';
import { openHome, pressHome, publishHome } from './home-tab.ts';
import { isDirect, Unsent } from './post.ts';
import { press } from './press.ts';
import { GLOBAL_SHORTCUT, MESSAGE_SHORTCUT } from './register.ts';
import { bringMissed, noteUnsent, tell, welcome } from './send.ts';
import type { Party, ResponseUrl, SlackPorts, Where } from './types.ts';

// One thing somebody did in Slack, acted on once, whatever comes of it: nothing is left in silence.

/** Slack repeats an event for about an hour at most. */
const SEEN_MILLISECONDS = 2 * 3_600_000;

/** What was done: its own id in Slack, and whether Slack says that it is a repetition. */
interface Deed {
  readonly id: string;
  readonly repeated?: boolean;
}

/** Lets the answer to Slack go out first: no sum begins before it. */
function nextTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

/**
 * Whether a deed is to be acted on: true for one delivery of it, in whatever process. The store is waited for only where it can
 * know better than this process: another one shares it, or Slack says that this is a repetition, from before a restart perhaps.
 */
async function firstTime({ id, repeated }: Deed, ports: SlackPorts): Promise<boolean> {
  if (!ports.isFresh(id)) return false;
  const claim = async (): Promise<boolean> => {
    try {
      return await ports.kept.claim(`slack:seen:${id}`, SEEN_MILLISECONDS);
    } catch (cause) {
      // Without the store a first delivery is still answered, and a repetition is not: twice would be worse than once.
      if (!(cause instanceof Outage)) ports.fault('slack', cause);
      return repeated !== true;
    }
  };
  if (ports.shared || repeated) return claim();
  ports.later(claim());
  return true;
}

/** Acts once; what goes wrong is told to whoever runs the bot and, by its reference, to the asker. Never rejects. */
async function act(permission: Deed, party: Party, ports: SlackPorts, work: () => Promise<unknown>): Promise<void> {
  if (!(await firstTime(permission, ports))) return;
  ports.acting.add(party);
  try {
    await onBehalfOf(accountKey(party.asker), work);
    // The request is answered: an earlier answer that can't be brought now is only for the log.
    await bringMissed(party, ports).catch((cause) => {
      if (!(cause instanceof Outage)) ports.fault('slack', cause);
    });
  } catch (cause) {
    const reference = faultReference();
    ports.fault(reference, cause);
    // Where no way was left for the answer there is none for this either: it comes with their next request.
    if (cause instanceof Unsent) return noteUnsent(cause, party, ports);
    try {
      await tell(sayFault(reference, cause instanceof Outage), party, ports);
    } catch (again) {
      ports.fault(reference, again);
      if (again instanceof Unsent) await noteUnsent(again, party, ports);
    }
  } finally {
    ports.acting.delete(party);
  }
}

/** The command whose form a shortcut from anywhere opens. */
const START = 'floor planks';

/** Puts our listeners on a Bolt app. Each tells Slack at once that it has heard, and only then begins to work. */
export function receive(app: App, ports: SlackPorts): void {
  app.command(/./, async ({ ack, command, context, client, body }) => {
    await ack();
    await nextTurn();
    const response = responseOf(command.response_url, ports);
    const party = partyOf(context, client, { user: command.user_id, channel: command.channel_id, response });
    await act({ id: body.trigger_id, ...repeated(context) }, party, ports, () => {
      const text = typedText(command.text, context.botUserId);
      return answerOrForm(text === '' ? 'help' : text, command.trigger_id, party, ports);
    });
  });

  app.action<BlockAction>(/./, async ({ ack, action, body, context, client }) => {
    await ack();
    await nextTurn();
    const party = partyOf(context, client, pressedAt(body, ports));
    if (body.view?.type === 'modal') {
      const { id: view_id, hash } = body.view;
      const view = action.action_id === MORE_FIELDS ? widened(body.view, ports) : undefined;
      await act({ id: body.trigger_id, ...repeated(context) }, party, ports, async () =>
        view ? widenForm({ view_id, hash, view }, party, ports) : tell(SLACK.formStale, party, ports),
      );
      return;
    }
    const value =
      action.type === 'static_select' ? action.selected_option?.value : 'value' in action ? action.value : '';
    const pressed = {
      action: action.action_id,
      value: typeof value === 'string' ? value : '',
      ticked: action.type === 'checkboxes' ? action.selected_options.flatMap((one) => one.value ?? []) : [],
      trigger: body.trigger_id,
    };
    await act({ id: body.trigger_id, ...repeated(context) }, party, ports, async () => {
      const there = body.view?.type === 'home' && (await pressHome(pressed, party, ports));
      if (!there) await press(pressed, party, ports);
    });
  });

  app.view(FORM, async ({ ack, view, body, context, client }) => {
    const form = submitted(view, ports);
    if ('errors' in form) return ack({ response_action: 'errors', errors: form.errors });
    // Where it was opened from nowhere in particular, nobody would see that the answer has come.
    if (form.ask && form.where.channel === undefined) await ack({ response_action: 'update', view: doneView() });
    else await ack();
    await nextTurn();
    const party = partyOf(context, client, { ...form.where, user: body.user.id });
    await act({ id: `${view.id}:${view.hash}`, ...repeated(context) }, party, ports, () =>
      form.ask === undefined ? tell(SLACK.formStale, party, ports) : answerAsk(form.ask, party, ports),
    );
    // Whoever filled it in on the Home tab is still there.
    if (form.ask && party.where.channel === undefined) {
      await publishHome(party, ports).catch((cause) => ports.fault('slack', cause));
    }
  });

  app.shortcut(
    { type: 'message_action', callback_id: MESSAGE_SHORTCUT },
    async ({ ack, shortcut, context, client }) => {
      await ack();
      await nextTurn();
      if (shortcut.type !== 'message_action') return;
      const { thread_ts } = shortcut.message as { readonly thread_ts?: unknown };
      const where = {
        user: shortcut.user.id,
        channel: shortcut.channel.id,
        thread: typeof thread_ts === 'string' ? thread_ts : undefined,
        response: responseOf(shortcut.response_url, ports),
      };
      const party = partyOf(context, client, where);
      await act({ id: shortcut.trigger_id, ...repeated(context) }, party, ports, () => {
        const text = typedText(shortcut.message.text ?? '', context.botUserId);
        return text === '' ? tell(SLACK.noAsk, party, ports) : answerAsk({ text, written: 'message' }, party, ports);
      });
    },
  );

  app.shortcut({ type: 'shortcut', callback_id: GLOBAL_SHORTCUT }, async ({ ack, shortcut, context, client }) => {
    await ack();
    await nextTurn();
    const party = partyOf(context, client, { user: shortcut.user.id });
    await act({ id: shortcut.trigger_id, ...repeated(context) }, party, ports, async () => {
      const form = { command: START, told: {} };
      if (!(await openForm(form, shortcut.trigger_id, party, ports))) await tell(SLACK.formLate, party, ports);
    });
  });

  app.event('app_mention', async ({ event, body, context, client }) => {
    await nextTurn();
    if (event.user === undefined || event.bot_id !== undefined) return;
    // Its answer begins a thread, unless it stands in one.
    const said = { ...event, user: event.user, thread_ts: event.thread_ts ?? event.ts, open: true };
    await message(said, body.event_id, context, client, ports);
  });

  app.event('message', async ({ event, body, context, client }) => {
    await nextTurn();
    const said = event.channel_type === 'im' ? saidIn(event) : undefined;
    if (said) await message(said, body.event_id, context, client, ports);
  });

  app.event('app_home_opened', async ({ event, body, context, client }) => {
    await nextTurn();
    const party = partyOf(context, client, { user: event.user, channel: event.channel });
    await act({ id: body.event_id, ...repeated(context) }, party, ports, () =>
      event.tab === 'home' ? openHome(party, ports) : welcome(party, ports),
    );
  });
}

interface Said {
  readonly user: string;
  readonly text: string;
  readonly channel: string;
  readonly thread_ts?: string | undefined;
  /** Whether everybody in the channel reads it. */
  readonly open?: boolean;
  /** Whether there is a picture in it, which nobody here can read. */
  readonly picture?: boolean;
}

/** Kinds of messages that people write, without knowing that they are of a kind. */
const WRITTEN: readonly unknown[] = [undefined, 'file_share', 'thread_broadcast', 'me_message'];

/** What a person wrote in a direct message, or made of it later; undefined for a bot's, and where nothing in it changed. */
function saidIn(event: KnownEventFromType<'message'>): Said | undefined {
  if (event.subtype === 'message_changed') {
    const [now, before] = [event.message, event.previous_message];
    const words = (one: object | undefined): unknown => one && 'text' in one && one.text;
    if (now.subtype === 'message_changed' || words(now) === words(before)) return undefined;
    return saidIn({ ...now, channel: event.channel, channel_type: event.channel_type } as typeof now);
  }
  if (!WRITTEN.includes(event.subtype) || !('user' in event) || typeof event.user !== 'string') return undefined;
  if ('bot_id' in event && event.bot_id !== undefined) return undefined;
  const text = 'text' in event ? (event.text ?? '') : '';
  const thread_ts = 'thread_ts' in event ? event.thread_ts : undefined;
  return { user: event.user, text, channel: event.channel, thread_ts, picture: event.subtype === 'file_share' };
}

/** A direct message, or a mention: read like a command, answered where it stands. */
async function message(
  { user, text, channel, thread_ts, open, picture }: Said,
  id: string,
  context: Context,
  client: webApi.WebClient,
  ports: SlackPorts,
): Promise<void> {
  const party = partyOf(context, client, { user, channel, thread: thread_ts, open });
  await act({ id, ...repeated(context) }, party, ports, () => {
    const ask = typedText(text, context.botUserId);
    if (ask === '' && picture) return tell(SLACK.noPictures, party, ports);
    return answerAsk({ text: ask === '' ? 'help' : ask }, party, ports);
  });
}

/** Who acts: their account is the workspace's and their id, never a name. */
function partyOf(context: Context, client: webApi.WebClient, where: Where): Party {
  const workspace = context.teamId ?? context.enterpriseId;
  const asker = { platform: 'slack', id: where.user, ...(workspace === undefined ? {} : { workspace }) } as const;
  return { asker, client, where, bot: context.botUserId };
}

function responseOf(url: string | undefined, { now }: SlackPorts): ResponseUrl | undefined {
  return url === undefined || url === '' ? undefined : { url, since: now(), used: 0 };
}

/** Where a pressed button stands: what everybody reads is answered in its thread, the rest where it is. */
function pressedAt(
  { user, channel, container, message: pressed, response_url }: BlockAction,
  ports: SlackPorts,
): Where {
  const text = (one: unknown): string | undefined => (typeof one === 'string' ? one : undefined);
  const ts = text(container.message_ts);
  const open = channel !== undefined && !isDirect(channel.id) && container.is_ephemeral !== true && ts !== undefined;
  const within = text(container.thread_ts) ?? text(pressed?.thread_ts);
  return {
    user: user.id,
    channel: channel?.id,
    thread: within ?? (open ? ts : undefined),
    ...(open && { open }),
    pressed: { ts },
    response: responseOf(response_url, ports),
  };
}

function repeated({ retryNum }: Context): { readonly repeated?: boolean } {
  return retryNum === undefined ? {} : { repeated: retryNum > 0 };
}

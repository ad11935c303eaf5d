/** The way out: first responses, edits and further messages, by Discord's REST interface. */

import { API } from '@discordjs/core/http-only';
import type { RawFile, REST } from '@discordjs/rest';
import {
  type APIApplicationCommandOptionChoice,
  type APIAttachment,
  type APIMessageTopLevelComponent,
  type APIModalInteractionResponseCallbackData,
  MessageFlags,
  type RESTAPIAttachment,
  type RESTAPIPoll,
} from 'discord-api-types/v10';
import type { Came } from './came.ts';

/** A message as it is sent. Files are new; `attachments` lists them, and those of before that stay. */
export interface Outgoing {
  readonly components: readonly APIMessageTopLevelComponent[];
  readonly attachments: readonly RESTAPIAttachment[];
  readonly files: readonly RawFile[];
}

/** How a first response goes: a message of its own, or in place of the one whose button was pressed. */
export interface Way {
  readonly ephemeral: boolean;
  readonly update: boolean;
}

/** Every call rejects with what Discord refused it with. */
export interface Wire {
  /** The first response; gives the attachments of the message where they are asked for. */
  respond(to: Came, message: Outgoing, way: Way, attachments: boolean): Promise<readonly APIAttachment[]>;
  /** Says that an answer is on its way. */
  defer(to: Came, way: Way): Promise<void>;
  modal(to: Came, modal: APIModalInteractionResponseCallbackData): Promise<void>;
  choices(to: Came, choices: readonly APIApplicationCommandOptionChoice<string>[]): Promise<void>;
  poll(to: Came, poll: RESTAPIPoll): Promise<void>;
  /** Puts a message in place of the first response. */
  edit(to: Came, message: Outgoing): Promise<void>;
  followUp(to: Came, message: Outgoing, ephemeral: boolean): Promise<void>;
}

/** Nobody is ever pinged by an answer. */
const NOBODY = { parse: [] };

/** The wire over a REST client: the gateway's own, or one that only has the HTTP interface. */
export function wireOf(rest: REST): Wire {
  const { interactions } = new API(rest);
  return {
    async respond(to, message, { ephemeral, update }, attachments) {
      const body = { ...bodyOf(message), flags: flagsOf(update ? false : ephemeral) };
      const response = update
        ? await interactions.updateMessage(to.id, to.token, { ...body, with_response: attachments })
        : await interactions.reply(to.id, to.token, { ...body, with_response: attachments });
      return response?.resource?.message?.attachments ?? [];
    },
    async defer(to, { ephemeral, update }) {
      if (update) await interactions.deferMessageUpdate(to.id, to.token);
      else await interactions.defer(to.id, to.token, ephemeral ? { flags: MessageFlags.Ephemeral } : undefined);
    },
    async modal(to, modal) {
      await interactions.createModal(to.id, to.token, modal);
    },
    async choices(to, choices) {
      await interactions.createAutocompleteResponse(to.id, to.token, { choices: [...choices] });
    },
    async poll(to, poll) {
      await interactions.reply(to.id, to.token, { poll, allowed_mentions: NOBODY });
    },
    async edit(to, message) {
      await interactions.editReply(to.application, to.token, { ...bodyOf(message), flags: flagsOf(false) });
    },
    async followUp(to, message, ephemeral) {
      await interactions.followUp(to.application, to.token, { ...bodyOf(message), flags: flagsOf(ephemeral) });
    },
  };
}

function bodyOf({ components, attachments, files }: Outgoing) {
  return {
    components: [...components],
    attachments: [...attachments],
    files: [...files],
    allowed_mentions: NOBODY,
  };
}

function flagsOf(ephemeral: boolean): number {
  return ephemeral ? MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral : MessageFlags.IsComponentsV2;
}

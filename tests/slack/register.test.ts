/** The manifest: by the rules of Slack's published manifest schema (slackapi/manifest-schema, version 2), and no right too many. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import { generatedFiles } from '../../deploy/tools/generated-files.ts';
import { EVENTS, manifestOf, manifestYaml, SCOPES } from '../../src/platforms/slack/register.ts';

const text = (most: number, least = 1) => z.string().min(least).max(most);
const url = text(3500).regex(/^https?:\/\//);

/** Lengths, patterns and fields of the definitions display_information, features.*, oauth_config.* and settings.*. */
const MANIFEST_RULES = z.strictObject({
  display_information: z.strictObject({
    name: text(35),
    description: text(140),
    background_color: z.string().regex(/^#[0-9a-f]{3}([0-9a-f]{3})?$/i),
    long_description: text(4000, 175),
  }),
  features: z.strictObject({
    app_home: z.strictObject({
      home_tab_enabled: z.boolean(),
      messages_tab_enabled: z.boolean(),
      messages_tab_read_only_enabled: z.boolean(),
    }),
    bot_user: z.strictObject({ display_name: text(80), always_online: z.boolean() }),
    shortcuts: z
      .array(
        z.strictObject({
          name: text(24),
          type: z.enum(['message', 'global']),
          callback_id: text(255),
          description: text(150),
        }),
      )
      .min(1)
      .max(5),
    slash_commands: z
      .array(
        z.strictObject({
          command: text(32, 2).regex(/^\//),
          url: text(3000)
            .regex(/^https?:\/\//)
            .optional(),
          description: text(2000),
          usage_hint: text(1000),
          should_escape: z.boolean(),
        }),
      )
      .min(1)
      .max(5),
  }),
  oauth_config: z.strictObject({
    redirect_urls: z.array(text(2500)).max(1000).optional(),
    scopes: z.strictObject({ bot: z.array(text(50)).max(255) }),
  }),
  settings: z.strictObject({
    event_subscriptions: z.strictObject({ request_url: url.optional(), bot_events: z.array(text(50)).max(100) }),
    interactivity: z.strictObject({ is_enabled: z.boolean(), request_url: url.optional() }),
    org_deploy_enabled: z.boolean(),
    socket_mode_enabled: z.boolean(),
    token_rotation_enabled: z.boolean(),
  }),
});

describe('the manifest', () => {
  it.each([[undefined], ['https://floorhand.example']])('keeps Slack’s rules, reached at %s', (address) => {
    expect(MANIFEST_RULES.safeParse(manifestOf(commands, address)).error?.issues).toBeUndefined();
  });

  it('needs an address for HTTP and none for Socket Mode', () => {
    expect(JSON.stringify(manifestOf(commands))).not.toContain('http');
    const given = JSON.stringify(manifestOf(commands, 'https://floorhand.example'));
    expect(given.match(/https:\/\/floorhand\.example\/slack\/events/g)).toHaveLength(3);
  });

  it('names every command in its hint as far as there is room', () => {
    expect(manifestYaml(commands)).toContain('floor planks | floor estimate');
  });

  it('says beside each right and event what it is for', () => {
    const yaml = manifestYaml(commands);
    for (const { scope, why } of SCOPES) expect(yaml).toContain(`- "${scope}" # ${why}`);
    for (const { event, why } of EVENTS) expect(yaml).toContain(`- "${event}" # ${why}`);
  });

  it('asks for the rights of the methods that are called, and no others', () => {
    const sources = readdirSync('src/platforms/slack')
      .map((file) => readFileSync(`src/platforms/slack/${file}`, 'utf8'))
      .join('\n');
    const methods = new Set(
      [...sources.matchAll(/client\.((?:chat|files|views|conversations|users)\.\w+)/g)].map(([, name]) => name),
    );
    // Rights by method as Slack's method pages tell them; views need none.
    const needs: Readonly<Record<string, string | undefined>> = {
      'chat.postMessage': 'chat:write',
      'chat.postEphemeral': 'chat:write',
      'chat.update': 'chat:write',
      'files.getUploadURLExternal': 'files:write',
      'files.completeUploadExternal': 'files:write',
      'views.open': undefined,
      'views.publish': undefined,
      'views.update': undefined,
    };
    expect([...methods].sort()).toEqual(Object.keys(needs).sort());
    const byEvent = ['app_mentions:read', 'im:history'];
    const wanted = new Set(['commands', ...byEvent, ...Object.values(needs).filter((scope) => scope !== undefined)]);
    expect(SCOPES.map(({ scope }) => scope).sort()).toEqual([...wanted].sort());
  });

  it('is YAML that says what the data says', () => {
    // Texts are in double quotes, so that a line is a key, a dash, or both, before a value that JSON reads.
    for (const { path, text: yaml } of generatedFiles()) {
      if (!path.endsWith('.yaml')) continue;
      for (const line of yaml.split('\n').filter((one) => one !== '' && !one.startsWith('#'))) {
        const [, value = ''] = /^ *(?:- )?(?:[a-z_]+:(?: |$)|- |(?="))(.*?)(?: # [^"]*)?$/.exec(line) ?? ['', 'x'];
        if (value !== '') expect(() => JSON.parse(value)).not.toThrow();
      }
    }
  });
});

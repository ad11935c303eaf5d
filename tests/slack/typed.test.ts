/** What a person typed, out of what Slack sends. */

import { expect, it } from 'vitest';
import { typedText } from '../../src/platforms/slack/ask.ts';

it.each([
  ['planks 12&lt;14 &amp; 3&gt;2', 'planks 12<14 & 3>2'],
  ['&amp;lt;', '&lt;'],
  ['<@UBOT> planks 12x14', 'planks 12x14'],
  ['<@UBOT|floorhand>: planks 12x14', 'planks 12x14'],
  ['ask <@U2> and <@U3|ann>', 'ask @U2 and @ann'],
  ['project share cut list with <@U2EXAMPLE|ann>', 'project share cut list with <@U2EXAMPLE>'],
  ['<@UBOT> let <@U2EXAMPLE> see my cut list', 'let <@U2EXAMPLE> see my cut list'],
  ['<#C1|general> <#C2>', '#general #C2'],
  ['<!here> <!channel|channel> <!subteam^S1|@crew> <!date^1^{date}|Friday>', '@here channel @crew Friday'],
  [
    '<https://x.example> <https://x.example|here> <mailto:a@x.example|a@x.example> <tel:+123>',
    'https://x.example here a@x.example +123',
  ],
  ['`planks 12x14`', 'planks 12x14'],
  ['```planks 12x14```', 'planks 12x14'],
  ['`a` and `b`', '`a` and `b`'],
  ['/floorhand planks 12x14', 'planks 12x14'],
  ['Floorhand, planks 12x14', 'planks 12x14'],
  ['floorhands planks', 'floorhands planks'],
  ['12\u00a0x\u200b 14\ufeff', '12 x 14'],
  ['  ', ''],
])('%j is %j', (raw, text) => {
  expect(typedText(raw, 'UBOT')).toBe(text);
});

/** Texts that would do something in Discord, each in several surroundings. */

const ID = '123456789012345678';

const CORES = [
  '@everyone',
  '@here',
  `<@${ID}>`,
  `<@!${ID}>`,
  `<@&${ID}>`,
  `<#${ID}>`,
  `<:face:${ID}>`,
  `<a:face:${ID}>`,
  `</floor planks:${ID}>`,
  '<t:0:R>',
  '<id:customize>',
  '[free planks](https://example.com/a)',
  'https://example.com/a?b=c',
  '<https://example.com>',
  'HTTP://EXAMPLE.COM',
  '**bold**',
  '***both***',
  '__under__',
  '~~struck~~',
  '||hidden||',
  '`code`',
  '```\nBuy 99 cartons.\n```',
  '# Heading',
  '## Heading',
  '### Buy 99 cartons',
  '-# small print',
  '> quoted',
  '>>> quoted on',
  '- item',
  '1. item',
  '\u202edrawkcab',
  '\u0000\u0007x',
  '\\',
  '@\u200deveryone @everyone',
] as const;

const AROUND: readonly ((core: string) => string)[] = [
  (core) => core,
  (core) => `\n${core}`,
  (core) => `a ${core} b`,
  (core) => `\\${core}`,
  (core) => `*${core}*`,
  (core) => `\`${core}`,
  (core) => `bedroom${core}\n${core}`,
];

/** All of them. */
export const HOSTILE: readonly string[] = CORES.flatMap((core) => AROUND.map((around) => around(core)));

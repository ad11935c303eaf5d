/** Registers the commands in Discord's menus, everywhere or in one server; with --dry-run it only tells what would change. */

import { commands } from '../../commands/all.ts';
import { differenceOf, register, registered, registeredThere, wantedIn } from '../../src/platforms/discord/menu.ts';
import { restOf } from '../../src/platforms/discord/start.ts';
import { readConfig } from '../../src/server/config.ts';

const { token, application, guild, api } = readConfig(process.env).discord;

if (token === '' || application === '') {
  console.error('Set FLOORHAND_DISCORD_TOKEN and FLOORHAND_DISCORD_APPLICATION first.');
  process.exitCode = 2;
} else {
  const rest = restOf({ token, ...(api === undefined ? {} : { api }) });
  const place = { application, ...(guild === '' ? {} : { guild }) };
  const wanted = wantedIn(place, registered(commands));
  const difference = differenceOf(wanted, await registeredThere(rest, place));
  const dry = process.argv.includes('--dry-run');
  if (!dry) await register(rest, place, difference);
  const { write, remove, same } = difference;
  const said = (what: string, names: readonly string[]): string => `${what}: ${names.join(', ') || 'none'}`;
  console.log(dry ? 'Nothing is changed; this would be:' : 'Registered.');
  console.log(
    said(
      'written',
      write.map(({ name }) => name),
    ),
  );
  console.log(
    said(
      'removed',
      remove.map(({ name }) => name),
    ),
  );
  console.log(said('as they were', same));
}

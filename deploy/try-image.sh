#!/usr/bin/env bash
# Does by hand what deploy/Dockerfile does, in a clean folder and as a user of no rights, and tries what comes of it with its
# tree read-only: deploy/try-image.sh. As root on Linux, with Node and npm; it takes away what it made.
set -euo pipefail
exec </dev/null
cd "$(dirname "$0")/.."

place=$(mktemp -d)
user="floorhand-try-$$"
bot=
tried=no
finish() {
  local status=$?
  [ -z "$bot" ] || kill -KILL "$bot" 2>/dev/null || true
  # What still runs in it must not keep it there.
  umount --lazy "$place/app" 2>/dev/null || true
  rm -rf "$place"
  userdel "$user" 2>/dev/null || true
  [ "$tried" = yes ] && echo 'image: all tried' || echo "image: not all tried ($status)"
}
trap finish EXIT
began=$SECONDS
step() { echo "$((SECONDS - began)) s: $1"; }
as_user() { runuser -u "$user" -- env -i PATH="$PATH" HOME=/nowhere "$@"; }

useradd --system --no-create-home --shell /usr/sbin/nologin "$user"
chmod 0755 "$place"

step 'the sources, as the build is given them'
mkdir "$place/build" "$place/app" "$place/data"
# What .dockerignore leaves out, git leaves out too.
git ls-files -z --cached --others --exclude-standard | tar --null --files-from=- -cf - | tar -xf - -C "$place/build"
chown -R "$user" "$place/build" "$place/data"
chmod 0700 "$place/data"

step 'npm ci and the build'
# npm wants a folder for its cache; one that is there already saves the network.
cache=${npm_config_cache:-$place/cache}
install -d -o "$user" "$place/cache"
in_build() { (cd "$place/build" && as_user npm_config_cache="$place/cache" "$@"); }
[ "$cache" = "$place/cache" ] || { cp -R "$cache/." "$place/cache/" && chown -R "$user" "$place/cache"; }
in_build npm ci --ignore-scripts --prefer-offline --no-progress >/dev/null
in_build node deploy/tools/build.mjs

step 'npm ci --omit=dev'
mkdir "$place/packages"
cp package.json package-lock.json .npmrc "$place/packages/"
chown -R "$user" "$place/packages"
(cd "$place/packages" && as_user npm_config_cache="$place/cache" npm ci --omit=dev --ignore-scripts --prefer-offline --no-progress >/dev/null)

step 'the tree of the image, read-only'
mkdir -p "$place/app/dist"
cp -R "$place/packages/node_modules" "$place/app/"
cp "$place/build/package.json" "$place/build/LICENSE" "$place/app/"
cp -R "$place/build/dist/src" "$place/build/dist/commands" "$place/build/dist/deploy" "$place/app/dist/"
rm -rf "$place/build" "$place/packages" "$place/cache"
chown -R root:root "$place/app"
if mount --bind "$place/app" "$place/app" 2>/dev/null && mount -o remount,bind,ro "$place/app"; then
  echo "  a read-only mount of $(du -sm "$place/app" | cut -f1) MB"
else
  chmod -R a-w "$place/app"
  echo "  write-protected, for no mount is allowed here; $(du -sm "$place/app" | cut -f1) MB"
fi
if as_user touch "$place/app/written" 2>/dev/null; then
  echo 'the tree can be written to'
  exit 1
fi

step 'an ask'
in_image() { (cd "$place/app" && as_user NODE_ENV=production FLOORHAND_DATA="$place/data" FLOORHAND_PICTURES="$place/data/pictures" "$@"); }
in_image node dist/src/main.js ask "tape 15'2 1/2\" - 2 x 4'0 3/8\"" | tee "$place/said"
grep -q "7' 1 3/4\"" "$place/said"
in_image node dist/src/main.js ask "planks room: 12' x 14', plank: 6 x 48 in, 10 per carton" | head -n 1
in_image node dist/src/main.js ask 'project new upstairs flat' | head -n 1

step 'a backup, and the same from it in another folder'
in_image node dist/deploy/tools/backup.js "$place/data/backup.jsonl"
mkdir "$place/data/other"
chown "$user" "$place/data/other"
in_image FLOORHAND_DATA="$place/data/other" node dist/deploy/tools/restore.js "$place/data/backup.jsonl"

step 'the bot by HTTP: ready, healthy, and ended by its signal'
port=$(node -e 'const s = require("node:net").createServer().listen(0, "127.0.0.1", () => { console.log(s.address().port); s.close(); })')
printf 'nobody-s-token\n' >"$place/token"
chmod 0644 "$place/token"
(
  cd "$place/app"
  # No shell stays between, as in the image.
  exec setpriv --reuid="$user" --regid="$user" --clear-groups --no-new-privs --bounding-set=-all \
    env -i PATH="$PATH" HOME=/nowhere NODE_ENV=production FLOORHAND_DATA="$place/data" FLOORHAND_PORT="$port" \
    FLOORHAND_DISCORD_TOKEN_FILE="$place/token" \
    FLOORHAND_DISCORD_PUBLIC_KEY="$(printf '00%.0s' $(seq 32))" \
    node dist/src/main.js
) >"$place/log" 2>&1 &
bot=$!
told() { node -e 'fetch(process.argv[1]).then(({ status }) => console.log(status), () => console.log("none"))' "http://127.0.0.1:$port$1"; }
for _ in $(seq 60); do
  [ "$(told /readyz)" = 200 ] && break
  kill -0 "$bot" || { cat "$place/log"; exit 1; }
  sleep 0.5
done
echo "  /healthz $(told /healthz), /readyz $(told /readyz), unsigned $(node -e 'fetch(process.argv[1], { method: "POST", body: "{}" }).then(({ status }) => console.log(status))' "http://127.0.0.1:$port/discord/interactions")"
[ "$(told /healthz)" = 200 ] && [ "$(told /readyz)" = 200 ]
kill -TERM "$bot"
ended=0
wait "$bot" || ended=$?
bot=
echo "  ended with $ended"
[ "$ended" -eq 0 ]

step 'nothing was written but data'
wrote=$(find "$place" -newer "$place/said" -not -path "$place/data*" -type f -not -name log -not -name said -not -name token)
[ -z "$wrote" ] || { echo "$wrote"; exit 1; }
tried=yes

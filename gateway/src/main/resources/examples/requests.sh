#!/bin/sh
# One heartbeat, and what is asked in its answer; run it each minute.
URL=@address@/api/v1
BOX=@box@
KEY='@key@'
KEPT=requests-done.txt

stop_site() {
  false # stop the site here; true once it has stopped
}

ANSWER=$(curl -s "$URL/heartbeats" -X POST -H "Authorization: Bearer $KEY")
part() { printf %s "$ANSWER" | sed -n 's/.*"'"$1"'": *"\([^"]*\)".*/\1/p'; }
ID=$(part id) ASK=$(part ask) EXPIRES=$(part expires) SIGNATURE=$(part signature)
[ -n "$ID" ] || exit 0

HMAC_KEY=$(printf %s "$KEY" | openssl dgst -sha256 -r | cut -d' ' -f1)
RIGHT=$(printf 'yardlight-request\n%s\n%s\n%s\n%s' "$BOX" "$ID" "$ASK" "$EXPIRES" |
  openssl dgst -sha256 -mac HMAC -macopt "hexkey:$HMAC_KEY" -binary | base64)
[ "$SIGNATURE" = "$RIGHT" ] && [ "$ASK" = shut-in ] || exit 1

touch "$KEPT"
if ! grep -q "^$ID " "$KEPT"; then
  NOW=$(date -u +%Y%m%d%H%M%S)
  [ "$NOW" -lt "$(printf %s "$EXPIRES" | tr -cd 0-9)" ] || exit 1
  echo "$ID begun" >> "$KEPT" && sync
  if stop_site; then echo "$ID @done@" >> "$KEPT"; else echo "$ID @refused@" >> "$KEPT"; fi
fi
SAID=$(grep "^$ID " "$KEPT" | tail -n 1 | cut -d' ' -f2)
[ "$SAID" = begun ] || curl -s "$URL/events" -H "Authorization: Bearer $KEY" \
  -d point=@point@ -d "condition=$SAID" -d state=active -d "request=$ID"

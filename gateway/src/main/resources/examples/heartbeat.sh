curl @address@/api/v1/heartbeats \
  -H 'Authorization: Bearer @key@' \
  -H 'Content-Type: application/json' \
  -d '{"uptime": 60, "battery": 12.7}'

curl @address@/api/v1/events \
  -H 'Authorization: Bearer @key@' \
  -d point=water-tank -d condition=high-high -d state=normal

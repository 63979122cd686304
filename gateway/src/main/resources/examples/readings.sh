curl @address@/api/v1/readings \
  -H 'Authorization: Bearer @key@' \
  -d point=water-tank -d value=12.4 -d unit=ft

curl @address@/api/v1/readings \
  -H 'Authorization: Bearer @key@' \
  -H 'Content-Type: application/json' \
  -d '[{"point": "separator", "value": 31.5, "unit": "psi"}, {"point": "injection-pump", "value": 1}]'

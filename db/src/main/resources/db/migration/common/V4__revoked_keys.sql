-- Each gateway asks once a second which keys were revoked of late.

create index if not exists box_key_by_revoked on box_key (revoked_at);

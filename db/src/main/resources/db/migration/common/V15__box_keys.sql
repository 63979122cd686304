-- When a key of a box ends and when it was last shown, and the signed posts that must not come a second time.

alter table box_key add column if not exists ends_at timestamp(6) with time zone;
alter table box_key add column if not exists used_at timestamp(6) with time zone;
create index if not exists box_key_by_ends on box_key (ends_at);

create table if not exists signed_post (
    key_id varchar(64) not null,
    nonce varchar(64) not null,
    forget_at timestamp(6) with time zone not null,
    primary key (key_id, nonce)
);
create index if not exists signed_post_by_forget on signed_post (forget_at);

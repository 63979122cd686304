-- The private calendar of a person: by which token it is read, as a hash. There is one for each contact, and none before
-- somebody asked for it.

create table if not exists calendar_feed (
    contact varchar(64) primary key,
    token_hash varchar(64) not null unique,
    made_by varchar(200) not null,
    made_at timestamp(6) with time zone not null
);

-- Who may sign in: which contact they are, whether their password has to be changed, who was invited, from where they
-- came before, and who is signed in.

alter table person add column if not exists contact varchar(64);
alter table person add column if not exists weak boolean default false not null;

-- Only the hash of the token that stands in the link is kept. Who used it is the login that came of it.
create table if not exists invitation (
    id varchar(64) primary key,
    token_hash varchar(64) not null,
    role varchar(16) not null,
    contact varchar(64),
    invited_by varchar(64) not null,
    invited_at timestamp(6) with time zone not null,
    expires_at timestamp(6) with time zone not null,
    used_at timestamp(6) with time zone,
    used_by varchar(64)
);
create unique index if not exists invitation_by_token on invitation (token_hash);

-- A browser, known by its cookie, or a program, known by its address; id is a hash of what it is known by. seen_at is
-- when an owner has said that they know of it; the first one of a login is expected.
create table if not exists device (
    id varchar(64) primary key,
    login varchar(64) not null references person (login) on delete cascade,
    way varchar(16) not null,
    address varchar(64) not null,
    agent varchar(200) not null,
    first_at timestamp(6) with time zone not null,
    last_at timestamp(6) with time zone not null,
    seen_at timestamp(6) with time zone
);
create index if not exists device_by_login on device (login, last_at);

-- One row for each session of a page; gone when it has ended, so that each gateway sees that it has.
create table if not exists sitting (
    id varchar(64) primary key,
    login varchar(64) not null references person (login) on delete cascade,
    address varchar(64) not null,
    agent varchar(200) not null,
    began_at timestamp(6) with time zone not null,
    heard_at timestamp(6) with time zone not null
);
create index if not exists sitting_by_login on sitting (login);

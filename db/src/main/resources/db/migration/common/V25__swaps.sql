-- Turns that somebody asked the others of a roster to take. open_in is the roster while somebody can still take it, so that
-- one short index finds those; the others are kept so that a late answer can be told what became of it.

create table if not exists swap (
    id varchar(120) primary key,
    code integer not null,
    roster varchar(64) not null,
    asked_by varchar(64) not null,
    starts varchar(40) not null,
    ends varchar(40) not null,
    asked varchar(100000) not null,
    declined varchar(100000) not null,
    state varchar(16) not null,
    taker varchar(64),
    asked_at timestamp(6) with time zone not null,
    expires_at timestamp(6) with time zone not null,
    open_in varchar(64)
);
create index if not exists swap_open on swap (open_in);
create index if not exists swap_by_time on swap (asked_at);

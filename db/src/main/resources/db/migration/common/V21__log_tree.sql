-- The log as a Merkle tree (RFC 6962). leaf is the hash of a line; log_tile has the hash of every 256 lines, of every 256 of
-- those, and so on, so that a proof reads little and old lines may go while their hash stays. lane.log_edge is the right edge
-- of the tree of lane.log_size leaves, of which the first is line lane.log_first. Lines that were there before the tree are
-- added to it by the first transaction after this.
alter table log_line add column if not exists leaf bytea;
alter table lane add column if not exists log_first bigint default 0 not null;
alter table lane add column if not exists log_size bigint default 0 not null;
alter table lane add column if not exists log_edge bytea;

create table if not exists log_tile (
    level integer not null,
    place bigint not null,
    hash bytea not null,
    primary key (level, place)
);

-- Which head was mailed to whom last.
create table if not exists sent_head (
    address varchar(320) primary key,
    sent_day date not null,
    log_size bigint not null
);

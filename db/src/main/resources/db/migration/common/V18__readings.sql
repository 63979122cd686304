-- What was measured. A slot is one number for a series and a time, or for a series and a day, so that the rows of a series
-- lie together in the order of time, in a table that is its own index.

create table if not exists reading_series (
    id integer primary key,
    site varchar(64) not null,
    point varchar(64) not null,
    -- in which it is stored; the setup may have another one by now
    unit varchar(16),
    -- the days before this one are summed up in steps
    summed_to integer not null
);
create index if not exists reading_series_by_point on reading_series (site, point, id);

create table if not exists reading (
    slot bigint primary key,
    measured double precision not null
);

create table if not exists reading_day (
    slot bigint primary key,
    packed bytea not null
);

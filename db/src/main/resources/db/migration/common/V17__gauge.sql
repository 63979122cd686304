-- What is remembered of the readings of each point: the newest, which conditions hold by them, what each rule notes for
-- itself, and the last day in samples. The readings themselves are not here.

create table if not exists gauge (
    id varchar(130) primary key,
    box varchar(64),
    read_at timestamp(6) with time zone,
    newest_at timestamp(6) with time zone,
    newest double precision,
    heard_at timestamp(6) with time zone,
    deadline timestamp(6) with time zone,
    excused boolean not null,
    holding varchar(2000) not null,
    notes varchar(100000) not null,
    recent varchar(20000) not null
);

-- What a silence was and is taken for, and which boxes belong to it. Each is kept with the alarm that it was; newest_on
-- says which is the newest of a site, feed or link, so that a box that falls silent or is back finds it.

create table if not exists silence (
    alarm varchar(300) primary key,
    newest_on varchar(200),
    alarm_key varchar(300) not null,
    path varchar(200) not null,
    shared varchar(200) not null,
    since timestamp(6) with time zone not null,
    found_at timestamp(6) with time zone not null,
    ended_at timestamp(6) with time zone,
    told varchar(16) not null,
    verdict varchar(16) not null,
    evidence varchar(20000) not null,
    members varchar(1000000) not null
);
create index if not exists silence_by_path on silence (newest_on);
create index if not exists silence_by_time on silence (found_at);

alter table box_watch add column if not exists absence varchar(200);
alter table box_watch add column if not exists usual_battery double precision;
alter table box_watch add column if not exists usual_signal double precision;
alter table alarm add column if not exists reading varchar(16);

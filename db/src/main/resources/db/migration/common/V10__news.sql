-- What a person is told when there is room for it, and when such texts went out to them in the last hour.

alter table desk add column if not exists news varchar(100000) default '' not null;
alter table desk add column if not exists news_sent varchar(10000) default '' not null;

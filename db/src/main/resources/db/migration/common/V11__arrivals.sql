-- What was learned of the times at which a box's heartbeats arrive; empty while nothing is.

alter table box_watch add column if not exists arrivals varchar(400) default '' not null;

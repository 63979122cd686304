-- The end of the last break in which no gateway could store what boxes say. One that starts later, or again, sees by
-- lane.last_at only what the first one has stored since.

alter table lane add column if not exists heard_from timestamp(6) with time zone;

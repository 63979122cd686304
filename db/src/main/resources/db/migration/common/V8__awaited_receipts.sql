-- Until when a carrier that took a notice has time to say what became of it. When that is over is a row in due.

alter table notice add column if not exists awaited_since timestamp(6) with time zone;
alter table notice add column if not exists awaited_until timestamp(6) with time zone;

-- When a claim ends, by the clock of this server: the gateways' own may differ. Whoever claims a row no longer moves ready_at.
alter table due add column leased_until timestamp(6) with time zone;
alter table outbox add column leased_until timestamp(6) with time zone;

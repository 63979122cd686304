-- What comes in from outside: texts, and what carriers say later of texts that they took.

alter table attempt add column if not exists line integer;
alter table attempt add column if not exists reference varchar(300);
create index if not exists attempt_by_reference on attempt (reference);

create table if not exists incoming_text (
    id varchar(400) primary key,
    channel varchar(64) not null,
    sender varchar(400) not null,
    words varchar(2000) not null,
    received_at timestamp(6) with time zone not null,
    answer varchar(500) not null,
    claimed_until timestamp(6) with time zone,
    answered_at timestamp(6) with time zone
);
create index if not exists incoming_text_by_time on incoming_text (received_at);
create index if not exists incoming_text_by_answer on incoming_text (answered_at, received_at);

create table if not exists receipt (
    id varchar(400) primary key,
    channel varchar(64) not null,
    reference varchar(300) not null,
    fate varchar(16) not null,
    detail varchar(1000) not null,
    said_at timestamp(6) with time zone not null,
    kept_at timestamp(6) with time zone not null,
    heeded_at timestamp(6) with time zone
);
create index if not exists receipt_by_heeded on receipt (heeded_at, kept_at);
create index if not exists receipt_by_time on receipt (kept_at);

-- Everything that is kept. Plain SQL that H2 and PostgreSQL both run.
--
-- Neither partial indexes nor "on conflict" exist on both, so a column that is null for most rows stands in for a
-- partial index: current_key, live_site.
--
-- H2 commits each of these statements by itself. A start that is killed between two of them is made good by the next one,
-- which runs the whole file again: so each statement says what to do when it was run before.

-- One row. Whoever writes state or log locks it first: that makes all writers, on all nodes, one after the other. turn
-- counts the transactions, so that a writer knows whether another one has been there since.
create table if not exists lane (
    id integer primary key check (id = 1),
    turn bigint not null,
    last_line bigint not null,
    last_number bigint not null,
    last_code integer not null,
    setup_version integer not null,
    last_at timestamp(6) with time zone
);
insert into lane (id, turn, last_line, last_number, last_code, setup_version)
    select 1, 0, 0, 0, 9, 0 where not exists (select 1 from lane);

-- What the owner set up, each version as it was stored. lane.setup_version names the one that holds. That of many thousand
-- boxes is longer than H2 lets a varchar be.
create table if not exists setup_version (
    version integer primary key,
    document text not null,
    stored_at timestamp(6) with time zone not null,
    stored_by varchar(64) not null
);

-- What boxes posted, as it came. box_event is the box and its own name for the event in one, so that a whole batch is
-- looked up by one index; null when the box gave none.
create table if not exists event (
    number bigint primary key,
    box varchar(64) not null,
    box_event varchar(130),
    site varchar(64) not null,
    point varchar(64) not null,
    condition varchar(64) not null,
    active boolean not null,
    priority varchar(16),
    measured_value varchar(100),
    measured_limit varchar(100),
    unit varchar(64),
    words varchar(1000),
    happened_at timestamp(6) with time zone not null,
    declared boolean not null,
    received_at timestamp(6) with time zone not null,
    outcome varchar(16) not null,
    alarm varchar(210)
);
create index if not exists event_by_name on event (box_event);

-- One row for each occurrence of an alarm. current_key is site/point/condition in the newest row of a key and null in
-- the others; live_site is the site while there is something to show or to follow.
create table if not exists alarm (
    id varchar(210) primary key,
    current_key varchar(200),
    live_site varchar(64),
    site varchar(64) not null,
    point varchar(64) not null,
    condition varchar(64) not null,
    occurrence integer not null,
    state varchar(32) not null,
    box varchar(64),
    priority varchar(16) not null,
    measured_value varchar(100),
    measured_limit varchar(100),
    unit varchar(64),
    words varchar(1000),
    active boolean not null,
    seen boolean not null,
    latched boolean not null,
    repeats integer not null,
    occurred_at timestamp(6) with time zone,
    received_at timestamp(6) with time zone,
    acknowledged_at timestamp(6) with time zone,
    acknowledged_by varchar(64),
    returned_at timestamp(6) with time zone,
    shelved_until timestamp(6) with time zone,
    pending_since timestamp(6) with time zone,
    clearing_since timestamp(6) with time zone,
    declared_at timestamp(6) with time zone,
    realarm_at timestamp(6) with time zone,
    activations varchar(1000) not null,
    callout varchar(300)
);
create unique index if not exists alarm_current on alarm (current_key);
create index if not exists alarm_live on alarm (live_site);
create index if not exists alarm_by_site_time on alarm (site, occurred_at);
create index if not exists alarm_by_time on alarm (occurred_at);

-- live_site is the site until the callout is over.
create table if not exists callout (
    id varchar(300) primary key,
    live_site varchar(64),
    kind varchar(16) not null,
    code integer not null,
    site varchar(64) not null,
    ladder varchar(64) not null,
    priority varchar(16) not null,
    alarms varchar(100000) not null,
    started_at timestamp(6) with time zone not null,
    notices integer not null,
    announced integer not null,
    told varchar(100000) not null,
    held varchar(100000) not null,
    climb integer not null,
    rung integer not null,
    round integer not null,
    due_at timestamp(6) with time zone,
    ended_at timestamp(6) with time zone,
    answered_by varchar(64),
    reason varchar(1000),
    was_due timestamp(6) with time zone
);
create index if not exists callout_live on callout (live_site);

-- callouts are in order; notice_callout is there to find a callout's notices.
create table if not exists notice (
    id varchar(300) primary key,
    contact varchar(64) not null,
    callouts varchar(100000) not null,
    priority varchar(16) not null,
    words varchar(2000) not null,
    state varchar(16) not null,
    queued_at timestamp(6) with time zone not null,
    held_until timestamp(6) with time zone,
    bundled_into varchar(300),
    line integer not null,
    channel varchar(64),
    handed_over_at timestamp(6) with time zone,
    delivered_at timestamp(6) with time zone
);
create index if not exists notice_by_time on notice (queued_at);

create table if not exists notice_callout (
    notice varchar(300) not null references notice (id) on delete cascade,
    callout varchar(300) not null,
    primary key (notice, callout)
);
create index if not exists notice_callout_by_callout on notice_callout (callout);

-- Notices to be sent. ready_at is when the next attempt may be made; whoever takes one moves it to the end of a lease.
create table if not exists outbox (
    notice varchar(300) primary key references notice (id) on delete cascade,
    channel varchar(64) not null,
    ready_at timestamp(6) with time zone not null,
    claimed_by varchar(64),
    queued_at timestamp(6) with time zone not null,
    deferrals integer not null,
    doubts integer not null
);
create index if not exists outbox_ready on outbox (channel, ready_at);

create table if not exists attempt (
    number bigint primary key,
    notice varchar(300) not null references notice (id) on delete cascade,
    attempted_at timestamp(6) with time zone not null,
    channel varchar(64) not null,
    outcome varchar(16) not null,
    detail varchar(1000) not null
);
create index if not exists attempt_by_notice on attempt (notice);

create table if not exists desk (
    contact varchar(64) primary key,
    sent varchar(1000000) not null,
    waiting varchar(1000000) not null,
    bundles integer not null
);

create table if not exists site_state (
    site varchar(64) primary key,
    recent varchar(10000) not null,
    flood boolean not null
);

create table if not exists box_watch (
    box varchar(64) primary key,
    heard_at timestamp(6) with time zone not null,
    deadline timestamp(6) with time zone,
    silent boolean not null,
    uptime bigint,
    feeds varchar(10000) not null,
    battery double precision,
    signal double precision,
    said_at timestamp(6) with time zone
);

-- What goes on by itself. due_at is when; ready_at is the same until somebody claims it, then the end of the lease.
create table if not exists due (
    kind varchar(16) not null,
    subject varchar(300) not null,
    due_at timestamp(6) with time zone not null,
    ready_at timestamp(6) with time zone not null,
    claimed_by varchar(64),
    primary key (kind, subject)
);
create index if not exists due_ready on due (ready_at);

-- The record of everything, numbered without a gap.
create table if not exists log_line (
    line bigint primary key,
    logged_at timestamp(6) with time zone not null,
    what varchar(16) not null,
    site varchar(64),
    contact varchar(64),
    about varchar(2000) not null,
    words varchar(4000) not null
);
create index if not exists log_line_by_time on log_line (logged_at);
create index if not exists log_line_by_site on log_line (site, logged_at);
create index if not exists log_line_by_contact on log_line (contact, logged_at);

-- The page behind the link in a text; only the hash of its token is kept.
create table if not exists link (
    token_hash varchar(64) primary key,
    notice varchar(300) not null,
    expires_at timestamp(6) with time zone not null,
    used_at timestamp(6) with time zone
);
create index if not exists link_by_time on link (expires_at);

create table if not exists person (
    login varchar(64) primary key,
    password_hash varchar(500) not null,
    role varchar(16) not null,
    created_at timestamp(6) with time zone not null
);

create table if not exists box_key (
    id varchar(64) primary key,
    box varchar(64) not null,
    key_hash varchar(64) not null,
    created_at timestamp(6) with time zone not null,
    revoked_at timestamp(6) with time zone
);
create unique index if not exists box_key_by_hash on box_key (key_hash);
create index if not exists box_key_by_box on box_key (box);

-- Keys that the gateways of one database share; content in Base64.
create table if not exists secret (
    name varchar(64) primary key,
    content varchar(1000) not null,
    created_at timestamp(6) with time zone not null
);

-- How each site stands with being asked to shut in: whether and by which terms it is turned on, the newest request, and what
-- somebody has yet to say for the second time. There is at most one open request for a site.

create table if not exists shut_in (
    site varchar(64) primary key,
    terms varchar(1000),
    turned_on_by varchar(200),
    turned_on_at timestamp(6) with time zone,
    request varchar(120),
    state varchar(16),
    way varchar(16),
    through varchar(200),
    asker varchar(16),
    asked_by varchar(300),
    asked_at timestamp(6) with time zone,
    expires_at timestamp(6) with time zone,
    confirm_by timestamp(6) with time zone,
    taken_at timestamp(6) with time zone,
    tried_at timestamp(6) with time zone,
    ended_at timestamp(6) with time zone,
    wish_contact varchar(200),
    wish_address varchar(2000),
    wish_code integer,
    wish_until timestamp(6) with time zone
);

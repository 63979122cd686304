-- What shows that people can be reached: what is known of each of their lines, and when they are told next that all is well.

alter table notice add column if not exists purpose varchar(16);
alter table desk add column if not exists alls_well_due timestamp(6) with time zone;
alter table desk add column if not exists alls_well_at timestamp(6) with time zone;

-- One row for each address that a contact has or had; id is made of the three that name it. It is updated, and never grows.
create table if not exists line_health (
    id varchar(36) primary key,
    contact varchar(64) not null,
    channel varchar(64) not null,
    address varchar(2000) not null,
    handed_over_at timestamp(6) with time zone,
    delivered_at timestamp(6) with time zone,
    answered_at timestamp(6) with time zone,
    trouble_at timestamp(6) with time zone,
    trouble varchar(1000),
    test_notice varchar(300),
    test_code integer,
    test_at timestamp(6) with time zone,
    test_answered boolean
);
create index if not exists line_health_by_contact on line_health (contact);

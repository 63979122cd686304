-- Whether a person has more to be told than they can take in one by one.

alter table desk add column if not exists flood boolean default false not null;

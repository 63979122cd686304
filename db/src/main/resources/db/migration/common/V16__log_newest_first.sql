-- The log is read newest first as well: with the line at its end an index holds the order of a page.
create index if not exists log_line_in_time on log_line (logged_at, line);
create index if not exists log_line_of_site on log_line (site, logged_at, line);
create index if not exists log_line_of_contact on log_line (contact, logged_at, line);
drop index if exists log_line_by_time;
drop index if exists log_line_by_site;
drop index if exists log_line_by_contact;

-- A setup of many thousand boxes is longer than H2 lets a varchar be.
alter table setup_version alter column document set data type text;

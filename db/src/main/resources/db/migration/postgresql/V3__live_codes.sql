-- Which answer codes live callouts have is asked whenever another gateway has had its turn. On H2 there is one gateway, and it
-- asks once.
create index callout_live_code on callout (code) where live_site is not null;

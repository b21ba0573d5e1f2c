-- A correction that puts nothing in the place of what it strikes out.
alter table fact add column retracts boolean not null default false;
alter table fact add constraint fact_retracts_check check (not retracts or corrects is not null);

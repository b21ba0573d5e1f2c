-- An organisation's own rules. A version is only ever added, and says from which day it counts; without a
-- definition it ends the rule. A change is what a version does to what is stored, worked through in batches:
-- a version counts for stored rows from the moment its change begins.

create table own_rule (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  version integer not null,
  created_at timestamptz not null,
  primary key (organisation_id, id)
);

create table own_rule_version (
  organisation_id uuid not null,
  rule_id uuid not null,
  number integer not null check (number > 0),
  takes_effect_on date not null,
  definition jsonb,
  decided_by text not null,
  reason text not null,
  document text not null,
  set_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, rule_id, number),
  foreign key (organisation_id, rule_id) references own_rule (organisation_id, id)
);

-- What it touches: kinds, and vessels (all of them, those under a scheme, or those named). The cursor is the
-- last vessel looked at, with the last of her items where she is not yet done.
create table rule_change (
  organisation_id uuid not null,
  id uuid not null,
  rule_id uuid not null,
  number integer not null,
  kinds text[] not null,
  every_vessel boolean not null,
  schemes text[] not null,
  vessel_ids uuid[] not null,
  cursor_vessel_id uuid,
  cursor_item_id uuid,
  items_total integer not null,
  items_done integer not null,
  obligations_changed integer not null,
  begun_at timestamptz not null,
  finished_at timestamptz,
  primary key (organisation_id, id),
  unique (organisation_id, rule_id, number),
  foreign key (organisation_id, rule_id, number) references own_rule_version (organisation_id, rule_id, number)
);
create index rule_change_unfinished on rule_change (organisation_id, id) where finished_at is null;

alter table own_rule enable row level security;
alter table own_rule force row level security;
create policy own_organisation on own_rule
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);

alter table own_rule_version enable row level security;
alter table own_rule_version force row level security;
create policy own_organisation on own_rule_version
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);

alter table rule_change enable row level security;
alter table rule_change force row level security;
create policy own_organisation on rule_change
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);

grant select, insert on own_rule, own_rule_version, rule_change to garboard_app;
grant update (version) on own_rule to garboard_app;
grant update (cursor_vessel_id, cursor_item_id, items_done, obligations_changed, finished_at)
  on rule_change to garboard_app;

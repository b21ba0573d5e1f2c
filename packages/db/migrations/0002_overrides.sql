-- An organisation's own figures in place of published intervals, for one item or a whole vessel.
-- Append-only but for its ending: the application may write only the columns that say that it ended.

create table override (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  item_id uuid,
  rule_id text not null,
  duty text not null,
  period text not null check (period ~ '^P(\d+Y)?(\d+M)?(\d+W)?(\d+D)?$' and period <> 'P'),
  weight text not null check (weight in ('maker', 'insurer', 'own')),
  decided_by text not null,
  reason text not null,
  document text not null,
  starts_on date not null,
  set_by text not null,
  recorded_at timestamptz not null,
  ended_on date,
  ended_at timestamptz,
  ended_by text,
  ended_reason text,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  check (num_nulls(ended_on, ended_at, ended_by, ended_reason) in (0, 4))
);
create index override_of_vessel on override (organisation_id, vessel_id, starts_on, id);

alter table override enable row level security;
alter table override force row level security;
create policy own_organisation on override
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);

grant select, insert, update (ended_on, ended_at, ended_by, ended_reason) on override to garboard_app;

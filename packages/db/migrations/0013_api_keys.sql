-- Keys of programs in full: narrowed, renewed with an overlap, and known by who made them.
alter table api_key
  add column vessel_ids uuid[],
  add column permissions text[],
  add column made_by text,
  add column ends_with text,
  add column previous_hash bytea,
  add column previous_until timestamptz,
  add column version integer not null default 1,
  add check (vessel_ids is null or (cardinality(vessel_ids) > 0 and role in ('surveyor', 'yard', 'viewer'))),
  add check (num_nonnulls(previous_hash, previous_until) in (0, 2));
comment on column api_key.vessel_ids is 'null: the whole fleet';
comment on column api_key.permissions is 'null: whatever its role may';

-- Apart from the key, so that using one neither waits for a change of it nor makes a version of it.
create table api_key_use (
  organisation_id uuid not null,
  key_id uuid not null,
  last_used_at timestamptz not null,
  primary key (organisation_id, key_id),
  foreign key (organisation_id, key_id) references api_key (organisation_id, id)
);
alter table api_key_use enable row level security;
alter table api_key_use force row level security;
create policy own_organisation on api_key_use using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);
grant select, insert, update on api_key_use to garboard_app;

-- When an organisation's season is, and the views its people keep. Neither names a vessel.

create table season (
  organisation_id uuid not null references organisation (id),
  starts text check (starts ~ '^\d{2}-\d{2}$'),
  ends text check (ends ~ '^\d{2}-\d{2}$'),
  version integer not null,
  primary key (organisation_id),
  check ((starts is null) = (ends is null))
);

-- `owner_id`: whose own it is; null where it is everybody's. Removed ones stay, so that a removal can be undone.
create table saved_view (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  name text not null check (name <> ''),
  page text not null check (page in ('fleet', 'due')),
  filters jsonb not null,
  owner_id uuid,
  saved_by text not null,
  created_at timestamptz not null,
  removed_at timestamptz,
  version integer not null default 1,
  primary key (organisation_id, id)
);
create index saved_view_by_name on saved_view (organisation_id, name, id);

do $$
declare t text;
begin
  foreach t in array array['season', 'saved_view'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
end $$;

grant select, insert, update on season, saved_view to garboard_app;

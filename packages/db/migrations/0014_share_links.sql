-- Links for outsiders: what each shows, until when, and every look at it.
create table share_link (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  label text not null,
  vessel_ids uuid[] check (cardinality(vessel_ids) > 0),
  shows_value boolean not null,
  secret_hash bytea not null,
  made_by text not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  revoked_at timestamptz,
  version integer not null default 1,
  primary key (organisation_id, id)
);
comment on column share_link.vessel_ids is 'null: the whole fleet';

create table share_view (
  organisation_id uuid not null,
  id uuid not null,
  link_id uuid not null,
  at timestamptz not null,
  user_agent text,
  primary key (organisation_id, id),
  foreign key (organisation_id, link_id) references share_link (organisation_id, id)
);
create index share_view_of_link on share_view (organisation_id, link_id, at desc);

do $$
declare t text;
begin
  foreach t in array array['share_link', 'share_view'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
end $$;
grant select, insert, update on share_link to garboard_app;
grant select, insert on share_view to garboard_app;

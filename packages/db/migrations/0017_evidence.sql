-- Photographs and papers: what is known of each. The bytes lie in the store of files, by their hash.

create table evidence (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  visit_id uuid,
  zone text,
  point text,
  words text,
  taken_on date not null,
  sha256 bytea not null check (length(sha256) = 32),
  media_type text not null,
  bytes integer not null check (bytes > 0),
  width_px integer,
  height_px integer,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id),
  check ((width_px is null) = (height_px is null)),
  check (point is null or zone is not null)
);
comment on column evidence.width_px is 'null: it is kept and can be taken, but not shown here';
create index evidence_of_vessel on evidence (organisation_id, vessel_id, taken_on desc, id desc);
create index evidence_of_visit on evidence (organisation_id, visit_id, id) where visit_id is not null;
create index evidence_by_hash on evidence (organisation_id, sha256);

-- A file on its way here. `said` is what it will be kept with; the pieces go when the file is kept or refused.
create table upload (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  said jsonb not null,
  sha256 bytea not null check (length(sha256) = 32),
  bytes integer not null check (bytes > 0),
  received integer not null default 0 check (received between 0 and bytes),
  evidence_id uuid,
  refused text,
  created_by text not null,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, evidence_id) references evidence (organisation_id, id),
  check (evidence_id is null or refused is null)
);
create index upload_by_age on upload (organisation_id, created_at);

create table upload_piece (
  organisation_id uuid not null,
  upload_id uuid not null,
  vessel_id uuid not null,
  from_byte integer not null,
  body bytea not null,
  primary key (organisation_id, upload_id, from_byte),
  foreign key (organisation_id, upload_id) references upload (organisation_id, id) on delete cascade
);
-- Photographs are pressed already.
alter table upload_piece alter column body set storage external;

do $$
declare
  t text;
  guard constant text :=
    'case when (select current_setting(''app.vessels'')) = ''all'' then true
          else vessel_id = any ((select nullif(current_setting(''app.vessels''), ''all'')::uuid[])::uuid[]) end';
begin
  foreach t in array array['evidence', 'upload', 'upload_piece'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
    execute format('create policy own_vessels on %I as restrictive using (%s) with check (%s)', t, guard, guard);
  end loop;
end $$;

grant select, insert on evidence to garboard_app;
grant select, insert, update, delete on upload to garboard_app;
grant select, insert, delete on upload_piece to garboard_app;

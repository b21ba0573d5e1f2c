-- Survey visits: who came and what for, the route walked, what each place was answered with, what could not be
-- examined and who must look closer. Answers are only ever added; of several for one place the last counts.

create table survey_route (
  organisation_id uuid not null references organisation (id),
  craft text not null,
  zones jsonb not null,
  version integer not null,
  primary key (organisation_id, craft)
);

create table survey_visit (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  craft text not null,
  purpose text not null,
  started_on date not null,
  detail jsonb not null,
  route jsonb not null,
  created_by text not null,
  created_at timestamptz not null,
  completed_on date,
  completed_at timestamptz,
  completed_by text,
  sealed text,
  sealed_hash bytea,
  version integer not null default 1,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  check ((completed_at is null) = (sealed_hash is null) and (completed_at is null) = (sealed is null))
);
comment on column survey_visit.route is 'the places as they were to be walked when the visit began';
comment on column survey_visit.sealed is 'what was sealed, byte for byte as it was hashed';
create index visit_of_vessel on survey_visit (organisation_id, vessel_id, started_on desc, id desc);
create index visit_by_day on survey_visit (organisation_id, started_on desc, id desc);

create table visit_answer (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  zone text not null,
  answer text not null check (answer in ('sound', 'sighting', 'not_examined')),
  reason text,
  words text,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id)
);
create index answer_of_visit on visit_answer (organisation_id, visit_id, id);

create table reading (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  zone text not null,
  point text not null,
  measure text not null,
  value double precision,
  unit text not null,
  instrument text,
  words text,
  taken_on date not null,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id)
);
comment on column reading.value is 'null: not measured, which is a gap and never nought';
create index reading_of_visit on reading (organisation_id, visit_id, id);

create table limitation (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  zone text not null,
  item_id uuid,
  what text not null,
  reason text not null,
  words text,
  trade text,
  imposed_on date not null,
  lifted_on date,
  recorded_by text not null,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id)
);
create index limitation_of_vessel on limitation (organisation_id, vessel_id, id);

create table limitation_answer (
  organisation_id uuid not null,
  id uuid not null,
  limitation_id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  answer text not null check (answer in ('lifted', 'still')),
  reason text,
  words text,
  on_day date not null,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, limitation_id) references limitation (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id)
);
create index answer_of_limitation on limitation_answer (organisation_id, limitation_id, id);
create index limitations_answered_by_visit on limitation_answer (organisation_id, visit_id, id);

create table referral (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid,
  vessel_id uuid not null,
  zone text not null,
  item_id uuid,
  finding_id uuid,
  trade text not null,
  what text not null,
  due_on date not null,
  responsible text,
  asked_on date not null,
  result jsonb,
  recorded_by text not null,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  foreign key (organisation_id, finding_id) references finding (organisation_id, id)
);
create index referral_of_vessel on referral (organisation_id, vessel_id, id);

create table visit_addendum (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  name text not null,
  words text not null,
  reason text not null,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id)
);
create index addendum_of_visit on visit_addendum (organisation_id, visit_id, id);

alter table finding_entry add foreign key (organisation_id, visit_id) references survey_visit (organisation_id, id);

do $$
declare
  t text;
  guard constant text :=
    'case when (select current_setting(''app.vessels'')) = ''all'' then true
          else vessel_id = any ((select nullif(current_setting(''app.vessels''), ''all'')::uuid[])::uuid[]) end';
begin
  foreach t in array array['survey_route', 'survey_visit', 'visit_answer', 'reading', 'limitation', 'limitation_answer',
                           'referral', 'visit_addendum'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
    if t <> 'survey_route' then
      execute format('create policy own_vessels on %I as restrictive using (%s) with check (%s)', t, guard, guard);
    end if;
  end loop;
end $$;

grant select, insert, update on survey_route, survey_visit, limitation, referral to garboard_app;
grant select, insert on visit_answer, reading, limitation_answer, visit_addendum to garboard_app;

-- Findings: what was seen, said and done, one entry each, only ever added; and what follows from the entries.

create table finding_terms (
  organisation_id uuid not null references organisation (id),
  within_weeks_days integer not null check (within_weeks_days between 1 and 183),
  put_off_at_most_days integer not null check (put_off_at_most_days between 1 and 1830),
  second_pair_of_eyes boolean not null,
  version integer not null,
  primary key (organisation_id)
);

-- Derived from its entries but for the version and the reference: `number` counts within the organisation's vessel.
create table finding (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  number integer not null,
  item_id uuid,
  zone text not null,
  what text not null,
  hazard text not null,
  urgency text not null,
  state text not null,
  is_open boolean not null,
  trade text,
  responsible text,
  first_seen_on date not null,
  last_seen_on date not null,
  detail jsonb not null,
  rank smallint not null,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  unique (organisation_id, vessel_id, number),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id)
);
comment on column finding.rank is 'the most urgent first, and of these the worst hazard';
comment on column finding.detail is 'the finding as its entries make it';
create index finding_by_rank on finding (organisation_id, is_open, rank, id);
create index finding_by_age on finding (organisation_id, is_open, first_seen_on, id);
create index finding_of_vessel on finding (organisation_id, vessel_id, is_open, id);

create table finding_entry (
  organisation_id uuid not null,
  id uuid not null,
  finding_id uuid not null,
  vessel_id uuid not null,
  visit_id uuid,
  step text not null,
  said jsonb not null,
  on_day date not null,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, finding_id) references finding (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index entry_of_finding on finding_entry (organisation_id, finding_id, id);
create index entry_of_visit on finding_entry (organisation_id, visit_id, id) where visit_id is not null;

-- What waits for somebody besides obligations, in the due list's own order. Derived, in the writer's transaction;
-- `infinity` stands for "no date to go by", as in the obligations.
create table matter (
  organisation_id uuid not null,
  id uuid not null,
  source text not null check (source in ('finding', 'deferral', 'referral', 'limitation')),
  vessel_id uuid not null,
  zone text not null,
  label text not null,
  action text not null,
  sentence text not null,
  urgency text,
  trade text,
  responsible text,
  due_from date not null,
  overdue_after date not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index matter_due on matter (organisation_id, overdue_after, id);
create index matter_of_vessel on matter (organisation_id, vessel_id, overdue_after, source);

do $$
declare
  t text;
  guard constant text :=
    'case when (select current_setting(''app.vessels'')) = ''all'' then true
          else vessel_id = any ((select nullif(current_setting(''app.vessels''), ''all'')::uuid[])::uuid[]) end';
begin
  foreach t in array array['finding_terms', 'finding', 'finding_entry', 'matter'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
  foreach t in array array['finding', 'finding_entry', 'matter'] loop
    execute format('create policy own_vessels on %I as restrictive using (%s) with check (%s)', t, guard, guard);
  end loop;
end $$;

grant select, insert, update on finding_terms, finding to garboard_app;
grant select, insert on finding_entry to garboard_app;
grant select, insert, update, delete on matter to garboard_app;

-- Safety notices: what makers and authorities say of certain things, what was answered thing by thing, and what
-- was written of a thing's plate before. Append-only, but for a notice's withdrawal.

create table safety_notice (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  title text not null,
  publisher text not null,
  reference text,
  issued_on date not null,
  address text,
  document text,
  kinds text[] not null check (cardinality(kinds) > 0),
  makers text[] not null,
  models text[] not null,
  serials jsonb not null,
  made_from date,
  made_to date,
  hazard text not null,
  action_kind text not null check (action_kind in ('stop_using', 'inspect', 'return', 'replace')),
  action_words text not null,
  deadline_kind text not null check (deadline_kind in ('on', 'days_after_issue', 'before_next_use')),
  deadline_on date,
  deadline_days integer,
  weight text not null check (weight in ('maker', 'law')),
  recorded_by text not null,
  recorded_at timestamptz not null,
  withdrawn_on date,
  withdrawn_at timestamptz,
  withdrawn_by text,
  withdrawn_reason text,
  primary key (organisation_id, id),
  check (num_nulls(address, document) < 2),
  check ((deadline_kind = 'on') = (deadline_on is not null)),
  check ((deadline_kind = 'days_after_issue') = (deadline_days is not null)),
  check (num_nulls(withdrawn_on, withdrawn_at, withdrawn_by, withdrawn_reason) in (0, 4))
);
create index safety_notice_by_day on safety_notice (organisation_id, issued_on, id);

create table notice_answer (
  organisation_id uuid not null,
  id uuid not null,
  notice_id uuid not null,
  item_id uuid not null,
  vessel_id uuid not null,
  answer text not null check (answer in ('done', 'not_affected', 'deferred', 'reopened')),
  on_day date not null,
  done_by jsonb not null,
  evidence text,
  reference text,
  note text,
  until_day date,
  serial_read text,
  serial_then text,
  replaced boolean not null,
  corrects uuid,
  recorded_by text not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, notice_id) references safety_notice (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  foreign key (organisation_id, corrects) references notice_answer (organisation_id, id),
  unique (organisation_id, corrects),
  check ((answer = 'deferred') = (until_day is not null))
);
create index answer_to_notice on notice_answer (organisation_id, notice_id, item_id, id);
create index answer_of_item on notice_answer (organisation_id, item_id, id);

-- What a plate was written down as until it was written over: a notice asks as at a day and as known at an instant.
create table former_plate (
  organisation_id uuid not null,
  id uuid not null,
  item_id uuid not null,
  vessel_id uuid not null,
  maker text,
  model text,
  serial_number text,
  quantity integer not null,
  replaced_on date,
  written_over_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index former_plate_of_item on former_plate (organisation_id, item_id, id);

-- A notice is matched against the things of its kinds, and counted by the obligations it makes.
create index item_of_kind on item (organisation_id, kind, id);
create index obligation_of_notice on obligation (organisation_id, rule_id, item_id) where rule_id like 'notice:%';

do $$
declare t text;
begin
  foreach t in array array['safety_notice', 'notice_answer', 'former_plate'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
end $$;

do $$
declare
  t text;
  guard constant text :=
    'case when (select current_setting(''app.vessels'')) = ''all'' then true
          else vessel_id = any ((select nullif(current_setting(''app.vessels''), ''all'')::uuid[])::uuid[]) end';
begin
  foreach t in array array['notice_answer', 'former_plate'] loop
    execute format('create policy own_vessels on %I as restrictive using (%s) with check (%s)', t, guard, guard);
  end loop;
end $$;

grant select, insert on notice_answer, former_plate to garboard_app;
grant select, insert, update (withdrawn_on, withdrawn_at, withdrawn_by, withdrawn_reason) on safety_notice to garboard_app;

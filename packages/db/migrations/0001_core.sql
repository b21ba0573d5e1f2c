-- The core: organisations, their register, facts and what follows from them.
--
-- Every tenant table is keyed (organisation_id, …); every foreign and unique key starts with it, so the
-- schema is right on one PostgreSQL and can be distributed by organisation_id without a rewrite.
-- Row-level security is forced; a missing scope is an error (''::uuid), never "all rows".

create table organisation (
  id uuid primary key,
  name text not null check (name <> ''),
  time_zone text not null default 'UTC',
  created_at timestamptz not null
);
create unique index organisation_name on organisation (lower(name));

create table api_key (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  name text not null,
  role text not null check (role in ('owner', 'manager', 'surveyor', 'yard', 'viewer')),
  secret_hash bytea not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  revoked_at timestamptz,
  primary key (organisation_id, id)
);

-- A sign-in link works once; the session it opens is a row of its own.
create table sign_in_link (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  role text not null check (role in ('owner', 'manager', 'surveyor', 'yard', 'viewer')),
  secret_hash bytea not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  used_at timestamptz,
  primary key (organisation_id, id)
);

create table session (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  role text not null check (role in ('owner', 'manager', 'surveyor', 'yard', 'viewer')),
  secret_hash bytea not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  primary key (organisation_id, id)
);

create table vessel (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  name text not null,
  type text,
  built_year integer,
  length_overall_m double precision,
  hull_material text,
  rig text,
  beam_m double precision,
  draught_m double precision,
  waterline_length_m double precision,
  displacement_kg double precision,
  persons_max integer,
  identifiers jsonb not null default '{}',
  value_minor bigint,
  value_currency text,
  schemes text[] not null default '{}',
  time_zone text not null,
  home_port text,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  check ((value_minor is null) = (value_currency is null))
);
create index vessel_by_name on vessel (organisation_id, name, id);

create table situation (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  starts_on date not null,
  place text not null check (place in ('afloat', 'ashore')),
  use text not null check (use in ('in_commission', 'laid_up', 'out_of_service')),
  dismantled boolean not null,
  under_repair boolean not null,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index situation_of_vessel on situation (organisation_id, vessel_id, starts_on, id);

create table vessel_event (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  event text not null,
  on_day date not null,
  planned boolean not null,
  note text,
  recorded_at timestamptz not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index event_of_vessel on vessel_event (organisation_id, vessel_id, on_day, id);

create table item (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  kind text not null,
  label text not null,
  zone text,
  quantity integer not null check (quantity > 0),
  maker text,
  model text,
  serial_number text,
  attributes jsonb not null default '{}',
  withdrawn boolean not null default false,
  created_at timestamptz not null,
  version integer not null default 1,
  primary key (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index item_of_vessel on item (organisation_id, vessel_id, id);

-- Append-only: the application role may insert and read, nothing else.
create table fact (
  organisation_id uuid not null,
  id uuid not null,
  item_id uuid not null,
  fact text not null,
  on_text text not null check (on_text ~ '^\d{4}(-\d{2}(-\d{2})?)?$'),
  outcome text not null check (outcome in ('passed', 'failed', 'partly')),
  test text,
  done_by jsonb,
  evidence text not null,
  until_day date,
  reading jsonb,
  read_on date,
  note text,
  corrects uuid,
  recorded_at timestamptz not null,
  recorded_by text not null,
  primary key (organisation_id, id),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  foreign key (organisation_id, corrects) references fact (organisation_id, id),
  unique (organisation_id, corrects)
);
create index fact_of_item on fact (organisation_id, item_id, id);

-- Derived from the facts, in the writer's transaction. `infinity` stands for "no date to go by".
-- Nothing here depends on today: overdue is a comparison made when reading.
create table obligation (
  organisation_id uuid not null,
  item_id uuid not null,
  rule_id text not null,
  duty text not null,
  vessel_id uuid not null,
  scheme text not null,
  weight text not null,
  action_kind text not null,
  action_words text not null,
  overdue_after date not null,
  due_on date not null,
  expires_on date,
  replace_by date,
  latest_permitted_on date,
  windows jsonb not null,
  explanation jsonb not null,
  primary key (organisation_id, item_id, rule_id, duty),
  foreign key (organisation_id, item_id) references item (organisation_id, id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id),
  check ((overdue_after = 'infinity') = (due_on = 'infinity'))
);
create index obligation_due on obligation (organisation_id, overdue_after, item_id, rule_id, duty);
create index obligation_of_vessel on obligation (organisation_id, vessel_id, overdue_after, due_on, weight);

-- How many obligations fall on each day, kept with every write: a fleet's totals cost days, not items.
create table day_count (
  organisation_id uuid not null references organisation (id),
  overdue_after date not null,
  due_on date not null,
  weight text not null,
  n integer not null,
  primary key (organisation_id, overdue_after, due_on, weight)
);

create table vessel_standing (
  organisation_id uuid not null,
  vessel_id uuid not null,
  items integer not null,
  dated integer not null,
  undated integer not null,
  earliest_overdue_after date,
  primary key (organisation_id, vessel_id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);

-- One effect for one Idempotency-Key: the row commits with the effect and answers every repeat.
create table idempotency (
  organisation_id uuid not null references organisation (id),
  credential_id uuid not null,
  key text not null,
  fingerprint bytea not null,
  value jsonb,
  created_at timestamptz not null,
  primary key (organisation_id, credential_id, key)
);

-- Append-only: who changed what, in the transaction of the change.
create table audit (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  at timestamptz not null,
  actor text not null,
  request_id text not null,
  verb text not null,
  subject text not null,
  subject_id uuid not null,
  before jsonb,
  after jsonb,
  primary key (organisation_id, id)
);
create index audit_of_subject on audit (organisation_id, subject_id, id);

do $$ begin
  create role garboard_app nologin;
exception when duplicate_object or unique_violation then null;
end $$;
grant garboard_app to current_user;
grant usage on schema public to garboard_app;

do $$
declare t text;
begin
  foreach t in array array['api_key', 'sign_in_link', 'session', 'vessel', 'situation', 'vessel_event', 'item', 'fact',
                           'obligation', 'day_count', 'vessel_standing', 'idempotency', 'audit'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
end $$;

-- The registry of organisations: the application sees its own row; the owner, who administers, sees all.
alter table organisation enable row level security;
create policy own_organisation on organisation using (id = current_setting('app.organisation')::uuid);

grant select on organisation to garboard_app;
grant select, insert on fact, audit, situation, vessel_event to garboard_app;
grant select, insert, update on api_key, sign_in_link, vessel, item, vessel_standing to garboard_app;
grant select, insert, update, delete on session, obligation, day_count, idempotency to garboard_app;

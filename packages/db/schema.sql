-- What the migrations make of an empty database, read from its catalogue by `npm run schema`.
-- For reading and review; the migrations are what is run.

create table api_key (
  organisation_id uuid not null,
  id uuid not null,
  name text not null,
  role text not null,
  secret_hash bytea not null,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  revoked_at timestamp with time zone,
  vessel_ids uuid[],
  permissions text[],
  made_by text,
  ends_with text,
  previous_hash bytea,
  previous_until timestamp with time zone,
  version integer not null default 1,
  constraint api_key_pkey PRIMARY KEY (organisation_id, id),
  constraint api_key_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint api_key_check CHECK (((vessel_ids IS NULL) OR ((cardinality(vessel_ids) > 0) AND (role = ANY (ARRAY['surveyor'::text, 'yard'::text, 'viewer'::text]))))),
  constraint api_key_check1 CHECK ((num_nonnulls(previous_hash, previous_until) = ANY (ARRAY[0, 2]))),
  constraint api_key_role_check CHECK ((role = ANY (ARRAY['owner'::text, 'manager'::text, 'surveyor'::text, 'yard'::text, 'viewer'::text])))
);
alter table api_key enable row level security;
alter table api_key force row level security;
create policy own_organisation on api_key
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on api_key to garboard_app;

create table api_key_use (
  organisation_id uuid not null,
  key_id uuid not null,
  last_used_at timestamp with time zone not null,
  constraint api_key_use_pkey PRIMARY KEY (organisation_id, key_id),
  constraint api_key_use_organisation_id_key_id_fkey FOREIGN KEY (organisation_id, key_id) REFERENCES api_key(organisation_id, id)
);
alter table api_key_use enable row level security;
alter table api_key_use force row level security;
create policy own_organisation on api_key_use
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on api_key_use to garboard_app;

create table audit (
  organisation_id uuid not null,
  id uuid not null,
  at timestamp with time zone not null,
  actor text not null,
  request_id text not null,
  verb text not null,
  subject text not null,
  subject_id uuid not null,
  before jsonb,
  after jsonb,
  sequence bigint,
  previous bytea,
  hash bytea,
  credential text,
  role text,
  constraint audit_pkey PRIMARY KEY (organisation_id, id),
  constraint audit_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint audit_is_chained CHECK ((num_nulls(sequence, previous, hash, credential, role) = 0)) NOT VALID
);
CREATE UNIQUE INDEX audit_in_sequence ON public.audit USING btree (organisation_id, sequence);
CREATE INDEX audit_of_actor ON public.audit USING btree (organisation_id, actor, id);
CREATE INDEX audit_of_subject ON public.audit USING btree (organisation_id, subject_id, id);
alter table audit enable row level security;
alter table audit force row level security;
create policy own_organisation on audit
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy whole_fleet on audit as restrictive for select
  using (current_setting('app.vessels'::text) = 'all'::text);
grant insert, select on audit to garboard_app;

create table audit_head (
  organisation_id uuid not null,
  sequence bigint not null,
  hash bytea not null,
  before_chain bigint not null default 0,
  constraint audit_head_pkey PRIMARY KEY (organisation_id),
  constraint audit_head_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table audit_head enable row level security;
alter table audit_head force row level security;
create policy own_organisation on audit_head
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on audit_head to garboard_app;

create table day_count (
  organisation_id uuid not null,
  overdue_after date not null,
  due_from date not null,
  suspended datemultirange not null,
  weight text not null,
  n integer not null,
  constraint day_count_pkey PRIMARY KEY (organisation_id, overdue_after, due_from, suspended, weight),
  constraint day_count_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table day_count enable row level security;
alter table day_count force row level security;
create policy own_organisation on day_count
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy whole_fleet on day_count as restrictive
  using (current_setting('app.vessels'::text) = 'all'::text);
grant delete, insert, select, update on day_count to garboard_app;

create table evidence (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  visit_id uuid,
  zone text,
  point text,
  words text,
  taken_on date not null,
  sha256 bytea not null,
  media_type text not null,
  bytes integer not null,
  width_px integer,
  height_px integer,
  recorded_by text not null,
  recorded_at timestamp with time zone not null,
  constraint evidence_pkey PRIMARY KEY (organisation_id, id),
  constraint evidence_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint evidence_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id),
  constraint evidence_bytes_check CHECK ((bytes > 0)),
  constraint evidence_check CHECK (((width_px IS NULL) = (height_px IS NULL))),
  constraint evidence_check1 CHECK (((point IS NULL) OR (zone IS NOT NULL))),
  constraint evidence_sha256_check CHECK ((length(sha256) = 32))
);
CREATE INDEX evidence_by_hash ON public.evidence USING btree (organisation_id, sha256);
CREATE INDEX evidence_of_vessel ON public.evidence USING btree (organisation_id, vessel_id, taken_on DESC, id DESC);
CREATE INDEX evidence_of_visit ON public.evidence USING btree (organisation_id, visit_id, id) WHERE (visit_id IS NOT NULL);
alter table evidence enable row level security;
alter table evidence force row level security;
create policy own_organisation on evidence
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on evidence as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on evidence to garboard_app;

create table fact (
  organisation_id uuid not null,
  id uuid not null,
  item_id uuid not null,
  fact text not null,
  on_text text not null,
  outcome text not null,
  test text,
  done_by jsonb,
  evidence text not null,
  until_day date,
  reading jsonb,
  read_on date,
  note text,
  corrects uuid,
  recorded_at timestamp with time zone not null,
  recorded_by text not null,
  retracts boolean not null default false,
  constraint fact_pkey PRIMARY KEY (organisation_id, id),
  constraint fact_organisation_id_corrects_key UNIQUE (organisation_id, corrects),
  constraint fact_organisation_id_corrects_fkey FOREIGN KEY (organisation_id, corrects) REFERENCES fact(organisation_id, id),
  constraint fact_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint fact_on_text_check CHECK ((on_text ~ '^\d{4}(-\d{2}(-\d{2})?)?$'::text)),
  constraint fact_outcome_check CHECK ((outcome = ANY (ARRAY['passed'::text, 'failed'::text, 'partly'::text]))),
  constraint fact_retracts_check CHECK (((NOT retracts) OR (corrects IS NOT NULL)))
);
CREATE INDEX fact_of_item ON public.fact USING btree (organisation_id, item_id, id);
alter table fact enable row level security;
alter table fact force row level security;
create policy own_organisation on fact
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on fact as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (EXISTS ( SELECT
       FROM item i
      WHERE ((i.organisation_id = fact.organisation_id) AND (i.id = fact.item_id))))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (EXISTS ( SELECT
       FROM item i
      WHERE ((i.organisation_id = fact.organisation_id) AND (i.id = fact.item_id))))
END;
grant insert, select on fact to garboard_app;

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
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint finding_pkey PRIMARY KEY (organisation_id, id),
  constraint finding_organisation_id_vessel_id_number_key UNIQUE (organisation_id, vessel_id, number),
  constraint finding_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint finding_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id)
);
CREATE INDEX finding_by_age ON public.finding USING btree (organisation_id, is_open, first_seen_on, id);
CREATE INDEX finding_by_rank ON public.finding USING btree (organisation_id, is_open, rank, id);
CREATE INDEX finding_of_vessel ON public.finding USING btree (organisation_id, vessel_id, is_open, id);
alter table finding enable row level security;
alter table finding force row level security;
create policy own_organisation on finding
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on finding as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on finding to garboard_app;

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
  recorded_at timestamp with time zone not null,
  constraint finding_entry_pkey PRIMARY KEY (organisation_id, id),
  constraint finding_entry_organisation_id_finding_id_fkey FOREIGN KEY (organisation_id, finding_id) REFERENCES finding(organisation_id, id),
  constraint finding_entry_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint finding_entry_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id)
);
CREATE INDEX entry_of_finding ON public.finding_entry USING btree (organisation_id, finding_id, id);
CREATE INDEX entry_of_visit ON public.finding_entry USING btree (organisation_id, visit_id, id) WHERE (visit_id IS NOT NULL);
alter table finding_entry enable row level security;
alter table finding_entry force row level security;
create policy own_organisation on finding_entry
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on finding_entry as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on finding_entry to garboard_app;

create table finding_terms (
  organisation_id uuid not null,
  within_weeks_days integer not null,
  put_off_at_most_days integer not null,
  second_pair_of_eyes boolean not null,
  version integer not null,
  constraint finding_terms_pkey PRIMARY KEY (organisation_id),
  constraint finding_terms_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint finding_terms_put_off_at_most_days_check CHECK (((put_off_at_most_days >= 1) AND (put_off_at_most_days <= 1830))),
  constraint finding_terms_within_weeks_days_check CHECK (((within_weeks_days >= 1) AND (within_weeks_days <= 183)))
);
alter table finding_terms enable row level security;
alter table finding_terms force row level security;
create policy own_organisation on finding_terms
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on finding_terms to garboard_app;

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
  written_over_at timestamp with time zone not null,
  constraint former_plate_pkey PRIMARY KEY (organisation_id, id),
  constraint former_plate_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint former_plate_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id)
);
CREATE INDEX former_plate_of_item ON public.former_plate USING btree (organisation_id, item_id, id);
alter table former_plate enable row level security;
alter table former_plate force row level security;
create policy own_organisation on former_plate
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on former_plate as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on former_plate to garboard_app;

create table idempotency (
  organisation_id uuid not null,
  credential_id uuid not null,
  key text not null,
  fingerprint bytea not null,
  value jsonb,
  created_at timestamp with time zone not null,
  constraint idempotency_pkey PRIMARY KEY (organisation_id, credential_id, key),
  constraint idempotency_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table idempotency enable row level security;
alter table idempotency force row level security;
create policy own_organisation on idempotency
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant delete, insert, select, update on idempotency to garboard_app;

create table invitation (
  organisation_id uuid not null,
  id uuid not null,
  email text,
  role text not null,
  vessel_ids uuid[],
  secret_hash bytea not null,
  invited_by text not null,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  accepted_at timestamp with time zone,
  withdrawn_at timestamp with time zone,
  version integer not null default 1,
  constraint invitation_pkey PRIMARY KEY (organisation_id, id),
  constraint invitation_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint invitation_check CHECK ((num_nonnulls(accepted_at, withdrawn_at) < 2)),
  constraint invitation_check1 CHECK (((vessel_ids IS NULL) OR ((cardinality(vessel_ids) > 0) AND (role = ANY (ARRAY['surveyor'::text, 'yard'::text, 'viewer'::text]))))),
  constraint invitation_role_check CHECK ((role = ANY (ARRAY['owner'::text, 'manager'::text, 'surveyor'::text, 'yard'::text, 'viewer'::text])))
);
alter table invitation enable row level security;
alter table invitation force row level security;
create policy own_organisation on invitation
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on invitation to garboard_app;

create table item (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  kind text not null,
  label text not null,
  zone text,
  quantity integer not null,
  maker text,
  model text,
  serial_number text,
  attributes jsonb not null default '{}'::jsonb,
  withdrawn boolean not null default false,
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint item_pkey PRIMARY KEY (organisation_id, id),
  constraint item_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint item_quantity_check CHECK ((quantity > 0))
);
CREATE INDEX item_of_kind ON public.item USING btree (organisation_id, kind, id);
CREATE INDEX item_of_vessel ON public.item USING btree (organisation_id, vessel_id, id);
alter table item enable row level security;
alter table item force row level security;
create policy own_organisation on item
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on item as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on item to garboard_app;

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
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint limitation_pkey PRIMARY KEY (organisation_id, id),
  constraint limitation_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint limitation_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id)
);
CREATE INDEX limitation_of_vessel ON public.limitation USING btree (organisation_id, vessel_id, id);
alter table limitation enable row level security;
alter table limitation force row level security;
create policy own_organisation on limitation
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on limitation as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on limitation to garboard_app;

create table limitation_answer (
  organisation_id uuid not null,
  id uuid not null,
  limitation_id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  answer text not null,
  reason text,
  words text,
  on_day date not null,
  recorded_by text not null,
  recorded_at timestamp with time zone not null,
  constraint limitation_answer_pkey PRIMARY KEY (organisation_id, id),
  constraint limitation_answer_organisation_id_limitation_id_fkey FOREIGN KEY (organisation_id, limitation_id) REFERENCES limitation(organisation_id, id),
  constraint limitation_answer_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id),
  constraint limitation_answer_answer_check CHECK ((answer = ANY (ARRAY['lifted'::text, 'still'::text])))
);
CREATE INDEX answer_of_limitation ON public.limitation_answer USING btree (organisation_id, limitation_id, id);
CREATE INDEX limitations_answered_by_visit ON public.limitation_answer USING btree (organisation_id, visit_id, id);
alter table limitation_answer enable row level security;
alter table limitation_answer force row level security;
create policy own_organisation on limitation_answer
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on limitation_answer as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on limitation_answer to garboard_app;

create table matter (
  organisation_id uuid not null,
  id uuid not null,
  source text not null,
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
  constraint matter_pkey PRIMARY KEY (organisation_id, id),
  constraint matter_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint matter_source_check CHECK ((source = ANY (ARRAY['finding'::text, 'deferral'::text, 'referral'::text, 'limitation'::text])))
);
CREATE INDEX matter_due ON public.matter USING btree (organisation_id, overdue_after, id);
CREATE INDEX matter_of_vessel ON public.matter USING btree (organisation_id, vessel_id, overdue_after, source);
alter table matter enable row level security;
alter table matter force row level security;
create policy own_organisation on matter
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on matter as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant delete, insert, select, update on matter to garboard_app;

create table membership (
  organisation_id uuid not null,
  id uuid not null,
  person_id uuid not null,
  role text not null,
  vessel_ids uuid[],
  joined_at timestamp with time zone not null,
  ended_at timestamp with time zone,
  version integer not null default 1,
  constraint membership_pkey PRIMARY KEY (organisation_id, id),
  constraint membership_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint membership_check CHECK (((vessel_ids IS NULL) OR ((cardinality(vessel_ids) > 0) AND (role = ANY (ARRAY['surveyor'::text, 'yard'::text, 'viewer'::text]))))),
  constraint membership_role_check CHECK ((role = ANY (ARRAY['owner'::text, 'manager'::text, 'surveyor'::text, 'yard'::text, 'viewer'::text])))
);
CREATE UNIQUE INDEX membership_of_person ON public.membership USING btree (organisation_id, person_id) WHERE (ended_at IS NULL);
alter table membership enable row level security;
alter table membership force row level security;
create policy own_organisation on membership
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on membership to garboard_app;

create table notice_answer (
  organisation_id uuid not null,
  id uuid not null,
  notice_id uuid not null,
  item_id uuid not null,
  vessel_id uuid not null,
  answer text not null,
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
  recorded_at timestamp with time zone not null,
  constraint notice_answer_pkey PRIMARY KEY (organisation_id, id),
  constraint notice_answer_organisation_id_corrects_key UNIQUE (organisation_id, corrects),
  constraint notice_answer_organisation_id_corrects_fkey FOREIGN KEY (organisation_id, corrects) REFERENCES notice_answer(organisation_id, id),
  constraint notice_answer_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint notice_answer_organisation_id_notice_id_fkey FOREIGN KEY (organisation_id, notice_id) REFERENCES safety_notice(organisation_id, id),
  constraint notice_answer_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint notice_answer_answer_check CHECK ((answer = ANY (ARRAY['done'::text, 'not_affected'::text, 'deferred'::text, 'reopened'::text]))),
  constraint notice_answer_check CHECK (((answer = 'deferred'::text) = (until_day IS NOT NULL)))
);
CREATE INDEX answer_of_item ON public.notice_answer USING btree (organisation_id, item_id, id);
CREATE INDEX answer_to_notice ON public.notice_answer USING btree (organisation_id, notice_id, item_id, id);
alter table notice_answer enable row level security;
alter table notice_answer force row level security;
create policy own_organisation on notice_answer
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on notice_answer as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on notice_answer to garboard_app;

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
  due_from date not null,
  suspended datemultirange not null default '{}'::datemultirange,
  constraint obligation_pkey PRIMARY KEY (organisation_id, item_id, rule_id, duty),
  constraint obligation_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint obligation_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint obligation_check CHECK (((overdue_after = 'infinity'::date) = (due_on = 'infinity'::date)))
);
CREATE INDEX obligation_due ON public.obligation USING btree (organisation_id, overdue_after, item_id, rule_id, duty);
CREATE INDEX obligation_of_notice ON public.obligation USING btree (organisation_id, rule_id, item_id) WHERE (rule_id ~~ 'notice:%'::text);
CREATE INDEX obligation_of_vessel ON public.obligation USING btree (organisation_id, vessel_id, overdue_after, due_from, suspended, weight);
CREATE INDEX obligation_suspended ON public.obligation USING btree (organisation_id, overdue_after) WHERE (suspended <> '{}'::datemultirange);
alter table obligation enable row level security;
alter table obligation force row level security;
create policy own_organisation on obligation
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on obligation as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant delete, insert, select, update on obligation to garboard_app;

create table organisation (
  id uuid not null,
  name text not null,
  time_zone text not null default 'UTC'::text,
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint organisation_pkey PRIMARY KEY (id),
  constraint organisation_name_check CHECK ((name <> ''::text))
);
CREATE INDEX organisation_by_name ON public.organisation USING btree (lower(name));
alter table organisation enable row level security;
create policy own_organisation on organisation
  using (id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on organisation to garboard_app;

create table override (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  item_id uuid,
  rule_id text not null,
  duty text not null,
  period text not null,
  weight text not null,
  decided_by text not null,
  reason text not null,
  document text not null,
  starts_on date not null,
  set_by text not null,
  recorded_at timestamp with time zone not null,
  ended_on date,
  ended_at timestamp with time zone,
  ended_by text,
  ended_reason text,
  constraint override_pkey PRIMARY KEY (organisation_id, id),
  constraint override_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint override_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint override_check CHECK ((num_nulls(ended_on, ended_at, ended_by, ended_reason) = ANY (ARRAY[0, 4]))),
  constraint override_period_check CHECK (((period ~ '^P(\d+Y)?(\d+M)?(\d+W)?(\d+D)?$'::text) AND (period <> 'P'::text))),
  constraint override_weight_check CHECK ((weight = ANY (ARRAY['maker'::text, 'insurer'::text, 'own'::text])))
);
CREATE INDEX override_of_vessel ON public.override USING btree (organisation_id, vessel_id, starts_on, id);
alter table override enable row level security;
alter table override force row level security;
create policy own_organisation on override
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on override as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on override to garboard_app;

create table own_rule (
  organisation_id uuid not null,
  id uuid not null,
  version integer not null,
  created_at timestamp with time zone not null,
  constraint own_rule_pkey PRIMARY KEY (organisation_id, id),
  constraint own_rule_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table own_rule enable row level security;
alter table own_rule force row level security;
create policy own_organisation on own_rule
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on own_rule to garboard_app;

create table own_rule_version (
  organisation_id uuid not null,
  rule_id uuid not null,
  number integer not null,
  takes_effect_on date not null,
  definition jsonb,
  decided_by text not null,
  reason text not null,
  document text not null,
  set_by text not null,
  recorded_at timestamp with time zone not null,
  constraint own_rule_version_pkey PRIMARY KEY (organisation_id, rule_id, number),
  constraint own_rule_version_organisation_id_rule_id_fkey FOREIGN KEY (organisation_id, rule_id) REFERENCES own_rule(organisation_id, id),
  constraint own_rule_version_number_check CHECK ((number > 0))
);
alter table own_rule_version enable row level security;
alter table own_rule_version force row level security;
create policy own_organisation on own_rule_version
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on own_rule_version to garboard_app;

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
  recorded_at timestamp with time zone not null,
  constraint reading_pkey PRIMARY KEY (organisation_id, id),
  constraint reading_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id)
);
CREATE INDEX reading_of_visit ON public.reading USING btree (organisation_id, visit_id, id);
alter table reading enable row level security;
alter table reading force row level security;
create policy own_organisation on reading
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on reading as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on reading to garboard_app;

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
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint referral_pkey PRIMARY KEY (organisation_id, id),
  constraint referral_organisation_id_finding_id_fkey FOREIGN KEY (organisation_id, finding_id) REFERENCES finding(organisation_id, id),
  constraint referral_organisation_id_item_id_fkey FOREIGN KEY (organisation_id, item_id) REFERENCES item(organisation_id, id),
  constraint referral_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint referral_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id)
);
CREATE INDEX referral_of_vessel ON public.referral USING btree (organisation_id, vessel_id, id);
alter table referral enable row level security;
alter table referral force row level security;
create policy own_organisation on referral
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on referral as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on referral to garboard_app;

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
  begun_at timestamp with time zone not null,
  finished_at timestamp with time zone,
  constraint rule_change_pkey PRIMARY KEY (organisation_id, id),
  constraint rule_change_organisation_id_rule_id_number_key UNIQUE (organisation_id, rule_id, number),
  constraint rule_change_organisation_id_rule_id_number_fkey FOREIGN KEY (organisation_id, rule_id, number) REFERENCES own_rule_version(organisation_id, rule_id, number)
);
CREATE INDEX rule_change_unfinished ON public.rule_change USING btree (organisation_id, id) WHERE (finished_at IS NULL);
alter table rule_change enable row level security;
alter table rule_change force row level security;
create policy own_organisation on rule_change
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on rule_change to garboard_app;

create table safety_notice (
  organisation_id uuid not null,
  id uuid not null,
  title text not null,
  publisher text not null,
  reference text,
  issued_on date not null,
  address text,
  document text,
  kinds text[] not null,
  makers text[] not null,
  models text[] not null,
  serials jsonb not null,
  made_from date,
  made_to date,
  hazard text not null,
  action_kind text not null,
  action_words text not null,
  deadline_kind text not null,
  deadline_on date,
  deadline_days integer,
  weight text not null,
  recorded_by text not null,
  recorded_at timestamp with time zone not null,
  withdrawn_on date,
  withdrawn_at timestamp with time zone,
  withdrawn_by text,
  withdrawn_reason text,
  constraint safety_notice_pkey PRIMARY KEY (organisation_id, id),
  constraint safety_notice_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint safety_notice_action_kind_check CHECK ((action_kind = ANY (ARRAY['stop_using'::text, 'inspect'::text, 'return'::text, 'replace'::text]))),
  constraint safety_notice_check CHECK ((num_nulls(address, document) < 2)),
  constraint safety_notice_check1 CHECK (((deadline_kind = 'on'::text) = (deadline_on IS NOT NULL))),
  constraint safety_notice_check2 CHECK (((deadline_kind = 'days_after_issue'::text) = (deadline_days IS NOT NULL))),
  constraint safety_notice_check3 CHECK ((num_nulls(withdrawn_on, withdrawn_at, withdrawn_by, withdrawn_reason) = ANY (ARRAY[0, 4]))),
  constraint safety_notice_deadline_kind_check CHECK ((deadline_kind = ANY (ARRAY['on'::text, 'days_after_issue'::text, 'before_next_use'::text]))),
  constraint safety_notice_kinds_check CHECK ((cardinality(kinds) > 0)),
  constraint safety_notice_weight_check CHECK ((weight = ANY (ARRAY['maker'::text, 'law'::text])))
);
CREATE INDEX safety_notice_by_day ON public.safety_notice USING btree (organisation_id, issued_on, id);
alter table safety_notice enable row level security;
alter table safety_notice force row level security;
create policy own_organisation on safety_notice
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on safety_notice to garboard_app;

create table saved_view (
  organisation_id uuid not null,
  id uuid not null,
  name text not null,
  page text not null,
  filters jsonb not null,
  owner_id uuid,
  saved_by text not null,
  created_at timestamp with time zone not null,
  removed_at timestamp with time zone,
  version integer not null default 1,
  constraint saved_view_pkey PRIMARY KEY (organisation_id, id),
  constraint saved_view_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint saved_view_name_check CHECK ((name <> ''::text)),
  constraint saved_view_page_check CHECK ((page = ANY (ARRAY['fleet'::text, 'due'::text])))
);
CREATE INDEX saved_view_by_name ON public.saved_view USING btree (organisation_id, name, id);
alter table saved_view enable row level security;
alter table saved_view force row level security;
create policy own_organisation on saved_view
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on saved_view to garboard_app;

create table search_word (
  organisation_id uuid not null,
  word text not null,
  subject_id uuid not null,
  vessel_id uuid not null,
  is_item boolean not null,
  constraint search_word_pkey PRIMARY KEY (organisation_id, word, subject_id),
  constraint search_word_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id)
);
CREATE INDEX search_word_of_subject ON public.search_word USING btree (organisation_id, subject_id, word);
alter table search_word enable row level security;
alter table search_word force row level security;
create policy own_organisation on search_word
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on search_word as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant delete, insert, select on search_word to garboard_app;

create table season (
  organisation_id uuid not null,
  starts text,
  ends text,
  version integer not null,
  constraint season_pkey PRIMARY KEY (organisation_id),
  constraint season_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint season_check CHECK (((starts IS NULL) = (ends IS NULL))),
  constraint season_ends_check CHECK ((ends ~ '^\d{2}-\d{2}$'::text)),
  constraint season_starts_check CHECK ((starts ~ '^\d{2}-\d{2}$'::text))
);
alter table season enable row level security;
alter table season force row level security;
create policy own_organisation on season
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on season to garboard_app;

create table share_link (
  organisation_id uuid not null,
  id uuid not null,
  label text not null,
  vessel_ids uuid[],
  shows_value boolean not null,
  secret_hash bytea not null,
  made_by text not null,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  revoked_at timestamp with time zone,
  version integer not null default 1,
  purpose text not null default 'look'::text,
  finding_ids uuid[],
  constraint share_link_pkey PRIMARY KEY (organisation_id, id),
  constraint share_link_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint share_link_check CHECK (((purpose = 'yard'::text) = (finding_ids IS NOT NULL))),
  constraint share_link_check1 CHECK (((purpose <> 'owner'::text) OR (cardinality(vessel_ids) = 1))),
  constraint share_link_finding_ids_check CHECK ((cardinality(finding_ids) > 0)),
  constraint share_link_purpose_check CHECK ((purpose = ANY (ARRAY['look'::text, 'yard'::text, 'owner'::text]))),
  constraint share_link_vessel_ids_check CHECK ((cardinality(vessel_ids) > 0))
);
alter table share_link enable row level security;
alter table share_link force row level security;
create policy own_organisation on share_link
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on share_link to garboard_app;

create table share_view (
  organisation_id uuid not null,
  id uuid not null,
  link_id uuid not null,
  at timestamp with time zone not null,
  user_agent text,
  constraint share_view_pkey PRIMARY KEY (organisation_id, id),
  constraint share_view_organisation_id_link_id_fkey FOREIGN KEY (organisation_id, link_id) REFERENCES share_link(organisation_id, id)
);
CREATE INDEX share_view_of_link ON public.share_view USING btree (organisation_id, link_id, at DESC);
alter table share_view enable row level security;
alter table share_view force row level security;
create policy own_organisation on share_view
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select on share_view to garboard_app;

create table sign_in_link (
  organisation_id uuid not null,
  id uuid not null,
  secret_hash bytea not null,
  created_at timestamp with time zone not null,
  expires_at timestamp with time zone not null,
  used_at timestamp with time zone,
  person_id uuid not null,
  constraint sign_in_link_pkey PRIMARY KEY (organisation_id, id),
  constraint sign_in_link_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table sign_in_link enable row level security;
alter table sign_in_link force row level security;
create policy own_organisation on sign_in_link
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on sign_in_link to garboard_app;

create table situation (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  starts_on date not null,
  place text not null,
  use text not null,
  dismantled boolean not null,
  under_repair boolean not null,
  recorded_at timestamp with time zone not null,
  constraint situation_pkey PRIMARY KEY (organisation_id, id),
  constraint situation_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint situation_place_check CHECK ((place = ANY (ARRAY['afloat'::text, 'ashore'::text]))),
  constraint situation_use_check CHECK ((use = ANY (ARRAY['in_commission'::text, 'laid_up'::text, 'out_of_service'::text])))
);
CREATE INDEX situation_of_vessel ON public.situation USING btree (organisation_id, vessel_id, starts_on, id);
alter table situation enable row level security;
alter table situation force row level security;
create policy own_organisation on situation
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on situation as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on situation to garboard_app;

create table survey_route (
  organisation_id uuid not null,
  craft text not null,
  zones jsonb not null,
  version integer not null,
  constraint survey_route_pkey PRIMARY KEY (organisation_id, craft),
  constraint survey_route_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id)
);
alter table survey_route enable row level security;
alter table survey_route force row level security;
create policy own_organisation on survey_route
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
grant insert, select, update on survey_route to garboard_app;

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
  created_at timestamp with time zone not null,
  completed_on date,
  completed_at timestamp with time zone,
  completed_by text,
  sealed text,
  sealed_hash bytea,
  version integer not null default 1,
  constraint survey_visit_pkey PRIMARY KEY (organisation_id, id),
  constraint survey_visit_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint survey_visit_check CHECK ((((completed_at IS NULL) = (sealed_hash IS NULL)) AND ((completed_at IS NULL) = (sealed IS NULL))))
);
CREATE INDEX visit_by_day ON public.survey_visit USING btree (organisation_id, started_on DESC, id DESC);
CREATE INDEX visit_of_vessel ON public.survey_visit USING btree (organisation_id, vessel_id, started_on DESC, id DESC);
alter table survey_visit enable row level security;
alter table survey_visit force row level security;
create policy own_organisation on survey_visit
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on survey_visit as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on survey_visit to garboard_app;

create table upload (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  said jsonb not null,
  sha256 bytea not null,
  bytes integer not null,
  received integer not null default 0,
  evidence_id uuid,
  refused text,
  created_by text not null,
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint upload_pkey PRIMARY KEY (organisation_id, id),
  constraint upload_organisation_id_evidence_id_fkey FOREIGN KEY (organisation_id, evidence_id) REFERENCES evidence(organisation_id, id),
  constraint upload_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id),
  constraint upload_bytes_check CHECK ((bytes > 0)),
  constraint upload_check CHECK (((received >= 0) AND (received <= bytes))),
  constraint upload_check1 CHECK (((evidence_id IS NULL) OR (refused IS NULL))),
  constraint upload_sha256_check CHECK ((length(sha256) = 32))
);
CREATE INDEX upload_by_age ON public.upload USING btree (organisation_id, created_at);
alter table upload enable row level security;
alter table upload force row level security;
create policy own_organisation on upload
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on upload as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant delete, insert, select, update on upload to garboard_app;

create table upload_piece (
  organisation_id uuid not null,
  upload_id uuid not null,
  vessel_id uuid not null,
  from_byte integer not null,
  body bytea not null,
  constraint upload_piece_pkey PRIMARY KEY (organisation_id, upload_id, from_byte),
  constraint upload_piece_organisation_id_upload_id_fkey FOREIGN KEY (organisation_id, upload_id) REFERENCES upload(organisation_id, id) ON DELETE CASCADE
);
alter table upload_piece enable row level security;
alter table upload_piece force row level security;
create policy own_organisation on upload_piece
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on upload_piece as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant delete, insert, select on upload_piece to garboard_app;

create table vessel (
  organisation_id uuid not null,
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
  identifiers jsonb not null default '{}'::jsonb,
  value_minor bigint,
  value_currency text,
  schemes text[] not null default '{}'::text[],
  time_zone text not null,
  home_port text,
  created_at timestamp with time zone not null,
  version integer not null default 1,
  constraint vessel_pkey PRIMARY KEY (organisation_id, id),
  constraint vessel_organisation_id_fkey FOREIGN KEY (organisation_id) REFERENCES organisation(id),
  constraint vessel_check CHECK (((value_minor IS NULL) = (value_currency IS NULL)))
);
CREATE INDEX vessel_by_name ON public.vessel USING btree (organisation_id, name, id);
alter table vessel enable row level security;
alter table vessel force row level security;
create policy own_organisation on vessel
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on vessel as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on vessel to garboard_app;

create table vessel_event (
  organisation_id uuid not null,
  id uuid not null,
  vessel_id uuid not null,
  event text not null,
  on_day date not null,
  planned boolean not null,
  note text,
  recorded_at timestamp with time zone not null,
  constraint vessel_event_pkey PRIMARY KEY (organisation_id, id),
  constraint vessel_event_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id)
);
CREATE INDEX event_of_vessel ON public.vessel_event USING btree (organisation_id, vessel_id, on_day, id);
alter table vessel_event enable row level security;
alter table vessel_event force row level security;
create policy own_organisation on vessel_event
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on vessel_event as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on vessel_event to garboard_app;

create table vessel_standing (
  organisation_id uuid not null,
  vessel_id uuid not null,
  items integer not null,
  dated integer not null,
  undated integer not null,
  earliest_overdue_after date,
  constraint vessel_standing_pkey PRIMARY KEY (organisation_id, vessel_id),
  constraint vessel_standing_organisation_id_vessel_id_fkey FOREIGN KEY (organisation_id, vessel_id) REFERENCES vessel(organisation_id, id)
);
alter table vessel_standing enable row level security;
alter table vessel_standing force row level security;
create policy own_organisation on vessel_standing
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on vessel_standing as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select, update on vessel_standing to garboard_app;

create table visit_addendum (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  name text not null,
  words text not null,
  reason text not null,
  recorded_by text not null,
  recorded_at timestamp with time zone not null,
  constraint visit_addendum_pkey PRIMARY KEY (organisation_id, id),
  constraint visit_addendum_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id)
);
CREATE INDEX addendum_of_visit ON public.visit_addendum USING btree (organisation_id, visit_id, id);
alter table visit_addendum enable row level security;
alter table visit_addendum force row level security;
create policy own_organisation on visit_addendum
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on visit_addendum as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on visit_addendum to garboard_app;

create table visit_answer (
  organisation_id uuid not null,
  id uuid not null,
  visit_id uuid not null,
  vessel_id uuid not null,
  zone text not null,
  answer text not null,
  reason text,
  words text,
  recorded_by text not null,
  recorded_at timestamp with time zone not null,
  constraint visit_answer_pkey PRIMARY KEY (organisation_id, id),
  constraint visit_answer_organisation_id_visit_id_fkey FOREIGN KEY (organisation_id, visit_id) REFERENCES survey_visit(organisation_id, id),
  constraint visit_answer_answer_check CHECK ((answer = ANY (ARRAY['sound'::text, 'sighting'::text, 'not_examined'::text])))
);
CREATE INDEX answer_of_visit ON public.visit_answer USING btree (organisation_id, visit_id, id);
alter table visit_answer enable row level security;
alter table visit_answer force row level security;
create policy own_organisation on visit_answer
  using (organisation_id = (current_setting('app.organisation'::text))::uuid)
  with check (organisation_id = (current_setting('app.organisation'::text))::uuid);
create policy own_vessels on visit_answer as restrictive
  using
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END
  with check
CASE
    WHEN (( SELECT current_setting('app.vessels'::text) AS current_setting) = 'all'::text) THEN true
    ELSE (vessel_id = ANY (( SELECT (NULLIF(current_setting('app.vessels'::text), 'all'::text))::uuid[] AS "nullif")::uuid[]))
END;
grant insert, select on visit_answer to garboard_app;

CREATE OR REPLACE FUNCTION public.begin_where_last_here()
 RETURNS trigger
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  if tg_op = 'INSERT' and new."activeOrganisationId" is null then
    select b.organisation_id::text into new."activeOrganisationId"
      from auth.belonging b where b.person_id = new."userId"
     order by b.last_here desc nulls last, b.organisation_id limit 1;
  end if;
  update auth.belonging b set last_here = pg_catalog.clock_timestamp()
   where b.person_id = new."userId" and b.organisation_id::text = new."activeOrganisationId";
  return new;
end $function$
;

CREATE OR REPLACE FUNCTION public.erase_person(person uuid)
 RETURNS void
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
  delete from auth.verification where value = person::text;
  delete from auth.session where "userId" = person;
  delete from auth.account where "userId" = person;
  delete from auth.passkey where "userId" = person;
  delete from auth."twoFactor" where "userId" = person;
  update auth."user" set name = '', email = person::text || '@erased.invalid', "emailVerified" = false, image = null,
    "twoFactorEnabled" = false, "updatedAt" = pg_catalog.now() where id = person;
$function$
;

CREATE OR REPLACE FUNCTION public.go_to_organisation(session uuid, organisation uuid)
 RETURNS boolean
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
  with moved as (
    update auth.session s set "activeOrganisationId" = organisation::text, "updatedAt" = pg_catalog.now()
     where s.id = go_to_organisation.session
       and exists (select from auth.belonging b where b.person_id = s."userId" and b.organisation_id = organisation)
    returning 1)
  select exists (select from moved)
$function$
;

CREATE OR REPLACE FUNCTION public.keep_belonging()
 RETURNS trigger
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO ''
AS $function$
begin
  if new.ended_at is not null then
    delete from auth.belonging where person_id = new.person_id and organisation_id = new.organisation_id;
  else
    insert into auth.belonging values (new.person_id, new.organisation_id, new.role, new.vessel_ids)
      on conflict (person_id, organisation_id) do update set role = excluded.role, vessel_ids = excluded.vessel_ids;
  end if;
  return null;
end $function$
;

CREATE OR REPLACE FUNCTION public.keep_words_of_item()
 RETURNS trigger
 LANGUAGE plpgsql
 SET search_path TO 'pg_catalog', 'public'
AS $function$ begin
  delete from search_word where organisation_id = new.organisation_id and subject_id = new.id;
  insert into search_word (organisation_id, word, subject_id, vessel_id, is_item)
  select new.organisation_id, w.word, new.id, new.vessel_id, true
  from words_of_item(new.label, new.kind, new.zone, new.maker, new.model, new.serial_number) w;
  return null;
end $function$
;

CREATE OR REPLACE FUNCTION public.keep_words_of_vessel()
 RETURNS trigger
 LANGUAGE plpgsql
 SET search_path TO 'pg_catalog', 'public'
AS $function$ begin
  delete from search_word where organisation_id = new.organisation_id and subject_id = new.id;
  insert into search_word (organisation_id, word, subject_id, vessel_id, is_item)
  select new.organisation_id, w.word, new.id, new.id, false
  from words_of_vessel(new.name, new.type, new.home_port, new.identifiers) w;
  return null;
end $function$
;

CREATE OR REPLACE FUNCTION public.organisations_of(person uuid)
 RETURNS TABLE(organisation_id uuid, name text, time_zone text, role text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
  select o.id, o.name, o.time_zone, b.role
    from auth.belonging b join public.organisation o on o.id = b.organisation_id
   where b.person_id = person
   order by pg_catalog.lower(o.name), o.id
$function$
;

CREATE OR REPLACE FUNCTION public.people_of_organisation()
 RETURNS TABLE(person_id uuid, name text, email text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
  select u.id, u.name, u.email
    from auth."user" u
   where u.email not like '%@erased.invalid'
     and u.id in (select m.person_id from public.membership m
                   where m.organisation_id = pg_catalog.current_setting('app.organisation')::uuid)
$function$
;

CREATE OR REPLACE FUNCTION public.person_of_session(token text)
 RETURNS TABLE(person_id uuid, session_id uuid, name text, email text, organisation_id uuid, role text, vessel_ids uuid[])
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO ''
AS $function$
  select u.id, s.id, u.name, u.email, b.organisation_id, b.role, b.vessel_ids
    from auth.session s
    join auth."user" u on u.id = s."userId"
    left join auth.belonging b on b.person_id = u.id and b.organisation_id::text = s."activeOrganisationId"
   where s.token = person_of_session.token and s."expiresAt" > pg_catalog.now()
$function$
;

CREATE OR REPLACE FUNCTION public.search_words(said text)
 RETURNS TABLE(word text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO 'pg_catalog'
AS $function$
  select distinct w from regexp_split_to_table(lower(said), '[^[:alnum:]]+') w where w <> ''
$function$
;

CREATE OR REPLACE FUNCTION public.shift_day_counts(organisation uuid, net jsonb)
 RETURNS void
 LANGUAGE sql
 SET search_path TO 'pg_catalog', 'public'
 SET "app.vessels" TO 'all'
AS $function$
  insert into day_count (organisation_id, overdue_after, due_from, suspended, weight, n)
  select organisation, d.overdue_after, d.due_from, d.suspended, d.weight, d.n
  from jsonb_to_recordset(net)
    as d (overdue_after date, due_from date, suspended datemultirange, weight text, n integer)
  order by d.overdue_after, d.due_from, d.suspended, d.weight
  on conflict (organisation_id, overdue_after, due_from, suspended, weight) do update set n = day_count.n + excluded.n
$function$
;

CREATE OR REPLACE FUNCTION public.without_strokes(said text)
 RETURNS text
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO 'pg_catalog'
AS $function$
  select said || ' ' || regexp_replace(said, '[^[:alnum:]]', '', 'g')
$function$
;

CREATE OR REPLACE FUNCTION public.words_of_item(label text, kind text, zone text, maker text, model text, serial_number text)
 RETURNS TABLE(word text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO 'pg_catalog', 'public'
AS $function$
  select search_words(concat_ws(' ', label, kind, zone, maker, without_strokes(model), without_strokes(serial_number)))
$function$
;

CREATE OR REPLACE FUNCTION public.words_of_vessel(name text, type text, home_port text, identifiers jsonb)
 RETURNS TABLE(word text)
 LANGUAGE sql
 IMMUTABLE
 SET search_path TO 'pg_catalog', 'public'
AS $function$
  select search_words(concat_ws(' ', name, type, home_port,
    (select string_agg(without_strokes(value), ' ') from jsonb_each_text(identifiers))))
$function$
;

CREATE TRIGGER keep_words AFTER INSERT OR UPDATE OF label, kind, zone, maker, model, serial_number ON public.item FOR EACH ROW EXECUTE FUNCTION keep_words_of_item();

CREATE TRIGGER keep_belonging AFTER INSERT OR UPDATE ON public.membership FOR EACH ROW EXECUTE FUNCTION keep_belonging();

CREATE TRIGGER keep_words AFTER INSERT OR UPDATE OF name, type, home_port, identifiers ON public.vessel FOR EACH ROW EXECUTE FUNCTION keep_words_of_vessel();

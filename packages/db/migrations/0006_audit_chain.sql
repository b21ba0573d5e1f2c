-- The audit becomes a chain: each row carries its number in its organisation and a hash over its own content
-- and the hash of the row before it. The head is the one row that writers of an organisation wait for, last
-- thing before they commit.

alter table audit
  add column sequence bigint,
  add column previous bytea,
  add column hash bytea,
  add column credential text,
  add column role text;

-- Rows from before the chain stay as they are and are counted; no new one comes in without its place.
alter table audit add constraint audit_is_chained
  check (num_nulls(sequence, previous, hash, credential, role) = 0) not valid;
create unique index audit_in_sequence on audit (organisation_id, sequence);
create index audit_of_actor on audit (organisation_id, actor, id);

create table audit_head (
  organisation_id uuid not null references organisation (id),
  sequence bigint not null,
  hash bytea not null,
  before_chain bigint not null default 0,
  primary key (organisation_id)
);

insert into audit_head (organisation_id, sequence, hash, before_chain)
select organisation_id, 0, decode(repeat('00', 32), 'hex'), count(*) from audit group by 1;

alter table audit_head enable row level security;
alter table audit_head force row level security;
create policy own_organisation on audit_head
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);

grant select, insert, update (sequence, hash) on audit_head to garboard_app;

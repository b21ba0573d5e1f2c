-- The words by which vessels and things aboard are found, kept by triggers so that no writer can forget them.
-- A word is found by its beginning: a range of the key, which row-level security leaves usable. Behind a policy
-- no index serves `like` or a text search, whose operators are not leakproof.

create table search_word (
  organisation_id uuid not null,
  word text collate "C" not null,
  subject_id uuid not null,
  vessel_id uuid not null,
  is_item boolean not null,
  primary key (organisation_id, word, subject_id),
  foreign key (organisation_id, vessel_id) references vessel (organisation_id, id)
);
create index search_word_of_subject on search_word (organisation_id, subject_id, word);

alter table search_word enable row level security;
create policy own_organisation on search_word
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);
create policy own_vessels on search_word as restrictive
  using (case when (select current_setting('app.vessels')) = 'all' then true
              else vessel_id = any ((select nullif(current_setting('app.vessels'), 'all')::uuid[])::uuid[]) end)
  with check (case when (select current_setting('app.vessels')) = 'all' then true
              else vessel_id = any ((select nullif(current_setting('app.vessels'), 'all')::uuid[])::uuid[]) end);
grant select, insert, delete on search_word to garboard_app;

create function search_words(said text) returns table (word text)
  language sql immutable set search_path = pg_catalog
as $$
  select distinct w from regexp_split_to_table(lower(said), '[^[:alnum:]]+') w where w <> ''
$$;

-- A number is also found as it is typed without its strokes: `rfd4471` for RFD-4471.
create function without_strokes(said text) returns text
  language sql immutable set search_path = pg_catalog
as $$
  select said || ' ' || regexp_replace(said, '[^[:alnum:]]', '', 'g')
$$;

create function words_of_vessel(name text, type text, home_port text, identifiers jsonb) returns table (word text)
  language sql immutable set search_path = pg_catalog, public
as $$
  select search_words(concat_ws(' ', name, type, home_port,
    (select string_agg(without_strokes(value), ' ') from jsonb_each_text(identifiers))))
$$;

create function words_of_item(label text, kind text, zone text, maker text, model text, serial_number text)
  returns table (word text) language sql immutable set search_path = pg_catalog, public
as $$
  select search_words(concat_ws(' ', label, kind, zone, maker, without_strokes(model), without_strokes(serial_number)))
$$;

create function keep_words_of_vessel() returns trigger language plpgsql set search_path = pg_catalog, public
as $$ begin
  delete from search_word where organisation_id = new.organisation_id and subject_id = new.id;
  insert into search_word (organisation_id, word, subject_id, vessel_id, is_item)
  select new.organisation_id, w.word, new.id, new.id, false
  from words_of_vessel(new.name, new.type, new.home_port, new.identifiers) w;
  return null;
end $$;

create function keep_words_of_item() returns trigger language plpgsql set search_path = pg_catalog, public
as $$ begin
  delete from search_word where organisation_id = new.organisation_id and subject_id = new.id;
  insert into search_word (organisation_id, word, subject_id, vessel_id, is_item)
  select new.organisation_id, w.word, new.id, new.vessel_id, true
  from words_of_item(new.label, new.kind, new.zone, new.maker, new.model, new.serial_number) w;
  return null;
end $$;

create trigger keep_words after insert or update of name, type, home_port, identifiers on vessel
  for each row execute function keep_words_of_vessel();
create trigger keep_words after insert or update of label, kind, zone, maker, model, serial_number on item
  for each row execute function keep_words_of_item();

-- What is there already. Its owner reads past a policy only while that is not forced on owners too.
alter table vessel no force row level security;
alter table item no force row level security;
insert into search_word (organisation_id, word, subject_id, vessel_id, is_item)
select v.organisation_id, w.word, v.id, v.id, false
from vessel v, words_of_vessel(v.name, v.type, v.home_port, v.identifiers) w
union all
select i.organisation_id, w.word, i.id, i.vessel_id, true
from item i, words_of_item(i.label, i.kind, i.zone, i.maker, i.model, i.serial_number) w;
alter table vessel force row level security;
alter table item force row level security;
alter table search_word force row level security;

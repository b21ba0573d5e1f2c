-- Whoever signs in goes on where they were last, or where they belong at all; a first sign-in is at none.
alter table auth.belonging add column last_here timestamptz;

create function begin_where_last_here() returns trigger language plpgsql security definer set search_path = '' as $$
begin
  if tg_op = 'INSERT' and new."activeOrganisationId" is null then
    select b.organisation_id::text into new."activeOrganisationId"
      from auth.belonging b where b.person_id = new."userId"
     order by b.last_here desc nulls last, b.organisation_id limit 1;
  end if;
  update auth.belonging b set last_here = pg_catalog.clock_timestamp()
   where b.person_id = new."userId" and b.organisation_id::text = new."activeOrganisationId";
  return new;
end $$;
create trigger begin_where_last_here before insert or update of "activeOrganisationId" on auth."session"
  for each row execute function begin_where_last_here();

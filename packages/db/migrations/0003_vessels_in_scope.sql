-- A scope is an organisation and, within it, either every vessel or some: `app.vessels` is `all` or an array
-- of ids. Like the organisation's, a setting that is missing or empty is an error, never "all rows".
--
-- These policies are restrictive: they come on top of the organisation's. The settings are read once a
-- statement (a sub-select), not once a row; `nullif` because a writer who waited for another's row has every
-- sub-select read anew, needed or not, and `all` is no array.

do $$
declare
  t text;
  column_of_vessel text;
  guard constant text :=
    'case when (select current_setting(''app.vessels'')) = ''all'' then true
          else %s = any ((select nullif(current_setting(''app.vessels''), ''all'')::uuid[])::uuid[]) end';
begin
  foreach t in array array['vessel', 'situation', 'vessel_event', 'item', 'override', 'obligation', 'vessel_standing'] loop
    column_of_vessel := case t when 'vessel' then 'id' else 'vessel_id' end;
    execute format('create policy own_vessels on %I as restrictive using (%s) with check (%s)', t,
                   format(guard, column_of_vessel), format(guard, column_of_vessel));
  end loop;
end $$;

-- A fact belongs to the vessel of its item; the item's own policies say whether she is in scope.
create policy own_vessels on fact as restrictive
  using (case when (select current_setting('app.vessels')) = 'all' then true
              else exists (select from item i where i.organisation_id = fact.organisation_id and i.id = fact.item_id) end)
  with check (case when (select current_setting('app.vessels')) = 'all' then true
              else exists (select from item i where i.organisation_id = fact.organisation_id and i.id = fact.item_id) end);

-- What speaks of the whole fleet is read by those who may see the whole fleet. Everybody's changes are written.
create policy whole_fleet on audit as restrictive for select using (current_setting('app.vessels') = 'all');
create policy whole_fleet on day_count as restrictive using (current_setting('app.vessels') = 'all');

-- Whoever changes a vessel's dates moves the fleet's counts, though they may not read them: here alone the
-- scope is the whole fleet. One order of rows for everybody, so that two writers never wait in a ring.
create function shift_day_counts(organisation uuid, net jsonb) returns void
  language sql set search_path = pg_catalog, public set app.vessels = 'all'
as $$
  insert into day_count (organisation_id, overdue_after, due_on, weight, n)
  select organisation, d.overdue_after, d.due_on, d.weight, d.n
  from jsonb_to_recordset(net) as d (overdue_after date, due_on date, weight text, n integer)
  order by d.overdue_after, d.due_on, d.weight
  on conflict (organisation_id, overdue_after, due_on, weight) do update set n = day_count.n + excluded.n
$$;
revoke execute on function shift_day_counts from public;
grant execute on function shift_day_counts to garboard_app;

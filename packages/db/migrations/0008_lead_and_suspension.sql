-- A thing is called due from a day of its own: thirty days ahead, or less for a short interval. And what is
-- suspended while a vessel is laid up is counted apart: `suspended` holds the days on which a duty is.
--
-- Both follow from the facts. Until they are worked out again (by the next change of the vessel, or the
-- nightly check) the lead of a short interval stands at thirty days, as it did.
alter table obligation no force row level security;
alter table vessel_standing no force row level security;

alter table obligation add column due_from date;
alter table obligation add column suspended datemultirange not null default '{}';
update obligation set due_from = case when due_on = 'infinity' then due_on else due_on - 30 end,
  suspended = coalesce((
    select range_agg(daterange((span ->> 'from')::date, (span ->> 'until')::date, '[]'))
    from jsonb_array_elements(explanation -> 'suspended') as span), '{}');
alter table obligation alter column due_from set not null;
drop index obligation_of_vessel;
create index obligation_of_vessel on obligation (organisation_id, vessel_id, overdue_after, due_from, suspended, weight);
create index obligation_suspended on obligation (organisation_id, overdue_after) where suspended <> '{}';

drop function shift_day_counts;
drop table day_count;
create table day_count (
  organisation_id uuid not null references organisation (id),
  overdue_after date not null,
  due_from date not null,
  suspended datemultirange not null,
  weight text not null,
  n integer not null,
  primary key (organisation_id, overdue_after, due_from, suspended, weight)
);
alter table day_count enable row level security;
create policy own_organisation on day_count
  using (organisation_id = current_setting('app.organisation')::uuid)
  with check (organisation_id = current_setting('app.organisation')::uuid);
create policy whole_fleet on day_count as restrictive using (current_setting('app.vessels') = 'all');
grant select, insert, update, delete on day_count to garboard_app;
insert into day_count (organisation_id, overdue_after, due_from, suspended, weight, n)
select organisation_id, overdue_after, due_from, suspended, weight, count(*)::integer
from obligation group by 1, 2, 3, 4, 5;
alter table day_count force row level security;

create function shift_day_counts(organisation uuid, net jsonb) returns void
  language sql set search_path = pg_catalog, public set app.vessels = 'all'
as $$
  insert into day_count (organisation_id, overdue_after, due_from, suspended, weight, n)
  select organisation, d.overdue_after, d.due_from, d.suspended, d.weight, d.n
  from jsonb_to_recordset(net)
    as d (overdue_after date, due_from date, suspended datemultirange, weight text, n integer)
  order by d.overdue_after, d.due_from, d.suspended, d.weight
  on conflict (organisation_id, overdue_after, due_from, suspended, weight) do update set n = day_count.n + excluded.n
$$;
revoke execute on function shift_day_counts from public;
grant execute on function shift_day_counts to garboard_app;

-- What is ever suspended is looked at day by day instead.
update vessel_standing set earliest_overdue_after = (
  select min(overdue_after) from obligation o
  where o.organisation_id = vessel_standing.organisation_id and o.vessel_id = vessel_standing.vessel_id
    and overdue_after < 'infinity' and suspended = '{}');

alter table obligation force row level security;
alter table vessel_standing force row level security;

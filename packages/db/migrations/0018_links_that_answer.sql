-- What an outsider may do by a link besides looking: a yard reports the work that it was given, an owner says yes or
-- no to an estimate.
alter table share_link
  add column purpose text not null default 'look' check (purpose in ('look', 'yard', 'owner')),
  add column finding_ids uuid[] check (cardinality(finding_ids) > 0),
  add check ((purpose = 'yard') = (finding_ids is not null)),
  add check (purpose <> 'owner' or cardinality(vessel_ids) = 1);
comment on column share_link.finding_ids is 'of a yard''s link: the work that it was given, in the order in which it is shown';

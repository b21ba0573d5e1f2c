-- People: who somebody is (schema auth, kept by a library, tables as it asks for them), and where they belong
-- (membership and invitation: ours, under row-level security like everything of an organisation).

create schema auth;

create table auth."user" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "name" text not null, "email" text not null unique, "emailVerified" boolean not null, "image" text, "createdAt" timestamptz default CURRENT_TIMESTAMP not null, "updatedAt" timestamptz default CURRENT_TIMESTAMP not null, "twoFactorEnabled" boolean);
create table auth."session" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "expiresAt" timestamptz not null, "token" text not null unique, "createdAt" timestamptz default CURRENT_TIMESTAMP not null, "updatedAt" timestamptz not null, "ipAddress" text, "userAgent" text, "userId" uuid not null references auth."user" ("id") on delete cascade, "activeOrganisationId" text);
create table auth."account" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "accountId" text not null, "providerId" text not null, "userId" uuid not null references auth."user" ("id") on delete cascade, "accessToken" text, "refreshToken" text, "idToken" text, "accessTokenExpiresAt" timestamptz, "refreshTokenExpiresAt" timestamptz, "scope" text, "password" text, "createdAt" timestamptz default CURRENT_TIMESTAMP not null, "updatedAt" timestamptz not null);
create table auth."verification" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "identifier" text not null, "value" text not null, "expiresAt" timestamptz not null, "createdAt" timestamptz default CURRENT_TIMESTAMP not null, "updatedAt" timestamptz default CURRENT_TIMESTAMP not null);
create table auth."twoFactor" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "secret" text not null, "backupCodes" text not null, "userId" uuid not null references auth."user" ("id") on delete cascade, "verified" boolean, "failedVerificationCount" integer, "lockedUntil" timestamptz);
create table auth."passkey" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "name" text, "publicKey" text not null, "userId" uuid not null references auth."user" ("id") on delete cascade, "credentialID" text not null, "counter" integer not null, "deviceType" text not null, "backedUp" boolean not null, "transports" text, "createdAt" timestamptz, "aaguid" text);
create table auth."rateLimit" ("id" uuid default pg_catalog.gen_random_uuid() not null primary key, "key" text not null unique, "count" integer not null, "lastRequest" bigint not null);
create index "session_userId_idx" on auth."session" ("userId");
create index "account_userId_idx" on auth."account" ("userId");
create index "verification_identifier_idx" on auth."verification" ("identifier");
create index "twoFactor_secret_idx" on auth."twoFactor" ("secret");
create index "twoFactor_userId_idx" on auth."twoFactor" ("userId");
create index "passkey_userId_idx" on auth."passkey" ("userId");
create index "passkey_credentialID_idx" on auth."passkey" ("credentialID");

-- What cookies are signed with where no secret is configured.
create table auth.signing_secret (only_one boolean primary key default true check (only_one), secret text not null);

do $$ begin
  create role garboard_accounts nologin;
exception when duplicate_object or unique_violation then null;
end $$;
grant garboard_accounts to current_user;
grant usage on schema auth to garboard_accounts;
grant select, insert, update, delete on auth."user", auth."session", auth."account", auth."verification",
  auth."twoFactor", auth."passkey", auth."rateLimit" to garboard_accounts;

-- Who belongs to the organisation. A person who left stays as a row, so that the record can still say who did what.
create table membership (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  person_id uuid not null,
  role text not null check (role in ('owner', 'manager', 'surveyor', 'yard', 'viewer')),
  vessel_ids uuid[],
  joined_at timestamptz not null,
  ended_at timestamptz,
  version integer not null default 1,
  primary key (organisation_id, id),
  check (vessel_ids is null or (cardinality(vessel_ids) > 0 and role in ('surveyor', 'yard', 'viewer')))
);
comment on column membership.vessel_ids is 'null: the whole fleet';
create unique index membership_of_person on membership (organisation_id, person_id) where ended_at is null;

create table invitation (
  organisation_id uuid not null references organisation (id),
  id uuid not null,
  email text,
  role text not null check (role in ('owner', 'manager', 'surveyor', 'yard', 'viewer')),
  vessel_ids uuid[],
  secret_hash bytea not null,
  invited_by text not null,
  created_at timestamptz not null,
  expires_at timestamptz not null,
  accepted_at timestamptz,
  withdrawn_at timestamptz,
  version integer not null default 1,
  primary key (organisation_id, id),
  check (num_nonnulls(accepted_at, withdrawn_at) < 2),
  check (vessel_ids is null or (cardinality(vessel_ids) > 0 and role in ('surveyor', 'yard', 'viewer')))
);
comment on column invitation.email is 'null once it is accepted, withdrawn or erased: nobody needs it any more';

do $$
declare t text;
begin
  foreach t in array array['membership', 'invitation'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy own_organisation on %I using (organisation_id = current_setting(''app.organisation'')::uuid)
                    with check (organisation_id = current_setting(''app.organisation'')::uuid)', t);
  end loop;
end $$;
grant select, insert, update on membership, invitation to garboard_app;

-- A link signs in a person. Links and sessions without one do not open any more.
drop table session;
delete from sign_in_link;
alter table sign_in_link drop column role;
alter table sign_in_link add column person_id uuid not null;

-- Names may be told apart by their id alone: whether somebody else's organisation has a name is nobody's business.
drop index organisation_name;
create index organisation_by_name on organisation (lower(name));
alter table organisation add column version integer not null default 1;
grant insert, update (name, time_zone, version) on organisation to garboard_app;

-- The door's own list: which organisations a person belongs to, read before there is a scope. Kept by the trigger
-- alone; neither the application nor the library can read or write it.
create table auth.belonging (
  person_id uuid not null,
  organisation_id uuid not null,
  role text not null,
  vessel_ids uuid[],
  primary key (person_id, organisation_id)
);

create function keep_belonging() returns trigger language plpgsql security definer set search_path = '' as $$
begin
  if new.ended_at is not null then
    delete from auth.belonging where person_id = new.person_id and organisation_id = new.organisation_id;
  else
    insert into auth.belonging values (new.person_id, new.organisation_id, new.role, new.vessel_ids)
      on conflict (person_id, organisation_id) do update set role = excluded.role, vessel_ids = excluded.vessel_ids;
  end if;
  return null;
end $$;
create trigger keep_belonging after insert or update on membership for each row execute function keep_belonging();

-- Whose session it is and what they may in the organisation they are at; no row: nobody's, or run out.
create function person_of_session(token text)
returns table (person_id uuid, session_id uuid, name text, email text, organisation_id uuid, role text, vessel_ids uuid[])
language sql stable security definer set search_path = '' as $$
  select u.id, s.id, u.name, u.email, b.organisation_id, b.role, b.vessel_ids
    from auth.session s
    join auth."user" u on u.id = s."userId"
    left join auth.belonging b on b.person_id = u.id and b.organisation_id::text = s."activeOrganisationId"
   where s.token = person_of_session.token and s."expiresAt" > pg_catalog.now()
$$;

create function organisations_of(person uuid)
returns table (organisation_id uuid, name text, time_zone text, role text)
language sql stable security definer set search_path = '' as $$
  select o.id, o.name, o.time_zone, b.role
    from auth.belonging b join public.organisation o on o.id = b.organisation_id
   where b.person_id = person
   order by pg_catalog.lower(o.name), o.id
$$;

-- From now on the session is at that organisation; false where the person does not belong to it.
create function go_to_organisation(session uuid, organisation uuid) returns boolean
language sql security definer set search_path = '' as $$
  with moved as (
    update auth.session s set "activeOrganisationId" = organisation::text, "updatedAt" = pg_catalog.now()
     where s.id = go_to_organisation.session
       and exists (select from auth.belonging b where b.person_id = s."userId" and b.organisation_id = organisation)
    returning 1)
  select exists (select from moved)
$$;

-- Names of those who belong or belonged to the organisation of the scope. An erased person has none.
create function people_of_organisation()
returns table (person_id uuid, name text, email text)
language sql stable security definer set search_path = '' as $$
  select u.id, u.name, u.email
    from auth."user" u
   where u.email not like '%@erased.invalid'
     and u.id in (select m.person_id from public.membership m
                   where m.organisation_id = pg_catalog.current_setting('app.organisation')::uuid)
$$;

-- Takes everything away that says who the person was and lets them in. Their id stays, and what it stands beside.
create function erase_person(person uuid) returns void
language sql security definer set search_path = '' as $$
  delete from auth.verification where value = person::text;
  delete from auth.session where "userId" = person;
  delete from auth.account where "userId" = person;
  delete from auth.passkey where "userId" = person;
  delete from auth."twoFactor" where "userId" = person;
  update auth."user" set name = '', email = person::text || '@erased.invalid', "emailVerified" = false, image = null,
    "twoFactorEnabled" = false, "updatedAt" = pg_catalog.now() where id = person;
$$;

do $$
declare f text;
begin
  foreach f in array array['keep_belonging()', 'person_of_session(text)', 'organisations_of(uuid)',
                           'go_to_organisation(uuid, uuid)', 'people_of_organisation()', 'erase_person(uuid)'] loop
    execute format('revoke all on function %s from public', f);
  end loop;
  foreach f in array array['person_of_session(text)', 'organisations_of(uuid)', 'go_to_organisation(uuid, uuid)',
                           'people_of_organisation()', 'erase_person(uuid)'] loop
    execute format('grant execute on function %s to garboard_app', f);
  end loop;
end $$;

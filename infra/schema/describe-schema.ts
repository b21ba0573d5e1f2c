/** The database's own catalogue as readable SQL: tables with columns and constraints, indexes, policies, grants. */
import { ask } from '@garboard/tests/harness/test-database.ts';

const HEAD = `-- What the migrations make of an empty database, read from its catalogue by \`npm run schema\`.
-- For reading and review; the migrations are what is run.
`;

type Line = { readonly owner: string; readonly text: string };

/** The same text from every database that has had the same migrations. */
export async function describeSchema(databaseUrl: string): Promise<string> {
  const [columns, constraints, indexes, security, policies, grants, programs] = await Promise.all(
    [COLUMNS, CONSTRAINTS, INDEXES, SECURITY, POLICIES, GRANTS, PROGRAMS].map((query) => ask<Line>(databaseUrl, query)),
  );
  const of = (lines: readonly Line[] | undefined, table: string) =>
    (lines ?? []).filter((line) => line.owner === table).map(({ text }) => text);
  const tables = [...new Set(columns?.map((line) => line.owner))].map((table) => {
    const body = [...of(columns, table), ...of(constraints, table)].map((line) => `  ${line}`).join(',\n');
    const rest = [indexes, security, policies, grants].flatMap((lines) => of(lines, table));
    return [`create table ${table} (\n${body}\n);`, ...rest.map((line) => `${line};`)].join('\n');
  });
  return `${[HEAD, ...tables, ...(programs ?? []).map(({ text }) => `${text};`)]
    .join('\n\n')
    .replace(/ +$/gm, '')
    .replace(/\n{3,}/g, '\n\n')}\n`;
}

/** Plain tables of the public schema, but for the list of migrations itself. */
const TABLES = `(select oid, relname::text as name, relowner, relacl, relrowsecurity, relforcerowsecurity from pg_class
  where relkind in ('r', 'p') and relnamespace = 'public'::regnamespace and relname <> 'migration') t`;

const COLUMNS = `
  select t.name as owner, concat_ws(' ', quote_ident(a.attname), format_type(a.atttypid, a.atttypmod),
           case when a.attnotnull then 'not null' end, 'default ' || pg_get_expr(d.adbin, d.adrelid)) as text
    from ${TABLES}
    join pg_attribute a on a.attrelid = t.oid and a.attnum > 0 and not a.attisdropped
    left join pg_attrdef d on d.adrelid = t.oid and d.adnum = a.attnum
   order by t.name collate "C", a.attnum`;

const CONSTRAINTS = `
  select t.name as owner, 'constraint ' || quote_ident(c.conname) || ' ' || pg_get_constraintdef(c.oid) as text
    from ${TABLES} join pg_constraint c on c.conrelid = t.oid and c.contype in ('p', 'u', 'f', 'c', 'x')
   order by t.name collate "C", array_position(array['p', 'u', 'f', 'c', 'x'], c.contype::text), c.conname collate "C"`;

const INDEXES = `
  select t.name as owner, pg_get_indexdef(i.indexrelid) as text
    from ${TABLES} join pg_index i on i.indrelid = t.oid
   where not exists (select from pg_constraint c where c.conindid = i.indexrelid)
   order by t.name collate "C", i.indexrelid::regclass::text collate "C"`;

const SECURITY = `
  select t.name as owner, format('alter table %I %s row level security', t.name, word) as text
    from ${TABLES}, lateral (values ('enable', t.relrowsecurity), ('force', t.relforcerowsecurity)) flag (word, is_set)
   where is_set order by t.name collate "C", word collate "C"`;

const POLICIES = `
  select t.name as owner, concat_ws(' ', format('create policy %I on %I', p.polname, t.name),
           case when not p.polpermissive then 'as restrictive' end,
           'for ' || nullif(case p.polcmd when 'r' then 'select' when 'a' then 'insert' when 'w' then 'update'
                                          when 'd' then 'delete' else '' end, ''),
           E'\\n  using ' || pg_get_expr(p.polqual, p.polrelid),
           E'\\n  with check ' || pg_get_expr(p.polwithcheck, p.polrelid)) as text
    from ${TABLES} join pg_policy p on p.polrelid = t.oid
   order by t.name collate "C", p.polname collate "C"`;

const GRANTS = `
  select t.name as owner, format('grant %s on %I to %I',
           string_agg(lower(g.privilege_type), ', ' order by lower(g.privilege_type) collate "C"), t.name, r.rolname) as text
    from ${TABLES}, lateral aclexplode(t.relacl) g join pg_roles r on r.oid = g.grantee
   where g.grantee <> t.relowner group by t.name, r.rolname order by t.name collate "C", r.rolname collate "C"`;

/** Functions and the triggers that call them. */
const PROGRAMS = `
  select owner, text from (
    select '' as owner, pg_get_functiondef(p.oid) as text, 1 as place, p.proname::text as name
      from pg_proc p where p.pronamespace = 'public'::regnamespace
       and not exists (select from pg_depend d where d.objid = p.oid and d.deptype = 'e')
    union all
    select '', pg_get_triggerdef(g.oid), 2, t.name || '.' || g.tgname
      from ${TABLES} join pg_trigger g on g.tgrelid = t.oid and not g.tgisinternal
  ) program order by place, name collate "C"`;

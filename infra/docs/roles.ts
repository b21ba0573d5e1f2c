/** What is made from the one table of roles: the page, and the table for whoever has no domain at hand. */
import { may, PERMISSIONS, permissionsOf, ROLES, wordsOf } from '@garboard/domain/organisation/permission.ts';

export function rolesPage(): string {
  const head = `| may | ${ROLES.join(' | ')} |\n| --- |${' :-: |'.repeat(ROLES.length)}`;
  const rows = PERMISSIONS.map((permission) => {
    const marks = ROLES.map((role) => (permissionsOf({ role }).includes(permission) ? 'yes' : '—'));
    return `| ${wordsOf(permission)} (\`${permission}\`) | ${marks.join(' | ')} |`;
  });
  return `${[WHAT, [head, ...rows].join('\n'), BESIDES].join('\n\n')}\n`;
}

/** For the client: which roles may do each thing. */
export function rolesModule(): string {
  const rows = PERMISSIONS.map((permission) => {
    const roles = ROLES.filter((role) => may(role, permission)).map((role) => `'${role}'`);
    return `  ${permission}: [${roles.join(', ')}],`;
  });
  return `/** Made by \`npm run roles\`; not for editing. Which roles may do each thing, the most first. */
export const ROLES_THAT_MAY = {
${rows.join('\n')}
} as const;
`;
}

const WHAT = `# Who may do what

Made by \`npm run roles\` from \`packages/domain/src/organisation/permission.ts\`; not for editing. A person has one role in
each organisation they belong to, an API key has one role in its own.`;

const BESIDES = `Besides:

- \`surveyor\`, \`yard\` and \`viewer\` can be narrowed to some vessels. The database then shows and takes nothing of the others.
- Only an owner makes somebody an owner, or changes or removes one. The last owner can neither leave nor become something else.
- What a role may counts from the next request on: nothing that was granted before is carried in a session.
- Everybody sees who works here; addresses are shown to those who manage people.`;

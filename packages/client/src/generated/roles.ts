/** Made by `npm run roles`; not for editing. Which roles may do each thing, the most first. */
export const ROLES_THAT_MAY = {
  read: ['owner', 'manager', 'surveyor', 'yard', 'viewer'],
  record_facts: ['owner', 'manager', 'surveyor', 'yard'],
  keep_register: ['owner', 'manager'],
  answer_findings: ['owner', 'manager', 'surveyor', 'yard'],
  put_off_findings: ['owner', 'manager'],
  verify_findings: ['owner', 'manager', 'surveyor'],
  survey: ['owner', 'manager', 'surveyor'],
  take_originals: ['owner', 'manager', 'surveyor'],
  keep_rules: ['owner', 'manager'],
  manage_people: ['owner', 'manager'],
  read_audit: ['owner', 'manager'],
  share: ['owner', 'manager'],
  keep_keys: ['owner', 'manager'],
  keep_organisation: ['owner'],
} as const;

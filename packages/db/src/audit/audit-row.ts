/** Who changed what: one row a change, in the change's own transaction. */

export type AuditRow = {
  readonly id: string;
  readonly at: Date;
  /** Who answers for it, `kind:id`. */
  readonly actor: string;
  /** The session or key that was used, `kind:id`. */
  readonly credential: string;
  /** What they were allowed as at the time. */
  readonly role: string;
  readonly requestId: string;
  readonly verb: string;
  readonly subject:
    | 'vessel'
    | 'item'
    | 'fact'
    | 'situation'
    | 'event'
    | 'override'
    | 'rule'
    | 'rule_change'
    | 'saved_view'
    | 'share_link'
    | 'safety_notice'
    | 'notice_answer'
    | 'finding'
    | 'evidence'
    | 'survey_visit'
    | 'limitation'
    | 'referral'
    | 'api_key'
    | 'session'
    | 'person'
    | 'invitation'
    | 'organisation';
  readonly subjectId: string;
  readonly before: unknown;
  readonly after: unknown;
};

/** A row in its place. `hash` and `previous` in lower-case hexadecimal. */
export type ChainedRow = Omit<AuditRow, 'at' | 'subject'> & {
  readonly at: string;
  readonly subject: string;
  readonly organisationId: string;
  /** From 1, without gaps. */
  readonly sequence: number;
  readonly previous: string;
  readonly hash: string;
};

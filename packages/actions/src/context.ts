/** Who does it, where, and when: what every action needs besides its input. */
import type { Db } from '@garboard/db/pool.ts';
import type { Scope } from '@garboard/db/scope.ts';
import type { Permission, Role } from '@garboard/domain/organisation/permission.ts';

/** Who stands behind a change: a person signed in, a program's key, or the product's own upkeep. */
export type Actor =
  | { readonly kind: 'person'; readonly id: string; readonly sessionId: string; readonly role: Role }
  | {
      readonly kind: 'api_key';
      readonly id: string;
      readonly role: Role;
      /** Of what its role may, these alone. */
      readonly only?: readonly Permission[];
    }
  /** An outsider by a link: of a yard's role, the acts of the link alone. */
  | { readonly kind: 'share_link'; readonly id: string; readonly role: Role; readonly only: readonly Permission[] }
  | { readonly kind: 'upkeep'; readonly id: string; readonly role: Role };

/** `fingerprint` is a hash of what was asked, so that one key cannot stand for two different requests. */
export type Once = { readonly key: string; readonly fingerprint: Buffer };

/** What a person does for themselves, wherever they belong: `person.email` is verified, in lower case. */
export type PersonContext = {
  readonly db: Db;
  readonly person: { readonly id: string; readonly sessionId: string; readonly email: string };
  readonly requestId: string;
  readonly now: Date;
  readonly once?: Once;
};

export type ActionContext = Scope & {
  readonly db: Db;
  readonly actor: Actor;
  readonly requestId: string;
  readonly now: Date;
  readonly once?: Once;
};

/** A hard withdrawal age beats every service: what would fall after it is no longer asked for. */
import type { CountedLimit, Obligation } from './obligation.ts';

/** The duties of one rule, without those that fall after its withdrawal; the withdrawal says which. */
export function afterWithdrawal(obligations: readonly Obligation[]): readonly Obligation[] {
  const withdrawal = obligations.find((one) => one.action.kind === 'withdraw' && one.outcome.kind === 'dated');
  if (withdrawal?.outcome.kind !== 'dated') return obligations;
  const { dueOn } = withdrawal.outcome;
  const dropped = obligations.filter((one) => one.outcome.kind === 'dated' && one.outcome.dueOn > dueOn);
  return obligations
    .filter((one) => !dropped.includes(one))
    .map((one) => (one === withdrawal ? withDropped(one, dropped) : one));
}

function withDropped(withdrawal: Obligation, dropped: readonly Obligation[]): Obligation {
  const said: CountedLimit[] = dropped.map(({ action, outcome, explanation }) => ({
    limit: `${action.words}: not asked for any more, as it would fall after the withdrawal`,
    on: outcome.kind === 'dated' ? outcome.dueOn : null,
    factIds: explanation.binds?.factIds ?? [],
  }));
  const { explanation } = withdrawal;
  return { ...withdrawal, explanation: { ...explanation, alsoCounted: [...explanation.alsoCounted, ...said] } };
}

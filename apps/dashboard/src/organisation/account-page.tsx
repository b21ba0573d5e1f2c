/** One's own account: how to come in, where one is in, and which organisations it opens. */
import { useQuery } from '@tanstack/react-query';
import { type ReactNode, useId } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { account as words } from '../strings/account.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { accountQuery } from './account.query.ts';
import { Belongings } from './belongings.tsx';
import { Erasure } from './erasure.tsx';
import { Passkeys } from './passkeys.tsx';
import { PasswordSection } from './password-section.tsx';
import { SecondFactor } from './second-factor.tsx';
import { sessionQuery } from './session.query.ts';
import { Sessions } from './sessions.tsx';
import './people.css';

export function AccountPage() {
  const { data, error, isPending, refetch } = useQuery(accountQuery());
  const here = useQuery(sessionQuery()).data?.organisation?.id;
  return (
    <>
      <PageHeader title={words.title}>{data && <p>{words.intro(data.name, data.email)}</p>}</PageHeader>
      {isPending && <Waiting>{words.waiting}</Waiting>}
      {!isPending && !data && <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />}
      {data && (
        <div className="account">
          <Section title={words.belongings.title}>
            <Belongings here={here} />
          </Section>
          <Section title={words.password.title}>
            <PasswordSection hasPassword={data.hasPassword} />
          </Section>
          <Section title={words.second.title}>
            <SecondFactor isOn={data.secondFactor} hasPassword={data.hasPassword} />
          </Section>
          <Section title={words.passkeys.title}>
            <Passkeys passkeys={data.passkeys} />
          </Section>
          <Section title={words.sessions.title}>
            <Sessions sessions={data.sessions} />
          </Section>
          <Section title={words.erasure.title}>
            <Erasure />
          </Section>
        </div>
      )}
    </>
  );
}

function Section({ title, children }: { title: string; children: ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}

/** What an owner is asked, in the words that the answer is kept with. */
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { shared as words } from '../strings/share.ts';
import { formatDay } from '../ui/calendar.ts';
import { faultsOrDone } from '../ui/form-faults.ts';
import { type Box, QuickForm, type Typed } from '../ui/quick-form.tsx';
import { answerByLink, type SharedView } from './share.query.ts';

const { answerBoxes: boxes } = words;
const BOXES: readonly Box[] = [
  { key: 'yes', name: boxes.yes, kind: 'choice', choices: { yes: boxes.yesWords, no: boxes.noWords }, start: 'yes' },
  { key: 'name', name: boxes.name, fill: 'name' },
  { key: 'words', name: boxes.words, kind: 'long', optional: true },
];
type Offer = SharedView['offers'][number];

export function Offers({ view, token }: { view: SharedView; token: string }) {
  if (view.offers.length === 0) return null;
  return (
    <section aria-labelledby="offers" className="shared-work">
      <h2 id="offers">{words.offersTitle}</h2>
      <p className="quiet">{words.offersHow}</p>
      <ul>
        {view.offers.map((offer) => (
          <OfferLine key={offer.number} offer={offer} token={token} />
        ))}
      </ul>
    </section>
  );
}

function OfferLine({ offer: { number, offer, answered }, token }: { offer: Offer; token: string }) {
  const [open, setOpen] = useState(false);
  const queries = useQueryClient();
  const submit = (typed: Typed) =>
    faultsOrDone(async () => {
      const said = { number, offer, yes: typed.yes === 'yes', name: typed.name ?? '' };
      await answerByLink({ token, ...said, ...(typed.words?.trim() && { words: typed.words }) });
      await queries.invalidateQueries({ queryKey: ['shared', token] });
      setOpen(false);
    });
  return (
    <li>
      <p className="row-name">{offer}</p>
      {answered && (
        <p role="status">{words.said(answered.yes, answered.name, formatDay(answered.on), answered.offer === offer)}</p>
      )}
      {open ? (
        <QuickForm id={`offer-${number}`} boxes={BOXES} submit={boxes.submit} onSubmit={submit} />
      ) : (
        <button type="button" onClick={() => setOpen(true)}>
          {words.answer}
        </button>
      )}
    </li>
  );
}

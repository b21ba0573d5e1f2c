/** Beside the form: how the thing stands, and what is on record about it already. */
import { useQuery } from '@tanstack/react-query';
import { strings } from '../strings/item.ts';
import { strings as words } from '../strings/record.ts';
import { Day } from '../ui/day.tsx';
import { Standing } from '../ui/standing.tsx';
import { FactList } from './fact-list.tsx';
import { type Fact, factsQuery, type Item, obligationsQuery } from './item.query.ts';

const { form } = words;

export function BeforeRecording({ item, corrects }: { item: Item; corrects: Fact | undefined }) {
  const obligations = useQuery(obligationsQuery(item.id, undefined)).data?.items;
  const facts = useQuery(factsQuery(item.id)).data;
  return (
    <>
      {corrects && (
        <>
          <h3>{form.strikesOut}</h3>
          <FactList facts={[corrects]} itemId={item.id} vesselId={item.vesselId} asTheyAre />
        </>
      )}
      <h3>{form.asItStands}</h3>
      {obligations?.length === 0 && <p className="quiet">{form.nothingAsked}</p>}
      <ul className="stands">
        {obligations?.map((each) => (
          <li key={each.ruleId + each.duty}>
            <Standing standing={each.standing} />
            <span>{each.action.words}</span>
            <span>{each.dueOn ? <Day on={each.dueOn} /> : '–'}</span>
          </li>
        ))}
      </ul>
      {!corrects && facts && (
        <>
          <h3>{strings.facts}</h3>
          <FactList facts={facts} itemId={item.id} vesselId={item.vesselId} />
        </>
      )}
    </>
  );
}

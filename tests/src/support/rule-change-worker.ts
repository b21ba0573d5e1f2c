/** A process of its own that works through the rule changes of one organisation, so that it can be killed. */
import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import { openPools } from '@garboard/db/pool.ts';

const [url = '', organisationId = '', now = ''] = process.argv.slice(2);
const pools = openPools({ url });
await workThroughRuleChanges(pools.app, organisationId, new Date(now));
await pools.close();

/** What a boat of a certain sort often has aboard, to start her list from. */
import * as z from 'zod';
import { ItemKindCode } from '../item/item.ts';
import { pageOf } from '../shared.ts';

const TemplateItem = z
  .object({ kind: ItemKindCode, label: z.string(), zone: z.string(), quantity: z.int() })
  .meta({ id: 'TemplateItem', description: 'A row as `POST /v1/vessels/{vesselId}/items/batch` takes it.' });

const VesselTemplate = z
  .object({
    id: z.string(),
    name: z.string(),
    forWhom: z.string().meta({ description: 'What sort of boat it is meant for.' }),
    items: z.array(TemplateItem),
  })
  .meta({
    id: 'VesselTemplate',
    example: {
      id: 'safety_boat',
      name: 'Safety boat',
      forWhom: 'A rigid inflatable or open launch with an outboard engine that looks after dinghies.',
      items: [{ kind: 'steering_cable', label: 'Steering cable', zone: 'cockpit', quantity: 1 }],
    },
  });
export const VesselTemplatePage = pageOf(VesselTemplate, 'VesselTemplatePage');
export type VesselTemplatePage = z.infer<typeof VesselTemplatePage>;

import type { ItemKind } from '../item-kind.ts';

const PRINTED = 'on the face of it';

export const DOCUMENT_KINDS: readonly ItemKind[] = [
  {
    id: 'insurance_policy',
    itemClass: 'documents',
    name: 'insurance policy',
    zone: 'chart table',
    dates: {
      printed_expiry: 'the schedule of the policy',
      installed: 'the schedule of the policy: the day cover began',
    },
    attributes: [],
  },
  {
    id: 'certificate_of_documentation',
    itemClass: 'documents',
    name: 'certificate of documentation',
    zone: 'chart table',
    dates: { printed_expiry: PRINTED, installed: 'the day of issue, on the face of it' },
    attributes: [],
  },
  {
    id: 'tonnage_certificate',
    itemClass: 'documents',
    name: 'certificate of tonnage or measurement',
    zone: 'chart table',
    dates: {
      installed: 'the day of issue, on the face of it',
      inspected: "the measurement surveyor's report",
    },
    attributes: [],
  },
  {
    id: 'small_commercial_certificate',
    itemClass: 'documents',
    name: 'small commercial vessel certificate',
    zone: 'chart table',
    dates: {
      printed_expiry: PRINTED,
      installed: 'the day of issue, on the face of it',
      inspected: "the surveyor's report, of the out-of-water examination too",
    },
    attributes: [],
  },
];

import type { ItemKind } from '../item-kind.ts';

const FACE: ItemKind['dates'] = {
  printed_expiry: 'on the face of the certificate',
  inspected: "the surveyor's report, or the endorsement on the certificate",
};

export const CERTIFICATE_KINDS: readonly ItemKind[] = [
  {
    id: 'workboat_certificate',
    itemClass: 'documents',
    name: 'workboat or pilot boat certificate',
    zone: 'chart table',
    dates: FACE,
    attributes: [],
  },
  {
    id: 'convention_certificate',
    itemClass: 'documents',
    name: 'certificate under the harmonised system of survey',
    zone: 'chart table',
    dates: FACE,
    attributes: ['expiryLessOneDay', 'anniversaryDate'],
  },
  {
    id: 'certificate_of_inspection',
    itemClass: 'documents',
    name: 'certificate of inspection, small commercial vessel code',
    zone: 'chart table',
    dates: { ...FACE, installed: 'the day of issue, on the face of the certificate' },
    attributes: ['expiryLessOneDay'],
  },
  {
    id: 'inland_boat_certificate',
    itemClass: 'documents',
    name: 'boat safety certificate, inland waters',
    zone: 'chart table',
    dates: { ...FACE, inspected: "the examiner's report" },
    attributes: [],
  },
  {
    id: 'ship_radio_licence',
    itemClass: 'documents',
    name: 'ship radio licence',
    zone: 'chart table',
    dates: { inspected: "the licensing authority's confirmation" },
    attributes: [],
  },
];

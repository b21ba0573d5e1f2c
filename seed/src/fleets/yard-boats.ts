/** The yard's list: other people's boats. Invented, like everything else here. */
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import type { Inventory } from '../equipment/inventories.ts';
import type { Boat } from './boat.ts';

type Row = readonly [
  name: string,
  type: string,
  ageYears: number,
  lengthM: number,
  material: string,
  homePort: string,
  ...schemes: SchemeId[],
];

const boat = (carries: Inventory, rig: string | null, row: Row): Boat => {
  const [name, type, ageYears, lengthM, material, homePort, ...schemes] = row;
  return { name, type, carries, rig, ageYears, lengthM, material, homePort, schemes };
};

const open = (...row: Row) => boat('openBoat', null, row);
const small = (...row: Row) => boat('smallSailingBoat', 'sloop', row);
const sail = (...row: Row) => boat('sailingBoat', 'sloop', row);
const visiting = (...row: Row) => boat('visitingYacht', 'sloop', row);
const ketch = (...row: Row) => boat('trainingKetch', 'ketch', row);
const motor = (...row: Row) => boat('motorBoat', null, row);
const racer = (...row: Row) => boat('racingBoat', 'fractional sloop', row);

export const YARD_BOATS: readonly Boat[] = [
  open('Vesle Kari', 'open motor boat', 31, 5.6, 'pine on oak', 'Tangskjær'),
  open('Tullik', 'open motor boat', 12, 5.2, 'GRP', 'Tangskjær'),
  open('Kvikk', 'day boat', 8, 6.1, 'aluminium', 'Lomsøyhavn'),
  open('Brisling', 'open motor boat', 44, 6.4, 'larch on oak', 'Lomsøyhavn'),
  open('Doris', 'day boat', 5, 6.8, 'GRP', 'Kvernvågen'),
  small('Sølvpil', 'family cruiser', 38, 7.2, 'GRP', 'Tangskjær'),
  small('Krusning', 'family cruiser', 41, 7.6, 'GRP', 'Tangskjær'),
  small('Tyttebær', 'double-ender', 47, 7.9, 'GRP', 'Kvernvågen'),
  small('Måneskinn', 'clinker sloop', 58, 7.6, 'mahogany on oak', 'Tangskjær'),
  small('Skvetten', 'family cruiser', 29, 8.1, 'GRP', 'Sandholmskilen', 'insurer'),
  small('Ebba', 'day sailer', 16, 7.0, 'GRP', 'Lomsøyhavn'),
  small('Hvitveis', 'clinker sloop', 63, 7.8, 'oak', 'Sandholmskilen'),
  small('Liten Uro', 'family cruiser', 34, 8.3, 'GRP', 'Tangskjær', 'insurer'),
  sail('Anne Sofie', 'cruising yacht', 27, 10.1, 'GRP', 'Tangskjær', 'insurer'),
  sail('Havgløtt', 'double-ender', 45, 9.8, 'GRP', 'Tangskjær'),
  sail('Fru Inger', 'motor sailer', 36, 10.9, 'GRP', 'Kvernvågen', 'insurer'),
  sail('Morild', 'cruising yacht', 19, 11.3, 'GRP', 'Sandholmskilen', 'insurer'),
  sail('Drivved', 'cruising yacht', 33, 9.4, 'GRP', 'Lomsøyhavn'),
  sail('Taretroll', 'steel cutter', 28, 12.2, 'steel', 'Tangskjær', 'insurer'),
  sail('Blåmann', 'cruising yacht', 14, 10.6, 'GRP', 'Tangskjær', 'insurer'),
  sail('Solstreif', 'cruising yacht', 7, 11.8, 'GRP', 'Bruhavn', 'insurer'),
  sail('Hildegunn', 'double-ender', 52, 10.2, 'larch on oak', 'Tangskjær'),
  sail('Nykken', 'cruising yacht', 24, 9.9, 'GRP', 'Kvernvågen'),
  sail('Langfjær', 'cruising yacht', 10, 12.4, 'GRP', 'Bruhavn', 'insurer'),
  sail('Sjøgress', 'cruising yacht', 31, 9.1, 'GRP', 'Tangskjær'),
  sail('Maren', 'cruising yacht', 22, 10.4, 'GRP', 'Lomsøyhavn', 'insurer'),
  sail('Rundkast', 'aluminium cutter', 18, 12.9, 'aluminium', 'Sandholmskilen', 'insurer'),
  sail('Kobbe', 'cruising yacht', 40, 9.6, 'GRP', 'Tangskjær'),
  visiting('Second Thoughts', 'cruising yacht', 21, 11.2, 'GRP', 'Tarbottle Harbor', 'us_recreational', 'insurer'),
  visiting('Quiet Money', 'cruising yacht', 15, 12.0, 'GRP', 'Tarbottle Harbor', 'us_recreational'),
  ketch('Gamle Erik', 'training ketch', 61, 18.4, 'oak', 'Bruhavn', 'solas', 'insurer'),
  ketch('Svartskjold', 'working ketch', 84, 16.7, 'oak', 'Bruhavn', 'solas', 'insurer'),
  motor('Havdis', 'motor cruiser', 17, 9.3, 'GRP', 'Tangskjær', 'insurer'),
  motor('Lanterne', 'motor cruiser', 26, 8.7, 'GRP', 'Kvernvågen'),
  motor('Fjordglimt', 'motor cruiser', 9, 11.5, 'GRP', 'Bruhavn', 'insurer'),
  motor('Knøtt', 'coastal cruiser', 35, 8.2, 'GRP', 'Tangskjær'),
  motor('Storegut', 'pilot cutter, converted', 55, 13.1, 'oak', 'Lomsøyhavn', 'insurer'),
  racer('Kuling', 'offshore racer', 6, 11.0, 'carbon', 'Tangskjær', 'offshore_racing', 'insurer'),
  racer('Tverrsjø', 'offshore racer', 13, 10.7, 'GRP', 'Bruhavn', 'offshore_racing', 'insurer'),
  racer('Full Skur', 'offshore racer', 18, 9.7, 'GRP', 'Sandholmskilen', 'offshore_racing'),
];

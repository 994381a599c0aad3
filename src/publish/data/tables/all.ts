/** Every table of the data files. */
import { chemistryTables } from "./chemistry.ts";
import { comparingTables } from "./comparing.ts";
import { firingTables } from "./firings.ts";
import { glazeTables } from "./glazes.ts";
import { layerTables } from "./layers.ts";
import { leachTables } from "./leach-tests.ts";
import { studioTables } from "./studio.ts";
import type { Table } from "./table.ts";
import { tileTables } from "./tiles.ts";

export const tables: readonly Table[] = [
  ...tileTables,
  ...layerTables,
  ...comparingTables,
  ...glazeTables,
  ...chemistryTables,
  ...firingTables,
  ...leachTables,
  ...studioTables,
];

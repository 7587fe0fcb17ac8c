import type { Catalogue } from "../model/catalogue.ts";

/** The published name of a drive ("hexalobular 20"). */
export const driveName = ({ interfaces }: Catalogue, id: string): string =>
  interfaces.drives[id]?.name ?? id;

/** The name of a coupling. */
export const couplingName = ({ interfaces }: Catalogue, id: string): string =>
  interfaces.couplings[id]?.name ?? id;

/** The name of a head thread. */
export const threadName = ({ interfaces }: Catalogue, id: string): string =>
  interfaces.head_threads[id]?.name ?? id;

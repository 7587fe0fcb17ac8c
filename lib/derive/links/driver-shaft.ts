import { driveName } from "../registry-names.ts";
import type { Criteria } from "./ask.ts";

/** A driver shaft is found by the screw's drive. */
export const driverShaftCriteria: Criteria<"driver-shaft"> = {
  drive: ({ drive }, { catalogue, screw }) =>
    drive === screw.drive
      ? undefined
      : `drive ${driveName(catalogue, drive)}; ${driveName(catalogue, screw.drive)} is asked`,
};

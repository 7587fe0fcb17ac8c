import { expect, it } from "vitest";
import { answerOf, reasonsOf } from "../verdict-of.ts";

it("chooses the driver of the screw's drive", () => {
  expect(answerOf("locking", "driver")).toBe("driver-20");
  expect(reasonsOf("locking", "driver", "driver-10")).toEqual([
    "drive hexalobular 10; hexalobular 20 is asked",
  ]);
});

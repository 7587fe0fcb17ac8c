import { expect, it } from "vitest";
import { answerOf, change, reasonsOf } from "../verdict-of.ts";

it("joins the far side of the limiter where there is one, else the driver", () => {
  const stepped = change("instrument/limiter-16", "coupling_out").to("shaft-large");
  expect(reasonsOf("locking", "handle", "handle-small", [stepped])).toEqual([
    "takes small shaft coupling; large shaft coupling is asked",
  ]);
  expect(answerOf("neutral", "handle", [stepped])).toBe("handle-small");
});

import type { Rule } from "../../model/rule.ts";
import { fails, passes } from "../example.ts";

/** GS1 prefix of numbers that are given to no trade item: demonstrations and examples. From memory of the GS1 list of prefixes. */
const exampleNumber = /^0?952\d{10}$/;

/** A trade item number is one part's own, invented where the library is invented and nowhere else. */
export const gtinNamesOnePart: Rule = {
  id: "gtin-names-one-part",
  severity: "stop",
  about: "instrument",
  summary:
    "No two instruments share a GTIN; an invented library's numbers begin with 952, the prefix of examples, and no other library's do.",
  why: "The number on a tray label is what is typed into the order. Two parts under one number, or an invented number that somebody owns, bring the wrong part.",
  fix: "Copy the GTIN from the part's own label; in an invented library use numbers that begin with 952.",
  source: "GS1 General Specifications; prefix 952 from memory",
  *check({ catalogue }) {
    const first = new Map<string, string>();
    for (const { file, name, gtin } of catalogue.instruments.values()) {
      if (gtin === undefined) continue;
      const whole = gtin.padStart(14, "0");
      const owner = first.get(whole);
      if (owner === undefined) first.set(whole, name);
      else yield { file, path: ["gtin"], message: `GTIN ${gtin} is that of ${owner} too` };
      const isExample = exampleNumber.test(gtin);
      if (isExample !== catalogue.publisher.demo)
        yield {
          file,
          path: ["gtin"],
          message: isExample
            ? `Expected the GTIN of ${name}, got ${gtin}, which is an example's`
            : `Expected an invented GTIN that begins with 952 for ${name}, got ${gtin}`,
        };
    }
  },
  examples: [
    passes("a number of its own", "Drill 2.7: 9520000000127.", {
      "publisher/publisher demo": true,
      "instrument/drill-27-pilot gtin": "9520000000127",
    }),
    fails("one number twice", "Drill 2.7 and drill 2.0: both 9520000000127.", {
      "publisher/publisher demo": true,
      "instrument/drill-27-pilot gtin": "9520000000127",
      "instrument/drill-20 gtin": "09520000000127",
    }),
    fails("a number that may be somebody's", "An invented drill 2.7: 6291041500213.", {
      "publisher/publisher demo": true,
      "instrument/drill-27-pilot gtin": "6291041500213",
    }),
    fails("an example's number on a real part", "Drill 2.7 of a library in use: 9520000000127.", {
      "publisher/publisher demo": false,
      "instrument/drill-27-pilot gtin": "9520000000127",
    }),
  ],
};

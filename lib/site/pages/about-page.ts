import type { Page } from "../page.ts";
import type { SiteInput } from "../site-input.ts";

const refused = [
  "What a plate or screw is indicated for, and which plate suits a fracture.",
  "How many screws are needed, and the length of a screw for a patient.",
  "How far to tighten a plain-head screw.",
  "Anything about bone quality, loading or healing.",
  "Sterilisation and cleaning, magnetic resonance, re-use of single-use parts, removal.",
  "That parts of different makers or generations stand in for one another.",
  "Whether someone is trained enough.",
];

/** What the site is, what it never states, who decides what, and who answers questions. */
export function aboutPage({ catalogue }: SiteInput): Page {
  const { name, ask, defer, demo } = catalogue.publisher;
  return {
    path: "about/index.html",
    title: "About and safety",
    titled: true,
    blocks: [
      { kind: "text", text: defer },
      ...(demo
        ? [
            {
              kind: "text",
              text: "The maker, systems, hospital and numbers shown here are invented. Nothing here is for clinical use.",
            } as const,
          ]
        : []),
      { kind: "heading", text: "What this is", id: "what" },
      {
        kind: "text",
        text: "One-page cards that tell which drill, sleeve, depth gauge, tap, driver and torque limiter belong to which screw in which hole of which plate. Each pairing is derived from facts about single parts; where two parts would fit, or none, nothing is printed.",
      },
      {
        kind: "text",
        text: "A clean run of the rules is not a clinical approval: rules find contradictions in what was written down, not errors in what was not. Cards are not sterile. No patient's data is kept here.",
      },
      { kind: "heading", text: "Who decides", id: "who" },
      {
        kind: "table",
        caption: "Each decision and whose it is",
        head: ["what", "who"],
        rows: [
          ["Plate, position, order, technique, length, when to stop", "the surgeon"],
          ["Putting one instrument in place of another", "the surgeon, with the circulating nurse"],
          ["Releasing a tray", "sterile processing"],
          ["Issuing and withdrawing a card", `${name}: ${ask.role}, ${ask.telephone}`],
        ].map((row) => row.map((text) => [{ text }])),
      },
      {
        kind: "text",
        text: "Where they differ, this order holds: instructions for use, then local protocol, then the surgeon's stated preference within both, then a card.",
      },
      { kind: "heading", text: "What no card states", id: "refused" },
      { kind: "links", links: refused.map((text) => ({ text })) },
      {
        kind: "text",
        text: "For all of these, see the instructions for use.",
      },
      { kind: "heading", text: "How it is kept right", id: "rules" },
      {
        kind: "links",
        links: [
          { text: "Rules, each with its reason", to: "rules/index.html" },
          { text: "What the rules found here", to: "findings/index.html" },
          { text: "Glossary", to: "glossary/index.html" },
        ],
      },
    ],
  };
}

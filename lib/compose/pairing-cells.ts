import { known } from "../model/catalogue.ts";
import type { Chain, Role } from "../model/chain.ts";
import type { PairingCell } from "../model/sheet.ts";
import { linkOf } from "./chain-groups.ts";
import type { Composing } from "./composing.ts";
import { isGliding, nounAndNumber, spoken, tellTale } from "./spoken.ts";

/** A column of a pairing sheet: the roles that answer in it, and the words when none does. */
export type PairingColumn = {
  readonly title: string;
  readonly roles: readonly Role[];
  readonly none: string;
  /** True for the column that tells how the screw is tightened. */
  readonly last?: true;
};

/** Columns in hand-over order for one screw through one hole. */
export const plateColumns: readonly PairingColumn[] = [
  { title: "guide or sleeve", roles: ["sleeve", "guide"], none: "no sleeve" },
  { title: "drill", roles: ["pilot-drill"], none: "no drill" },
  { title: "measure", roles: ["gauge"], none: "no gauge" },
  { title: "tap", roles: ["tap"], none: "no tap" },
  { title: "driver", roles: ["driver"], none: "no driver" },
  { title: "tighten", roles: ["limiter"], none: "by hand", last: true },
];

/** Columns in hand-over order for a lag screw. */
export const lagColumns: readonly PairingColumn[] = [
  { title: "1 gliding guide", roles: ["gliding-guide"], none: "no guide" },
  { title: "2 gliding drill", roles: ["gliding-drill"], none: "no drill" },
  { title: "3 insert", roles: ["insert"], none: "no insert" },
  { title: "4 pilot drill", roles: ["pilot-drill"], none: "no drill" },
  { title: "5 insert out, measure", roles: ["gauge"], none: "no gauge" },
  { title: "6 tap", roles: ["tap"], none: "no tap" },
  { title: "7 driver", roles: ["driver"], none: "no driver", last: true },
];

/** Longest picture of a working end, millimetres; beside words on how the screw is tightened, a shorter one. */
const longest = 18;
const longestBesideWords = 12;

/** One cell: the working end at true size with noun and number, or the words that say there is none. */
export function pairingCell(
  composing: Composing,
  id: string,
  chain: Chain,
  column: PairingColumn,
): PairingCell {
  const { catalogue, pictures } = composing;
  const link = linkOf(chain, ...column.roles);
  const role = link?.role ?? column.roles.join(" ");
  const handle = linkOf(chain, "handle")?.instrument;
  const on = handle === undefined ? "" : `on ${spoken(known(catalogue.instruments, handle))}`;
  const tightens = column.last === true;
  const byHand = tightens && linkOf(chain, "limiter")?.instrument === undefined;
  if (link?.instrument === undefined) {
    return {
      role,
      noun: column.none,
      number: "",
      note: tightens ? on : link === undefined ? "" : "in this tray",
    };
  }
  const instrument = known(catalogue.instruments, link.instrument);
  const notes = [
    link.required ? "" : "if asked",
    tellTale(instrument, link.end),
    tightens ? on : "",
    byHand ? "by hand" : "",
  ];
  return {
    role,
    ...nounAndNumber(instrument),
    ...(isGliding(instrument) ? { noun: `gliding ${nounAndNumber(instrument).noun}` } : {}),
    note: notes.filter((note) => note !== "").join(", "),
    figure: pictures.workingEnd(
      `${id}-${link.role}`,
      instrument,
      catalogue.interfaces,
      byHand ? longestBesideWords : longest,
      link.end,
    ),
  };
}

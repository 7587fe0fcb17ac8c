import { createHash } from "node:crypto";
import canonicalize from "canonicalize";
import type { SheetView } from "../model/sheet.ts";

/** The sheet with its fingerprint: the first 8 hex digits of the SHA-256 of everything it shows but its identity and its code, as canonical JSON. */
export function fingerprinted<V extends SheetView>(view: V): V {
  const { identity, cardCode, ...shown } = view;
  const text = canonicalize(shown);
  if (text === undefined) throw new Error(`Sheet ${view.id} cannot be written as JSON`);
  const fingerprint = createHash("sha256").update(text).digest("hex").slice(0, 8);
  return { ...view, identity: { ...identity, fingerprint } };
}

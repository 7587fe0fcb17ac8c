import { expect, test } from "vitest";
import { requireNode } from "../../lib/setup/require-node.mjs";

test.each(["20.19.0", "20.20.2", "22.0.0", "100.1.0"])("Node %s is new enough.", (version) => {
  expect(() => requireNode(version)).not.toThrow();
});

test.each(["18.20.8", "20.18.3", "9.99.0"])("Node %s is told to be too old.", (version) => {
  expect(() => requireNode(version)).toThrow(`needs Node 20.19 or newer; this is Node ${version}`);
});

import type { Role } from "../model/chain.ts";
import type { Query, Recipe } from "../model/recipe.ts";

/** The part in a chain that answers a query. */
function roleOf(query: Query): Role {
  switch (query.kind) {
    case "drill":
      return query.use === "pilot" ? "pilot-drill" : "gliding-drill";
    case "plain-guide":
      return query.use === "pilot" ? "guide" : "gliding-guide";
    case "threaded-sleeve":
      return "sleeve";
    case "reduction-insert":
      return "insert";
    case "depth-gauge":
      return "gauge";
    case "driver-shaft":
      return "driver";
    case "torque-limiter":
      return "limiter";
    default:
      return query.kind;
  }
}

/** What a recipe asks for, each role once with its first query, in hand-over order. */
export function askedRoles({ steps }: Recipe): ReadonlyMap<Role, Query> {
  const asked = new Map<Role, Query>();
  for (const query of steps.flatMap(({ uses, also }) => (uses ? [uses, ...also] : also))) {
    if (!asked.has(roleOf(query))) asked.set(roleOf(query), query);
  }
  return asked;
}

import { Interfaces } from "../../lib/model/interfaces.ts";

/** The nouns that the drawn parts' samples share. */
export const sampleInterfaces = Interfaces.parse({
  head_threads: {
    "th-27": { name: "head thread 2.7", pitch: 0.6 },
    "th-35": { name: "head thread 3.5", pitch: 0.7 },
  },
  drives: {
    "hexalobular-10": { name: "hexalobular 10", form: "hexalobular", across: 2.8 },
    "hexalobular-20": { name: "hexalobular 20", form: "hexalobular", across: 3.9 },
    "hexagonal-3": { name: "hexagonal 3", form: "hexagonal", across: 3 },
    "square-2": { name: "square 2", form: "square", across: 2.2 },
    "cross-1": { name: "cross 1", form: "cross", across: 2.6 },
  },
  couplings: {
    "drill-small": { name: "drill coupling, small", across: 4.5 },
    "shaft-small": { name: "shaft coupling, small", across: 5 },
  },
});

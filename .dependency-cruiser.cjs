const stages =
  "read|validate|resolve|derive|check|draw|compose|site|print|impose|publish|report|control|begin|mutate";
const entries =
  "^lib/(index|build|cli|serve|bare-pages|planner|print-library|impose-library|bench|mutate|explain)\\.ts$";

/** @param {string} name @param {string} comment @param {object} from @param {object} to */
const forbid = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });
/** @param {string} name */
const npm = (name) => `(^|/)node_modules/${name}/`;

module.exports = {
  forbidden: [
    forbid("no-cycle", "Modules do not import each other in a circle.", {}, { circular: true }),
    forbid("resolves", "Every import finds its module.", {}, { couldNotResolve: true }),
    forbid(
      "stages-stand-alone",
      "Stages do not import each other; only the entry files join them.",
      { path: `^lib/(${stages})/` },
      { path: `^lib/(${stages})/`, pathNot: "^lib/$1/" },
    ),
    forbid(
      "stages-import-no-entry",
      "Nothing in a folder of lib imports an entry file.",
      { path: "^lib/[^/]+/" },
      { path: "^lib/[^/]+\\.ts$" },
    ),
    forbid(
      "setup-stands-alone",
      "Setting up runs before any package is there; only entry files import it, and it imports none of the stages.",
      { path: `^lib/(model|${stages})/` },
      { path: "^lib/setup/" },
    ),
    forbid(
      "setup-imports-no-package",
      "Setting up imports itself and Node alone; once packages are installed, what turns TypeScript into JavaScript.",
      { path: "^lib/setup/" },
      { pathNot: ["^lib/setup/", npm("esbuild")], dependencyTypesNot: ["core"] },
    ),
    forbid(
      "only-entries-join-stages",
      "A file beside the stages that joins them is an entry file.",
      { path: "^lib/[^/]+$", pathNot: entries },
      { path: `^lib/(${stages})/` },
    ),
    forbid(
      "model-imports-only-zod",
      "The model is plain data.",
      { path: "^lib/model/" },
      { pathNot: ["^lib/model/", npm("zod")] },
    ),
    forbid(
      "yaml-only-in-read",
      "Text becomes data in one place.",
      { path: "^lib/", pathNot: "^lib/read/" },
      { path: npm("yaml") },
    ),
    forbid(
      "puppeteer-only-in-print",
      "The browser is driven in one place.",
      { path: "^lib/", pathNot: "^lib/print/" },
      { path: npm("(puppeteer|puppeteer-core)") },
    ),
    forbid(
      "svg-only-in-draw",
      "Pictures are drawn in one place.",
      { path: "^lib/", pathNot: "^lib/draw/" },
      { path: npm("(@svgdotjs/svg\\.js|svgdom)") },
    ),
    forbid(
      "templates-only-in-site",
      "Pages are rendered in one place.",
      { path: "^lib/", pathNot: "^lib/site/" },
      { path: npm("(nunjucks|@11ty/eleventy)") },
    ),
    forbid(
      "no-node-in-browser-code",
      "These stages also run in a browser.",
      { path: "^lib/(model|validate|resolve|derive|check|mutate|draw/layout)/" },
      { dependencyTypes: ["core"] },
    ),
    forbid(
      "lib-imports-no-tests",
      "What is shipped knows no tests.",
      { path: "^lib/" },
      { path: "^tests/" },
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
    },
  },
};

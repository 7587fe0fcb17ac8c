import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Variables that give a browser a minimal font configuration where the system has none; else nothing.
 * @param {{ root: string, cache: string, system?: string }} where
 * @returns {Record<string, string>}
 */
export function fontSettings({ root, cache, system = "/etc/fonts/fonts.conf" }) {
  if (process.platform !== "linux" || existsSync(system) || process.env.FONTCONFIG_FILE) return {};
  const folder = join(cache, "fonts");
  mkdirSync(folder, { recursive: true });
  const file = join(folder, "fonts.conf");
  const folders = [
    join(root, "node_modules", "@fontsource"),
    join(cache, "packaged", "unpacked", "fonts"),
    "/usr/share/fonts",
  ];
  writeFileSync(
    file,
    `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
${folders.map((path) => `  <dir>${path}</dir>`).join("\n")}
  <cachedir>${join(folder, "cache")}</cachedir>
</fontconfig>
`,
  );
  return { FONTCONFIG_FILE: file };
}

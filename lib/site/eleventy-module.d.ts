declare module "@11ty/eleventy" {
  export type EleventyConfig = {
    readonly ignores: Set<string>;
    setUseGitIgnore(use: boolean): void;
    setTemplateFormats(formats: readonly string[]): void;
    setLibrary(engine: "njk", environment: object): void;
    addGlobalData(name: string, data: unknown): void;
  };
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { configPath: false; quietMode: boolean; config: (config: EleventyConfig) => void },
    );
    disableLogger(): void;
    write(): Promise<void>;
  }
}

/** Eleventy ships no types: what Tilebook uses of it. */
declare module "@11ty/eleventy" {
  export interface EleventyConfig {
    setUseGitIgnore(enabled: boolean): void;
    addTemplate(path: string, template: unknown): void;
    readonly benchmarkManager: {
      get(group: string): { setMinimumThresholdMs(milliseconds: number): void };
    };
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { configPath: null; quietMode: boolean; config: (config: EleventyConfig) => void },
    );
    disableLogger(): void;
    init(): Promise<void>;
    write(): Promise<unknown>;
  }
}

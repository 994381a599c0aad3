/** What the wall uses of Pagefind's bundle, which the build writes beside the scripts. */
declare module "*/pagefind.js" {
  export interface Hit {
    /** From the host's root. */
    readonly url: string;
    readonly meta: { readonly title: string; readonly kind: string };
  }
  /** Searches another index together with this one; its folder is given from the host's root. */
  export function mergeIndex(folder: string): Promise<void>;
  export function search(words: string): Promise<{
    readonly results: readonly { readonly id: string; readonly data: () => Promise<Hit> }[];
  }>;
}

/** What the wall uses of Pagefind's bundle, which the build writes beside the scripts. */
declare module "*/pagefind.js" {
  export function search(words: string): Promise<{
    readonly results: readonly { readonly data: () => Promise<{ readonly url: string }> }[];
  }>;
}

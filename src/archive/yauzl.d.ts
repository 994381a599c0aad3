/** yauzl ships no types: what Tilebook uses of it. */
declare module "yauzl" {
  import type { Readable } from "node:stream";

  export interface Entry {
    readonly generalPurposeBitFlag: number;
    readonly fileNameRaw: Buffer;
    readonly extraFields: readonly unknown[];
    readonly compressedSize: number;
    readonly uncompressedSize: number;
    readonly crc32: number;
    readonly externalFileAttributes: number;
    isEncrypted(): boolean;
  }

  export interface ZipFile {
    readonly entryCount: number;
    eachEntry(): AsyncIterable<Entry>;
    openReadStreamPromise(entry: Entry): Promise<Readable>;
    close(): void;
  }

  const yauzl: {
    openPromise(
      path: string,
      options: { readonly decodeStrings: false; readonly autoClose: false },
    ): Promise<ZipFile>;
    getFileNameLowLevel(
      flags: number,
      raw: Buffer,
      extraFields: readonly unknown[],
      isStrict: boolean,
    ): string;
    /** Why a name leads outside of the folder that it is unpacked into; null where it does not. */
    validateFileName(name: string): string | null;
  };
  export default yauzl;
}

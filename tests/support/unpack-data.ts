/** What data files hold, as text in which words can be looked for. */
import { parquetMetadata, parquetReadObjects } from "hyparquet";

/** The rows of a Parquet file, as another library than the one that wrote it reads them. */
export function readParquet(bytes: Uint8Array): Promise<Record<string, unknown>[]> {
  return parquetReadObjects({ file: bufferOf(bytes) });
}

/** What a Parquet file says of itself. */
export function readParquetMetadata(bytes: Uint8Array) {
  return parquetMetadata(bufferOf(bytes));
}

/** Parquet is packed; text lies in SQLite as it is. */
export async function unpackData(path: string, content: Uint8Array | string): Promise<string> {
  if (typeof content === "string") return content;
  if (!path.endsWith(".parquet")) return Buffer.from(content).toString("utf8");
  return JSON.stringify([readParquetMetadata(content), await readParquet(content)], (_, value) =>
    typeof value === "bigint" ? Number(value) : value,
  );
}

function bufferOf({ buffer, byteOffset, byteLength }: Uint8Array): ArrayBuffer {
  return buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
}

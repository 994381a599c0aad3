/** sql.js ships no types: what Tilebook uses of it. */
declare module "sql.js" {
  type SqlValue = Uint8Array | boolean | number | string | null;

  export interface Statement {
    run(values: readonly SqlValue[]): void;
    free(): boolean;
  }

  export interface QueryResult {
    readonly columns: readonly string[];
    readonly values: readonly (readonly SqlValue[])[];
  }

  export interface Database {
    run(sql: string): Database;
    exec(sql: string): readonly QueryResult[];
    prepare(sql: string): Statement;
    export(): Uint8Array;
    close(): void;
  }

  export interface SqlJs {
    readonly Database: new (bytes?: Uint8Array) => Database;
  }

  export default function initSqlJs(): Promise<SqlJs>;
}

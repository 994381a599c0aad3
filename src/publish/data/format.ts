/**
 * The version of the data format: of the names of tables, columns, fields and files, and of what they
 * mean. docs/data-format.md says when it changes.
 */
export const dataFormat = 1;

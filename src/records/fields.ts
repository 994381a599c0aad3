/** The kinds of field that records are made of. */
export * from "./fields/addresses.ts";
export * from "./fields/boxes.ts";
export * from "./fields/cones.ts";
export * from "./fields/containers.ts";
export * from "./fields/forms.ts";
export * from "./fields/numbers.ts";
export { type EditorHint, editorHints, type Named } from "./fields/scalar.ts";
export * from "./fields/words.ts";

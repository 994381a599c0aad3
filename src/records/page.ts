/** A page of the studio's own: how we teach, when we are open. */
import type * as z from "zod";
import * as f from "./fields.ts";

export const pageSchema = f.fields({
  title: f.required("The name of the page, as the foot of every page shows it.", f.text()),
});

export type PageRecord = z.output<typeof pageSchema>;

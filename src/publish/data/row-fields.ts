/** Fields that rows of several data files have. */
import * as z from "zod";

export const id = z.string().describe("The id, as published.");
export const url = z.string().describe("The page, relative to the root of the site.");
export const name = z.string().describe("The name people call it by.");
export const ids = (of: string) => z.array(z.string()).describe(`Ids of ${of}.`);
export const words = (what: string) => z.array(z.string()).describe(what);
export const maybe = (what: string) => z.string().nullable().describe(what);
export const amount = (what: string) => z.number().nullable().describe(what);
export const cones = z
  .strictObject({
    from: z.string().describe("The cooler end of its range of cones."),
    to: z.string().describe("The hotter end; the same cone twice where only one is meant."),
  })
  .nullable()
  .describe("The range of cones, the cooler first.");

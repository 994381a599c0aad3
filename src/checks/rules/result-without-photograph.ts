import type { TileRule } from "../check.ts";

export const resultWithoutPhotograph: TileRule = {
  of: "tile",
  name: "result-without-photograph",
  severity: "error",
  explains: "A tile with a result has a photograph of it.",
  find: (_, { id, stage, pictures, pictureMisnamed }) =>
    stage !== "recorded" || pictureMisnamed || pictures.some(({ role }) => role === "result")
      ? []
      : [
          {
            path: ["result"],
            message: `${id} has a result, and there is no photograph of it`,
            hint: `Put a photograph named ${id}.jpg (or png, webp, avif, tiff, heic) beside the record. If the tile did not come back whole, write its fate instead.`,
          },
        ],
};

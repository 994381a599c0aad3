import { preparePictures } from "../../src/photos/prepare.ts";

/** Prepares the pictures named on the command line and says a word after each. */
const [cacheDir = "", ...paths] = process.argv.slice(2);
await preparePictures(
  paths.map((path) => ({ key: path, path })),
  { cacheDir, onProgress: ({ done }) => process.stdout.write(`${done}\n`) },
);

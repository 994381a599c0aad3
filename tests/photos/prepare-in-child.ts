import { preparePictures } from "../../src/photos/prepare.ts";

/** Prepares the pictures named on the command line, and is killed when three are done. */
const [cacheDir = "", ...paths] = process.argv.slice(2);
await preparePictures(
  paths.map((path) => ({ key: path, path })),
  {
    cacheDir,
    onProgress: ({ done }) => {
      if (done === 3) process.kill(process.pid, "SIGKILL");
    },
  },
);

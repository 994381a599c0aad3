import { existsSync, readFileSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { type MeasuredColour, measureColour } from "../../src/colour/measure.ts";
import { inParallel } from "../../src/photos/parallel.ts";
import { inFlight, preparePictures } from "../../src/photos/prepare.ts";
import { outputs, pictureWidths } from "../../src/photos/recipe.ts";
import { entryFolder } from "../../src/photos/store.ts";
import { linkInto } from "../../src/publish/carry.ts";

export interface RunResult {
  seconds: number;
  processorSeconds: number;
  peakMebibytes: number;
}

/** One side's turn: prints how long its photographs took and the most memory it held. */
const [mode, outDir = "", ...paths] = process.argv.slice(2);
const [start, processor] = [performance.now(), process.cpuUsage()];
await (mode === "bare" ? runBare() : runTilebook());
const { user, system } = process.cpuUsage(processor);
const result: RunResult = {
  seconds: (performance.now() - start) / 1000,
  processorSeconds: (user + system) / 1e6,
  peakMebibytes: readPeakMebibytes(),
};
process.stdout.write(JSON.stringify(result));

/** Where Linux tells, this process's own peak: its resource usage begins with its parent's. */
function readPeakMebibytes(): number {
  const status = existsSync("/proc/self/status") ? readFileSync("/proc/self/status", "utf8") : "";
  const kibibytes = /^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1];
  return Number(kibibytes ?? process.resourceUsage().maxRSS) / 1024;
}

async function runTilebook(): Promise<void> {
  const cacheDir = `${outDir}-cache`;
  const reading = {
    id: "colour",
    read: (pixels: Parameters<typeof measureColour>[0]) => measureColour(pixels),
  };
  const sources = paths.map((path) => ({ key: path, path, reading }));
  const prepared = await preparePictures<MeasuredColour>(sources, { cacheDir });
  const pictures = prepared.flatMap((one) => ("picture" in one ? [one.picture] : []));
  for (const { name, files } of pictures)
    for (const { file } of files)
      await linkInto(join(entryFolder(cacheDir, name), file), join(outDir, file));
}

/** The best known chain: decoded once, each size from the one above, as many pictures in flight. */
async function runBare(): Promise<void> {
  sharp.concurrency(1);
  sharp.cache(false);
  await inParallel([...paths.entries()], inFlight, async ([index, path]) => {
    let image = sharp(path).autoOrient();
    for (const width of pictureWidths) {
      const { data, info } = await image.resize(width).raw().toBuffer({ resolveWithObject: true });
      const raw = { width: info.width, height: info.height, channels: 3 as const };
      for (const { format, extension, options } of outputs) {
        const encoded = await sharp(data, { raw }).toFormat(format, options).toBuffer();
        await writeFile(join(outDir, `${index}-${width}.${extension}`), encoded);
      }
      image = sharp(data, { raw });
    }
  });
}

// Decodes one HEIC in a thread of its own. In plain JavaScript, so that it needs no loader.
import { parentPort, workerData } from "node:worker_threads";
import decode from "heic-decode";

const { data, width, height } = await decode({ buffer: workerData });
parentPort.postMessage({ data, width, height }, [data.buffer]);

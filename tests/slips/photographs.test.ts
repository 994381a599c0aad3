import { record } from "../archive/archives.ts";
import { testSlips } from "./slips.ts";

const layers = "layers:\n  - glaze: soot";
const tile = { "tiles/CL-02.md": record(layers) };
const beside = (...names: string[]) => ({
  ...tile,
  ...Object.fromEntries(names.map((name) => [`tiles/${name}`, ""])),
});
const named = (file: string) => record(`${layers}\nphoto: {file: ${file}}`);

testSlips("photographs", {
  "a space for the dash": beside("CL 02.jpg"),
  "an underscore, and capitals": beside("CL_02.JPG"),
  "no dash at all": beside("cl02.heic"),
  "a second download": beside("cl-02 (1).jpeg"),
  "a copy": beside("CL-02 copy.jpg"),
  "a copy by another system": beside("CL-02 - Kopie (2).jpg"),
  "saved anew by a program": beside("CL-02.HEIC.jpg"),
  "a role after a space": beside("CL 02 before.jpg", "CL-02_detail 2.jpg", "CL-02-back.jpg"),
  "one of two that may be meant": beside("CL 02.jpg", "CL_02.jpg"),
  "a copy of one that is there": beside("CL-02.jpg", "CL-02 (1).jpg"),
  "two tiles that may be meant": {
    ...beside("CL 02.jpg"),
    "tiles/CL_02.md": record(layers),
  },
  "the camera's name": beside("IMG_2045.HEIC"),
  "in another folder": {
    "tiles/evening/set.md": record("name: Evening"),
    "tiles/evening/CL-02.md": record(layers),
    "tiles/CL-02.jpg": "",
  },
  "named by the record and not there": { "tiles/CL-02.md": named("IMG_2045.HEIC") },
  "named by the record in another folder": { "tiles/CL-02.md": named("../IMG_2045.HEIC") },
  "named by two records": {
    "tiles/CL-02.md": named("IMG_2045.HEIC"),
    "tiles/CL-03.md": named("img_2045.heic"),
    "tiles/IMG_2045.HEIC": "",
  },
  "named though it is another tile's": {
    "tiles/CL-02.md": named("CL-03.jpg"),
    "tiles/CL-03.md": record(layers),
    "tiles/CL-03.jpg": "",
  },
  "one that the record names, and one of its name": {
    "tiles/CL-02.md": named("IMG_2045.HEIC"),
    "tiles/CL-02.jpg": "",
    "tiles/IMG_2045.HEIC": "",
  },
  "a set that names one for all": {
    "tiles/evening/set.md": record("name: Evening\ndefaults: {photo: {file: all.jpg}}"),
  },
});

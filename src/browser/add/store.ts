/** What the form holds, and all that can be done with it; whoever draws it is told after every change. */
import type { FormLayers, FormSet, FormSite } from "../../publish/add-file.ts";
import { bucketOf } from "../../terms/bucket.ts";
import { idKey } from "../../terms/ids.ts";
import { loadScript } from "../parts/load-script.ts";
import {
  type Draft,
  emptyDraft,
  isUntouched,
  nameWithoutCode,
  nextCode,
  takenCodes,
} from "./draft.ts";
import type { ChecksLoaded, Examined } from "./examined.ts";
import * as keep from "./keep.ts";
import { type DraftStep, readStep } from "./steps.ts";

export const screens = ["set", "tile", "layers", "photo", "end"] as const;
export type Screen = (typeof screens)[number];

export interface FormState {
  readonly screen: Screen;
  readonly draft: Draft;
  /** The key of the step that is being written; null where none is. */
  readonly open: number | null;
  readonly photo: Blob | null;
  /** Null as long as nothing was checked; `unavailable` where the script for it did not come. */
  readonly examined: Examined | "unavailable" | null;
  /** Whether the draft was here before the page was opened. */
  readonly restored: boolean;
  /** Something that was done, for who cannot see it or should read it. */
  readonly told: string;
}

/** How long after a stroke the record is checked, in milliseconds. */
const pause = 200;

interface LayersLoaded {
  readonly tilebookLayers?: Readonly<Record<string, FormLayers>>;
}

export class FormStore {
  private kept: FormState;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private nextKey = 0;

  constructor(
    readonly site: FormSite,
    readonly root: string,
    private readonly tell: () => void,
  ) {
    const found = keep.findDraft();
    const draft = typeof found === "object" ? found : emptyDraft(Date.now());
    this.nextKey = draft.layers.length;
    this.kept = {
      screen: draft.handed !== "" ? "end" : draft.layers.length > 0 ? "layers" : "set",
      draft,
      open: null,
      photo: null,
      examined: null,
      restored: typeof found === "object" && !isUntouched(draft),
      told: found === "unreadable" ? "What was kept here before could not be read." : "",
    };
  }

  get state(): FormState {
    return this.kept;
  }

  get set(): FormSet | undefined {
    return this.site.sets.find(({ id }) => id === this.kept.draft.set);
  }

  /** Codes that cannot be given, but for that of this very tile where it was handed in before. */
  get taken(): ReadonlySet<string> {
    const { code, handed } = this.kept.draft;
    const here = keep.handedInHere().filter((each) => handed === "" || each !== code.trim());
    return takenCodes(this.site, here);
  }

  /** Loads what is large once the form is there: the photograph that was kept, and the checks. */
  async start(): Promise<void> {
    this.takeAddress();
    const photo = await keep.findPhotograph();
    if (photo && this.kept.restored) this.show({ photo });
    else if (photo) await keep.forgetPhotograph();
    const loaded = globalThis as ChecksLoaded;
    await loadScript(`${this.root}assets/add-checks.js`);
    this.show({ examined: loaded.tilebookExamine ? null : "unavailable" });
    this.examine();
    // What packs is there before it is wanted: by then the phone may be out of reach.
    await loadScript(`${this.root}assets/add-zip.js`);
  }

  /** A set's page leads here with the set chosen; a tile that was begun stays what it was. */
  private takeAddress(): void {
    const asked = new URLSearchParams(location.search).get("set");
    const set = this.site.sets.find(({ id }) => id === asked);
    if (set && this.kept.draft.set === null) this.chooseSet(set.id);
  }

  show(part: Partial<FormState>): void {
    this.kept = { ...this.kept, ...part };
    this.tell();
  }

  /** Goes to another screen, the step that was open being done with. */
  go(screen: Screen): void {
    this.show({ screen, open: null, told: "" });
  }

  change(part: Partial<Draft>): void {
    const draft = { ...this.kept.draft, ...part };
    const told = keep.keepDraft(draft)
      ? ""
      : "This browser keeps nothing: hand the tile in before you close the page.";
    this.show({ draft, told });
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.examine(), pause);
  }

  /** Checks what is there now. */
  examine(): Examined | undefined {
    const { tilebookExamine } = globalThis as ChecksLoaded;
    const examined = tilebookExamine?.(this.kept.draft, this.site);
    if (examined) this.show({ examined });
    return examined;
  }

  chooseSet(id: string): void {
    keep.rememberSet(id);
    const set = this.site.sets.find((each) => each.id === id);
    const { draft } = this.kept;
    const code = nextCode(set, this.taken) ?? "";
    this.change({
      set: id,
      code,
      noCode: code === "" ? this.fileName() : "",
      glazed: set?.gives.glazed === undefined ? draft.glazed || today() : "",
    });
    this.go("tile");
  }

  /** Takes the code away, or gives the next one. */
  haveCode(has: boolean): void {
    const code = has ? (nextCode(this.set, this.taken) ?? "") : "";
    this.change({ code, noCode: has ? "" : this.fileName() });
  }

  private fileName(): string {
    const { noCode } = this.kept.draft;
    if (noCode !== "") return noCode;
    return nameWithoutCode((count) => crypto.getRandomValues(new Uint8Array(count)));
  }

  /** Adds a step and opens it. */
  add(make: (key: number) => DraftStep): void {
    const step = make(this.nextKey++);
    this.change({ layers: [...this.kept.draft.layers, step] });
    this.show({ open: step.key });
  }

  put(step: DraftStep): void {
    const { layers } = this.kept.draft;
    this.change({ layers: layers.map((each) => (each.key === step.key ? step : each)) });
  }

  /** Moves a step by one place, later or earlier. */
  move(key: number, by: 1 | -1): void {
    const layers = [...this.kept.draft.layers];
    const at = layers.findIndex((each) => each.key === key);
    const [step] = layers.splice(at, 1);
    if (!step || at + by < 0 || at + by > layers.length) return;
    layers.splice(at + by, 0, step);
    this.change({ layers });
    this.show({ told: `Now step ${at + by + 1} of ${layers.length}.` });
  }

  takeOut(key: number): void {
    const { layers } = this.kept.draft;
    this.change({ layers: layers.filter((each) => each.key !== key) });
    this.show({ open: null, told: "The step is taken out." });
  }

  /** Copies the layers of a tile of the site. */
  async likeTile(code: string): Promise<void> {
    const file = bucketOf(code, this.site.layerFiles);
    const loaded = globalThis as LayersLoaded;
    if (!loaded.tilebookLayers?.[file])
      await loadScript(`${this.root}data/add/layers-${file + 1}.js`);
    const tiles = Object.entries(loaded.tilebookLayers?.[file] ?? {});
    const [id, written = []] = tiles.find(([each]) => idKey(each) === idKey(code)) ?? [];
    const layers = written.flatMap((step) => readStep(step, this.nextKey++) ?? []);
    if (id === undefined) this.show({ told: this.whyNot(code, tiles.length > 0) });
    else {
      this.change({ layers });
      this.show({ told: `The steps of ${id} are copied. Change what is not the same.` });
    }
  }

  private whyNot(code: string, came: boolean): string {
    if (code === "") return "Type the code of a tile.";
    if (came) return `There is no tile ${code} here.`;
    return `The layers of ${code} did not come: there may be no connection.`;
  }

  takePhotograph(photo: Blob | null): void {
    this.show({ photo });
    void (photo ? keep.keepPhotograph(photo) : keep.forgetPhotograph());
  }

  /** Remembers that it was handed in, until it is cleared. */
  handedIn(how: string): void {
    const { code } = this.kept.draft;
    if (code.trim() !== "") keep.rememberHandedIn(code.trim());
    this.change({ handed: how });
  }

  /** A tile of the same make-up, with another code and without a photograph. */
  another(): void {
    const { draft } = this.kept;
    this.takePhotograph(null);
    const layers = draft.layers.map((step) => ({ ...step, key: this.nextKey++ }));
    const taken = takenCodes(this.site, keep.handedInHere());
    const code = draft.code === "" ? "" : (nextCode(this.set, taken) ?? "");
    const fresh = { code, noCode: "", layers, notes: "", handed: "", begun: Date.now() };
    this.show({ restored: false, draft: { ...draft, ...fresh } });
    this.change({ noCode: code === "" ? this.fileName() : "" });
    this.go("layers");
  }

  /** Leaves nothing of this tile behind. */
  async clear(): Promise<void> {
    clearTimeout(this.timer);
    await keep.forgetDraft();
    this.show({
      ...{ draft: emptyDraft(Date.now()), photo: null, open: null, restored: false },
      ...{ screen: "set", examined: null, told: "Cleared. Nothing of that tile is left here." },
    });
  }
}

/** The day by this device's clock, as records write it. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

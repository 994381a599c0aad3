/** The page of what is set side by side: it stands in the address, and is shown as it comes. */
import type { BesideIndex, Subject } from "../../publish/beside-file.ts";
import { bucketOf } from "../../terms/bucket.ts";
import { idKey } from "../../terms/ids.ts";
import { must } from "../parts/element.ts";
import { loadScript } from "../parts/load-script.ts";
import {
  formatChoice,
  isChosen,
  type Kind,
  most,
  parseChoice,
  recall,
  remember,
  toggle,
} from "./choice.ts";
import { compare } from "./compare.ts";

interface Loaded {
  readonly tilebookBeside?: Readonly<Record<string, readonly Subject[]>>;
}

/** What was asked for, in its order. */
interface Asked {
  readonly kind: Kind;
  readonly ids: readonly string[];
}

export class BesidePage {
  private readonly root: string;
  private readonly told: HTMLElement;
  private readonly columns: HTMLElement;
  private asked: Asked = { kind: "tiles", ids: [] };

  constructor(
    private readonly place: HTMLElement,
    private readonly index: BesideIndex,
  ) {
    this.root = place.dataset.root ?? "";
    this.told = must(place.querySelector<HTMLElement>(".told"));
    this.columns = must(place.querySelector<HTMLElement>(".beside-columns"));
  }

  start(): void {
    const form = must(this.place.querySelector("form"));
    const input = must(form.querySelector("input"));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.add(input.value.trim(), () => {
        input.value = "";
      });
    });
    addEventListener("popstate", () => void this.take(this.askedInAddress()));
    void this.take(this.askedInAddress());
  }

  /** What the address asks for, or else what was chosen on other pages. */
  private askedInAddress(): Asked {
    const asked = parseChoice(location.search);
    if (asked) return asked;
    const { tiles, glazes } = recall(this.root);
    return tiles.length > 0 || glazes.length === 0
      ? { kind: "tiles", ids: tiles }
      : { kind: "glazes", ids: glazes };
  }

  /** A code that is typed is a tile's, or a glaze's where glazes are side by side. */
  private async add(id: string, done: () => void): Promise<void> {
    const { kind, ids } = this.asked;
    if (id === "") return;
    const chosen = { ...recall(this.root), [kind]: ids };
    if (isChosen(chosen, kind, id)) this.told.textContent = `${id} is there already.`;
    else if (ids.length >= most)
      this.told.textContent = `No more than ${most} are set side by side: take one away first.`;
    else if (!(await this.find(kind, id)))
      this.told.textContent = `There is no ${kind === "tiles" ? "tile" : "glaze"} ${id} here.`;
    else {
      done();
      this.go({ kind, ids: toggle(chosen, kind, id)[kind] });
    }
  }

  private go(asked: Asked): void {
    history.pushState(null, "", location.pathname + formatChoice(asked.kind, asked.ids));
    void this.take(asked);
  }

  private async take(asked: Asked): Promise<void> {
    this.asked = asked;
    const { kind, ids } = asked;
    remember(this.root, { ...recall(this.root), [kind]: ids });
    const found = await Promise.all(ids.map((id) => this.find(kind, id)));
    if (this.asked !== asked) return;
    const subjects = found.flatMap((subject) => subject ?? []);
    const missing = ids.filter((_, i) => found[i] === undefined);
    this.told.textContent = tellState(kind, subjects.length, missing);
    this.columns.replaceChildren(...(subjects.length > 0 ? this.compare(kind, subjects) : []));
  }

  private compare(kind: Kind, subjects: readonly Subject[]): readonly HTMLElement[] {
    return compare(subjects, {
      root: this.root,
      scatter: this.index.scatter,
      remove: (id) =>
        this.go({ kind, ids: this.asked.ids.filter((each) => idKey(each) !== idKey(id)) }),
      glazesOf: ({ glazes }) =>
        glazes.length > 1
          ? location.pathname + formatChoice("glazes", glazes.slice(0, most))
          : undefined,
    });
  }

  private async find(kind: Kind, id: string): Promise<Subject | undefined> {
    const file = bucketOf(id, this.index[kind]);
    const held = () => (globalThis as Loaded).tilebookBeside?.[`${kind} ${file}`];
    if (!held()) await loadScript(`${this.root}data/beside/${kind}-${file + 1}.js`);
    return held()?.find((subject) => idKey(subject.id) === idKey(id));
  }
}

/** What is missing, and what to do where nothing can be compared yet. */
function tellState(kind: Kind, shown: number, missing: readonly string[]): string {
  const one = kind === "tiles" ? "tile" : "glaze";
  const lost = missing.map((id) => `There is no ${one} ${id} here, or it did not load.`);
  if (shown > 1) return lost.join(" ");
  const next =
    shown === 1
      ? `Set another ${one} beside it.`
      : "Nothing is set side by side yet. Open a tile or a glaze and choose “set beside”, or write a tile's code here.";
  return [...lost, next].join(" ");
}

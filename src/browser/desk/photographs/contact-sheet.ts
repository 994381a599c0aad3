/** Takes photographs in, shows them with the codes that are proposed, and has them written. */
import type { Handed, PhotographView, SheetView } from "../../../desk/photographs/types.ts";
import type { Written } from "../../../desk/types.ts";
import { post, postPicture, Unanswered } from "../../parts/ask.ts";
import { element, must } from "../../parts/element.ts";
import { Frame } from "./frame.ts";

export class ContactSheet {
  private frames: readonly Frame[] = [];
  private isBusy = false;

  constructor(
    private readonly form: HTMLFormElement,
    private readonly view: SheetView,
  ) {
    const chosen = this.find<HTMLInputElement>('[name="files"]');
    chosen.addEventListener("change", () => {
      const files = [...(chosen.files ?? [])];
      chosen.value = "";
      this.add(files);
    });
    document.addEventListener("dragover", (event) => event.preventDefault());
    document.addEventListener("drop", (event) => {
      event.preventDefault();
      this.add([...(event.dataTransfer?.files ?? [])]);
    });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.write();
    });
    this.find(".throw-away").addEventListener("click", () => this.throwAll());
  }

  /** Shows what lies on the sheet already, after the page was loaded again. */
  open(): void {
    this.during(() => this.refresh());
  }

  /** One after the other: each is looked at for a second or so. */
  private add(files: readonly File[]): void {
    if (files.length === 0) return;
    this.during(async () => {
      for (const [i, file] of files.entries()) {
        this.tell(`Looking at ${i + 1} of ${files.length}: ${file.name}`);
        const words = await this.hand(file);
        if (words !== "") this.log(file.name, words);
      }
      await this.refresh();
    });
  }

  /** @returns why it was not taken; nothing where it was */
  private async hand(file: File): Promise<string> {
    if (file.size > this.view.largest)
      return "This file is larger than any photograph that is taken, so it was left.";
    // The name is encoded twice: it may hold what no address does.
    const name = encodeURIComponent(encodeURIComponent(file.name));
    try {
      const handed = await postPicture<Handed>(`/desk/photographs/add/name-${name}`, file);
      return handed.kept ? "" : handed.words;
    } catch (error) {
      if (error instanceof Unanswered) return error.message;
      throw error;
    }
  }

  private async refresh(): Promise<void> {
    const { of } = this.view;
    const asked = post<{ photographs: readonly PhotographView[] }>("/desk/photographs/sheet", {
      of,
    });
    const { photographs } = await asked;
    const known = new Map(this.frames.map((frame) => [frame.id, frame]));
    this.frames = photographs.map((view) => {
      const frame = known.get(view.id) ?? this.make(view);
      frame.propose(view);
      return frame;
    });
    this.find(".contact-sheet").replaceChildren(...this.frames.map(({ item }) => item));
    this.count();
  }

  private make(view: PhotographView): Frame {
    return new Frame(view, this.find<HTMLTemplateElement>("template"), {
      changed: () => this.count(),
      leftOut: (frame) => this.leaveOut(frame),
    });
  }

  private leaveOut(frame: Frame): void {
    this.during(async () => {
      const at = this.frames.indexOf(frame);
      await post("/desk/photographs/throw-away", { ids: [frame.id] });
      await this.refresh();
      (this.frames[at] ?? this.frames.at(-1))?.focus();
    });
  }

  private throwAll(): void {
    this.during(async () => {
      const ids = this.frames.map(({ id }) => id);
      await post("/desk/photographs/throw-away", { ids });
      await this.refresh();
      this.tell("Thrown away. The files that you chose are where they were.");
    });
  }

  private write(): void {
    this.during(async () => {
      const [twice, ready] = [this.namedTwice(), this.frames.filter(({ request }) => request)];
      let written = 0;
      for (const frame of ready) if (await this.writeOne(frame, twice.has(frame))) written += 1;
      const left = ready.length - written;
      await this.refresh();
      this.tell(`${written} written${left > 0 ? `, ${left} not: see beside them why` : ""}.`);
    });
  }

  /** @returns whether it was written */
  private async writeOne(frame: Frame, isTwice: boolean): Promise<boolean> {
    const { request } = frame;
    if (!request) return false;
    this.tell(`Writing ${frame.name}`);
    const { written, words } = isTwice
      ? { written: false, words: `Two photographs are to be ${request.code}: change one of them.` }
      : await post<Written>("/desk/photographs/write", request);
    if (written) this.log(frame.name, words);
    else frame.trouble(words);
    return written;
  }

  /** Those that would be written under one name. */
  private namedTwice(): ReadonlySet<Frame> {
    const nameOf = ({ request }: Frame) =>
      request && `${request.code.normalize("NFC").toLowerCase()} ${request.role}`;
    const names = this.frames.map(nameOf);
    return new Set(
      this.frames.filter(
        (_, i) => names[i] && names.indexOf(names[i]) !== names.lastIndexOf(names[i]),
      ),
    );
  }

  private count(): void {
    const all = this.frames.length;
    const ready = this.frames.filter(({ request }) => request).length;
    this.find(".sheet-ways").hidden = all === 0;
    const button = this.find<HTMLButtonElement>('[type="submit"]');
    button.disabled = ready === 0;
    button.textContent = ready === 1 ? "Write this one" : `Write these ${ready}`;
    const left = all - ready;
    const words = `${all === 1 ? "1 photograph" : `${all} photographs`}, ${left === 0 ? "each with a code" : `${left} without a code`}.`;
    this.tell(all === 0 ? "" : words);
  }

  /** One thing at a time: a second tap while the first is on its way counts for nothing. */
  private during(work: () => Promise<void>): void {
    if (this.isBusy) return;
    this.isBusy = true;
    this.form.setAttribute("aria-busy", "true");
    work()
      .catch((error: unknown) =>
        this.tell(
          error instanceof Unanswered ? error.message : `Something failed: ${String(error)}`,
        ),
      )
      .finally(() => {
        this.isBusy = false;
        this.form.removeAttribute("aria-busy");
      });
  }

  private log(name: string, words: string): void {
    this.find(".log").append(
      element("li", {}, element("span", { class: "name" }, name), ` ${words}`),
    );
  }

  private tell(words: string): void {
    this.find(".told").textContent = words;
  }

  private find<T extends HTMLElement = HTMLElement>(selector: string): T {
    return must(this.form.querySelector<T>(selector));
  }
}

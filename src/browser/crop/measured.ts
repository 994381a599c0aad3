/** What would be measured on the shown photograph with the frames as they lie. */
import type { FramesOnTile, MeasuredWords } from "../../copystand/types.ts";
import { post } from "../parts/ask.ts";

/** Dragging asks only once the hand rests. */
const restMs = 120;

export class Measured {
  private timer: number | undefined;
  private asked = new AbortController();

  constructor(
    private readonly section: HTMLElement,
    private readonly failed: (error: unknown) => void,
  ) {}

  ask(frames: FramesOnTile): void {
    clearTimeout(this.timer);
    this.asked.abort();
    this.asked = new AbortController();
    const { signal } = this.asked;
    this.timer = window.setTimeout(() => {
      post<MeasuredWords>("/measure", frames, signal).then(
        (words) => this.show(words),
        (error) => signal.aborted || this.failed(error),
      );
    }, restMs);
  }

  private show(words: MeasuredWords): void {
    const part = (name: string) => this.section.querySelector(`.${name}`) as HTMLElement;
    const isMeasured = "hex" in words;
    part("swatch").style.background = isMeasured ? words.hex : "";
    part("hex").textContent = isMeasured ? words.hex : "";
    part("sentence").textContent = isMeasured ? `${words.sentence} ${words.spread}` : words.fault;
  }
}

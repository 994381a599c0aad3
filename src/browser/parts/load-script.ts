/** Loads data by a script: a page opened from a folder can do no other. */
import { element } from "./element.ts";

/** Ends when it ran, and when it did not come. */
export function loadScript(src: string): Promise<void> {
  return new Promise((done) => {
    const script = element("script", { src });
    script.addEventListener("load", () => done());
    script.addEventListener("error", () => done());
    document.head.append(script);
  });
}

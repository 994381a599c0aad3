/** Buttons that print a page, in the places that pages made to be printed keep for them. */
import { element } from "./element.ts";

/** Fills every place that is kept: `data-print` is what its button says. */
export function addPrintButtons(): void {
  for (const place of document.querySelectorAll<HTMLElement>(".print-place")) {
    const button = element("button", { type: "button" }, place.dataset.print ?? "Print");
    button.addEventListener("click", () => print(place.dataset.only));
    place.append(button);
  }
}

/** @param only a class of the document while it is printed, which leaves out all but a part of it */
function print(only: string | undefined): void {
  if (only !== undefined) {
    const { classList } = document.documentElement;
    classList.add(only);
    window.addEventListener("afterprint", () => classList.remove(only), { once: true });
  }
  window.print();
}

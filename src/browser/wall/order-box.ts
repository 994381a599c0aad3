/** The list that puts the wall into an order. */
import { type Sort, sorts } from "../../terms/sorts.ts";
import { must } from "../parts/element.ts";

export interface OrderBox {
  /** Shows an order; that of a colour is offered where one was asked for. */
  readonly show: (sort: Sort, hasColour: boolean) => void;
}

/**
 * Takes the list that the page holds.
 *
 * @param choose takes the order that was chosen
 */
export function takeOrderBox(list: HTMLSelectElement, choose: (sort: Sort) => void): OrderBox {
  const near = must(list.querySelector<HTMLOptionElement>("option[value=near]"));
  list.addEventListener("change", () => {
    const sort = sorts.find((each) => each === list.value);
    if (sort) choose(sort);
  });
  return {
    show: (sort, hasColour) => {
      near.hidden = !hasColour;
      near.disabled = !hasColour;
      list.value = sort;
    },
  };
}

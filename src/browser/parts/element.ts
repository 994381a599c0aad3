/** Makes an element with its attributes and children. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

/** What the page is made with; a page without it is a fault of ours. */
export function must<T>(found: T | null | undefined): T {
  if (found === null || found === undefined) throw new Error("Something is missing on this page");
  return found;
}

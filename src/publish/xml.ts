/** Text as XML may hold it, in an element or an attribute. */
export function escapeXml(text: string): string {
  return text.replace(/[&<>"']/gu, (sign) => `&#${sign.codePointAt(0)};`);
}

/** A studio's address as the root that pages are relative to. */
export function rootOf(address: string): string {
  return address.endsWith("/") ? address : `${address}/`;
}

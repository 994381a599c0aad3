/** Sheets that a class prints before glazing, in words. */

export type SheetKind = "labels" | "notes" | "shelf";

export const sheetKinds: readonly SheetKind[] = ["labels", "notes", "shelf"];

export const sheetNames: Readonly<Record<SheetKind, string>> = {
  labels: "Labels",
  notes: "Notes sheets",
  shelf: "Shelf list",
};

export const aboutSheets: Readonly<Record<SheetKind, string>> = {
  labels: "One label for each code, to put beside the tile when it is photographed or shown.",
  notes: "One blank sheet for each code, four to a page, to write on while glazing.",
  shelf: "One line for each code, to fill in while the kiln is loaded.",
};

/** What the QR codes lead to, or why there are none. */
export function tileAddressWords(codes: readonly { readonly address: string | null }[]): string {
  return codes.some(({ address }) => address !== null)
    ? "The QR code leads to the tile's page, which opens once its record is published. Print it no smaller than 15\u00a0mm."
    : "There are no QR codes, since studio.yaml gives no address for the site.";
}

/**
 * The weighing sheet's script: any batch, by grams or by the bucket, one material at a time. Without
 * it the sheet has the readings of 100 g, 1 kg and 5 kg.
 */
import { addPrintButtons } from "./parts/print-buttons.ts";
import { startSheet } from "./weighing/sheet.ts";

const section = document.querySelector<HTMLElement>(".weighing");
if (section) startSheet(section);
addPrintButtons();

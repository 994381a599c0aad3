/**
 * The weighing sheet's script: any batch, by grams or by the bucket, with a running total. Without
 * it the sheet stands for 100 g, 1 kg and 5 kg.
 */
import { startSheet } from "./weighing/sheet.ts";

const section = document.querySelector<HTMLElement>(".weighing");
if (section) startSheet(section);

/** The list of who waits is made to be printed. */
import { addPrintButtons } from "../parts/print-buttons.ts";

addPrintButtons();

/** The buttons of a page that is made to be printed and has no other script. */
import { addPrintButtons } from "./parts/print-buttons.ts";

addPrintButtons();

/** The page on which photographs get their tiles' codes. */
import type { SheetView } from "../../desk/photographs/types.ts";
import { must } from "../parts/element.ts";
import { ContactSheet } from "./photographs/contact-sheet.ts";

const form = must(document.querySelector<HTMLFormElement>("form.photographs-form"));
form.hidden = false;
new ContactSheet(form, JSON.parse(form.dataset.view ?? "") as SheetView).open();

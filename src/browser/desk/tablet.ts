/** The desk's first page: the button that asks for a new code for a tablet. */
import { post, Unanswered } from "../parts/ask.ts";

const section = document.querySelector(".for-a-tablet");
const button = section?.querySelector<HTMLButtonElement>(".new-code");
const told = section?.querySelector(".told");

button?.addEventListener("click", async () => {
  try {
    await post("/desk/tablet/new-code", {});
    location.reload();
  } catch (error) {
    if (!(error instanceof Unanswered) || !told) throw error;
    told.textContent = error.message;
  }
});

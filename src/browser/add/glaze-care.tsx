/** What to mind with a glaze, and the way to its page, where its formula and everything else is. */
import type { VNode } from "preact";
import { capital } from "../../../templates/words/english/numbers.ts";
import type { FormStore } from "./store.ts";

export function GlazeCare({
  form,
  id,
}: {
  readonly form: FormStore;
  readonly id: string;
}): VNode | null {
  const glaze = form.site.glazes.find((each) => each.id === id);
  if (!glaze) return null;
  const { name, url, loud = [], quiet = [], cones } = glaze;
  return (
    <div class="form-care">
      {loud.length > 0 && (
        <p class="loud">
          <b>Mind:</b> {loud.join("; ")}.
        </p>
      )}
      <p class="quiet">
        {cones !== undefined && `For cone ${cones}. `}
        {quiet.length > 0 && `${capital(quiet.join("; "))}. `}
        <a href={form.root + url} target="_blank" rel="noopener">
          All about {name}
        </a>
      </p>
    </div>
  );
}

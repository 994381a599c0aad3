/** What is to be done in the studio's repository once its page for a new file was opened. */
import type { VNode } from "preact";
import { thereFirst, thereNames, thereWithPhotograph } from "../../../templates/words/add/form.ts";
import { requestsAddress } from "../../terms/forges.ts";
import { placeOf } from "./draft.ts";
import { newFileOf, photographName, savePhotograph } from "./end.ts";
import type { FormStore } from "./store.ts";

export function StillToDo({ form }: { readonly form: FormStore }): VNode {
  const { draft, photo, examined } = form.state;
  const folder = placeOf(draft).split("/").slice(0, -1).join("/");
  const more = photo ? thereWithPhotograph(folder, photographName(form)) : [];
  const file = examined === null || examined === "unavailable" ? null : newFileOf(form, examined);
  return (
    <>
      <ol class="form-there">
        {[thereFirst, ...more].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {photo && (
        <p>
          <button type="button" onClick={() => void savePhotograph(form)}>
            {thereNames.photograph}
          </button>
        </p>
      )}
      <ul class="form-ways">
        <Way
          name={thereNames.again}
          address={file === null || file === "too-long" ? undefined : file}
        />
        <Way name={thereNames.requests} address={requestsAddress(form.site.handingIn.repository)} />
        <Way name={thereNames.inFull} address={`${form.root}guide/hand-in-by-the-forge.html`} />
      </ul>
    </>
  );
}

/** A link to another tab, so that this one stays as it is. */
function Way(props: { readonly name: string; readonly address: string | undefined }): VNode | null {
  if (props.address === undefined) return null;
  return (
    <li>
      <a href={props.address} target="_blank" rel="noopener">
        {props.name}
      </a>
    </li>
  );
}

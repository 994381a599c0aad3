/** On the desk's first page: the code for a tablet, and a button for a new one. */
import type { VNode } from "preact";
import type { TabletDoor } from "./tablet.ts";
import { inTheOpen, spoken, tellCode } from "./words.ts";

export function TabletSection({ addresses, pass }: TabletDoor): VNode {
  const state = pass.look();
  return (
    <section class="for-a-tablet" aria-labelledby="tablet">
      <h2 id="tablet">Let a tablet in</h2>
      {state.is === "open" && <p class="code">{spoken(state.code)}</p>}
      <p>{tellCode(state)}</p>
      <ul>
        {addresses.map((address) => (
          <li>
            <code>{address}</code>
          </li>
        ))}
      </ul>
      {addresses.length > 1 && <p>Where one of them does not open, take another.</p>}
      <p>
        <button type="button" class="new-code">
          A new code
        </button>
      </p>
      <p class="told" role="status" />
      <noscript>
        <p>Without JavaScript, stop the command and start it again for a new code.</p>
      </noscript>
      <p>{inTheOpen}</p>
    </section>
  );
}

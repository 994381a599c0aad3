/** The page at the copy stand: what its script fills and moves. */
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

/** The whole document. The token lets its script ask for more than pictures. */
export function renderPage(token: string): string {
  return `<!doctype html>\n${renderToString(<Page token={token} />)}\n`;
}

function Page({ token }: { readonly token: string }): VNode {
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="tilebook-token" content={token} />
        <title>Copy stand · Tilebook</title>
        <link rel="icon" type="image/svg+xml" href="/assets/icon.svg" />
        <link rel="stylesheet" href="/assets/copystand.css" />
        <script defer src="/assets/copystand.js" />
      </head>
      <body>
        <main class="copystand">
          <header class="opening">
            <h1>Where is the glaze, and where the grey card?</h1>
            <p class="lede">
              Photographs from one copy stand show both in the same place. Drag the frames once,
              look whether they fit every tile below, and write them down.
            </p>
            <noscript>
              <p>This page needs JavaScript, which is switched off in this browser.</p>
            </noscript>
          </header>
          <div class="stand" hidden>
            <Board />
            <div class="beside">
              <Measured />
              <Numbers />
              <Writing />
            </div>
          </div>
          <section class="strip" aria-labelledby="strip-head" hidden>
            <h2 id="strip-head">Do they fit every tile?</h2>
            <ol />
          </section>
          <p class="trouble" role="alert" />
        </main>
      </body>
    </html>
  );
}

function Board(): VNode {
  return (
    <section class="board" aria-label="The photograph">
      <div class="steps">
        <p class="shown" aria-live="polite" />
        <button type="button" class="plain previous">
          previous
        </button>
        <button type="button" class="plain next">
          next
        </button>
      </div>
      <div class="stage">
        <img alt="" draggable={false} />
      </div>
      <p class="quiet" id="keys">
        Drag a frame, or its corners. By keyboard: tab to a frame, move it with the arrow keys,
        resize it with shift and the arrow keys.
      </p>
    </section>
  );
}

function Measured(): VNode {
  return (
    <section class="measured" aria-labelledby="measured-head">
      <h2 id="measured-head">What is measured in it</h2>
      <div class="swatch" aria-hidden="true" />
      <p class="figures hex" />
      <p class="sentence" aria-live="polite" />
    </section>
  );
}

function Numbers(): VNode {
  return (
    <section class="numbers" aria-labelledby="numbers-head">
      <h2 id="numbers-head">Edges, in per cent of the photograph</h2>
      <Edges name="crop" label="glaze" />
      <Edges name="grey" label="grey card" />
      <p>
        <button type="button" class="card" />
      </p>
    </section>
  );
}

function Edges({ name, label }: { readonly name: string; readonly label: string }): VNode {
  return (
    <fieldset class="edges" name={name}>
      <legend>{label}</legend>
      {["left", "top", "right", "bottom"].map((edge) => (
        <label>
          {edge} <input type="number" name={edge} min="0" max="100" step="0.1" />
        </label>
      ))}
    </fieldset>
  );
}

function Writing(): VNode {
  return (
    <form class="writing" aria-labelledby="writing-head">
      <h2 id="writing-head">Write the frames down</h2>
      <p class="holds" />
      <fieldset>
        <legend class="unseen">For which photographs they hold</legend>
        <Choice scope="studio" />
        <Choice scope="set" />
        <Choice scope="tile" />
      </fieldset>
      <p class="ways">
        <button type="submit">Write them down</button>
        <button type="button" class="plain take">
          take the frames that hold now
        </button>
      </p>
      <div class="told" role="status">
        <p />
        <pre hidden />
      </div>
    </form>
  );
}

function Choice({ scope }: { readonly scope: string }): VNode {
  return (
    <label class={scope}>
      <input type="radio" name="scope" value={scope} /> <span />
    </label>
  );
}

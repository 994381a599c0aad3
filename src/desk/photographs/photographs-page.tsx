/** The page on which photographs get their tiles' codes: a contact sheet, looked at before anything is written. */
import type { VNode } from "preact";
import { count } from "../../../templates/words/english/numbers.ts";
import { newestFirst } from "../../loads/kiln-habits.ts";
import type { Archive } from "../../records/archive.ts";
import { compareIds } from "../../terms/ids.ts";
import { largestPicture, mostOnContactSheet } from "../../terms/limits.ts";
import type { DeskPage } from "../page.ts";
import { addAction, sheetAction, throwAwayAction, writeAction } from "./actions.ts";
import { orderOf, setMark } from "./codes.ts";
import type { SheetView } from "./types.ts";
import { roleWords } from "./words.ts";

export const photographsPage: DeskPage = {
  name: "photographs",
  title: "Photographs",
  purpose:
    "Name a camera's photographs after their tiles: by the label in the frame, or by the order in which they were taken.",
  script: "photographs",
  render({ archive }, of) {
    const order = of === undefined ? undefined : orderOf(archive, of);
    if (of !== undefined && !order) return undefined;
    return <PhotographsPage archive={archive} of={of ?? null} order={order?.words ?? null} />;
  },
  actions: { sheet: sheetAction, write: writeAction, "throw-away": throwAwayAction },
  pictures: { add: addAction },
  shows: { small: (id, { tray }) => tray.find(id)?.small },
};

interface PageProps {
  readonly archive: Archive;
  readonly of: string | null;
  readonly order: string | null;
}

function PhotographsPage({ archive, of, order }: PageProps): VNode {
  const view: SheetView = { of, largest: largestPicture, most: mostOnContactSheet };
  return (
    <>
      <header class="opening">
        <h1>Which photograph shows which tile?</h1>
        <p class="lede">
          A label with its QR code in the frame names the tile.{" "}
          {order === null
            ? "Without labels, say first which load or set you photographed, in its order."
            : `Photographs without one are named in the order of ${order}, as long as their number fits.`}{" "}
          Nothing is written before you say so.
        </p>
        <noscript>
          <p>
            Photographs are named here with JavaScript, which is switched off in this browser. A
            photograph can be named by hand: its tile’s code, beside the tile’s record.
          </p>
        </noscript>
      </header>
      <Orders archive={archive} of={of} />
      <form class="photographs-form" data-view={JSON.stringify(view)} hidden>
        <label class="choose">
          Choose photographs, or drop them here{" "}
          <input type="file" name="files" multiple accept="image/*,.heic,.heif,.avif" />
        </label>
        <p class="quiet">
          Place, time and device are taken out of each at once. Until you write them, they lie in a
          folder for temporary files on the computer that runs the command, and go when you throw
          them away or stop it. One that you turn is saved anew, with a little loss (JPEG of quality
          95; PNG without any).
        </p>
        <p class="told" role="status" />
        <section aria-label="What was written, and what was not">
          <ul class="log" />
        </section>
        <section aria-label="Contact sheet">
          <ol class="contact-sheet" />
        </section>
        <Ways />
        <template>
          <Frame />
        </template>
      </form>
    </>
  );
}

/** One photograph of the sheet, as the script fills it in. */
function Frame(): VNode {
  return (
    <li class="frame">
      <div class="picture">
        <img src="data:," alt="" />
      </div>
      <p class="name" />
      <label>
        Code <input name="code" autocomplete="off" autocapitalize="characters" spellcheck={false} />
      </label>
      <label>
        It shows{" "}
        <select name="role">
          {Object.entries(roleWords).map(([role, words]) => (
            <option value={role}>{words}</option>
          ))}
        </select>
      </label>
      <p class="words" />
      <div class="frame-ways">
        <button type="button" class="turn">
          Turn
        </button>
        <button type="button" class="leave-out">
          Leave out
        </button>
      </div>
      <p class="fault" role="alert" />
    </li>
  );
}

function Ways(): VNode {
  return (
    <div class="sheet-ways" hidden>
      <button type="button" class="throw-away">
        Throw all away
      </button>
      <button type="submit">Write these</button>
    </div>
  );
}

/** So many loads are offered: whoever photographs an older one finds it by its address. */
const mostLoads = 8;

function Orders({ archive, of }: Pick<PageProps, "archive" | "of">): VNode {
  const firings = newestFirst(archive).slice(0, mostLoads);
  const sets = [...archive.sets.values()].sort((a, b) => compareIds(a.id, b.id));
  const all = [
    ...firings.map(({ id }) => ({ to: id, title: id })),
    ...sets.map(({ id, record }) => ({ to: setMark + id, title: record.name })),
  ];
  return (
    <details class="orders" open={of === null}>
      <summary>{of === null ? "In which order were they taken?" : "Another order"}</summary>
      <ul>
        {all.map(({ to, title }) => (
          <li>
            <a
              href={`/desk/photographs/${encodeURIComponent(to)}`}
              {...(to === of && { "aria-current": "page" as const })}
            >
              {title}
            </a>{" "}
            <span class="quiet">{lackWords(archive, to)}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** `14 tiles, 3 without a photograph` */
function lackWords(archive: Archive, of: string): string {
  const tiles = orderOf(archive, of)?.tiles ?? [];
  const lacking = tiles.filter(({ isAwaited }) => isAwaited).length;
  return `${count(tiles.length, "tile")}, ${lacking === 0 ? "all with" : `${lacking} without`} a photograph`;
}

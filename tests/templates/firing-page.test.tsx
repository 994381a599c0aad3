import { describe, expect, it } from "vitest";
import { renderPage } from "../../src/publish/write-pages.ts";
import type { Firing } from "../../src/records/archive.ts";
import { storyHeading, storySentence } from "../../templates/words/firing/story.ts";
import { coat, fired, glaze, result, set, tile } from "../checks/support.ts";
import { listPages } from "../support/list-pages.ts";
import { catalogueOf, coneSix, type Fields, firingOf, load, logTo } from "./support/firings.ts";

const about = { on: "2026-10-18", cone: "6", schedule: coneSix };
const told = (fields: Fields, log?: string) => {
  const firing = firingOf({ ...about, ...fields }, log);
  return [storyHeading(firing), storySentence(firing)];
};

describe("how a firing went, in words", () => {
  it("a good one went as planned", () => {
    expect(told({ witness: { top: "6", bottom: "6" } }, logTo(1215))).toEqual([
      "Fired as planned",
      "Aim, programme, log and witness cones agree to within a cone.",
    ]);
  });

  it("an uneven one says which shelf was the hottest and which the coolest", () => {
    expect(told({ witness: { top: "6", bottom: "4½" } }, logTo(1215))).toEqual([
      "An uneven firing",
      "The hottest shelf (top) shows cone 6, the coolest (bottom) cone 4½.",
    ]);
  });

  it("a drifted thermocouple sets the log against the cones", () => {
    expect(told({ witness: { top: "8", bottom: "8" } }, logTo(1215))).toEqual([
      "The log and the cones disagree",
      "The log works out at just under cone 6; the witness cones show cone 8.",
    ]);
  });

  it("06 fired where 6 was meant is told outright", () => {
    const schedule = [{ to: "996", rate: "60" }];
    expect(told({ schedule, witness: { top: "06" } }, logTo(995))[0]).toBe(
      "Fired to just under cone 06, not to cone 6 as planned",
    );
  });

  it("a firing still to come has done nothing yet", () => {
    expect(told({ on: undefined })).toEqual([
      "Still to come",
      "Aim and programme agree to within a cone. The kiln has not been lit yet.",
    ]);
  });

  it("a firing of which only the aim is known has nothing to be held against", () => {
    expect(told({ schedule: undefined })[0]).toBe("Nothing to compare it with");
  });
});

/** The pages of an archive by their paths, as HTML. */
function pagesOf(firings: readonly Firing[], parts: Parameters<typeof catalogueOf>[1] = {}) {
  const pages = listPages(catalogueOf(firings, parts));
  return (path: string): string => {
    const page = pages.find((each) => each.path === path);
    return page ? renderPage(page) : "";
  };
}

const words = (html: string) => html.replace(/<[^>]+>/gu, " ").replace(/\s+/gu, " ");

describe("the pages of firings and kilns", () => {
  const layers = [coat("tidewrack", { coats: 2 })];
  const came = (surface: string) => ({ result: [{ ...result(), surface: [surface] }] }) as never;
  const page = pagesOf(
    [
      load("g-1", { ...about, kiln: "The Drum", witness: { middle: "6" } }, logTo(1215)),
      load("g-2", { ...about, on: "2026-10-25", kiln: "The Drum", witness: { middle: "4" } }),
      load("r-1", { kind: "raku", on: "2026-06-06", "heated-by": "gas" }),
    ],
    {
      glazes: [glaze("tidewrack", { name: "Tidewrack" })],
      sets: [set("autumn", { control: "CT-1" })],
      tiles: [
        tile("CT-1", [...layers, { ...fired("g-1"), shelf: "middle" }], came("gloss")),
        tile("CT-2", [...layers, { ...fired("g-2"), shelf: "middle" }], came("satin")),
      ],
    },
  );

  it("tell a programme in the studio's unit, the other behind it", () => {
    expect(words(page("firings/g-1.html"))).toContain(
      "60° an hour to 1210 °C, hold 15 minutes. 108° an hour to 2210 °F, hold 15 minutes",
    );
  });

  it("state how far their reckoning may be off, and what decides", () => {
    const html = words(page("firings/g-1.html"));
    expect(html).toContain("about 3 °C off at the chart");
    expect(html).toContain("Witness cones in the kiln have the last word.");
    expect(html).toContain(
      "Go by the kiln’s manual, local rules and whoever is in charge of the kiln.",
    );
  });

  it("tell how a log was read", () => {
    expect(words(page("firings/g-1.html"))).toContain("taken as °C, as its label says");
  });

  it("hold the control tile's twins against it, and say what the cones make of it", () => {
    const html = words(page("firings/g-2.html"));
    expect(html).toContain("Unlike CT-1: satin, not gloss. Its shelf was 2 cones cooler");
    expect(words(page("kilns/the-drum.html"))).toContain(
      "CT-2 came out differently where the cones were hotter or cooler too: look at the firing first.",
    );
  });

  it("lead from the list to kilns and firings, and from a firing to its kiln", () => {
    const list = page("firings/index.html");
    expect(list).toContain('href="../kilns/the-drum.html"');
    expect(list).toContain('href="../firings/g-2.html"');
    expect(page("firings/g-2.html")).toContain('href="../kilns/the-drum.html"');
    expect(page("kilns/the-drum.html")).toContain('href="../firings/g-1.html"');
  });

  it("warn of carbon monoxide where something burns", () => {
    expect(page("firings/r-1.html")).toContain("carbon monoxide");
    expect(page("firings/g-1.html")).not.toContain("carbon monoxide");
  });

  it("look through a spyhole in the words of the care page", () => {
    const care = "Look in only through dark glasses made for it";
    for (const path of ["firings/g-1.html", "kilns/the-drum.html", "care.html"])
      expect(words(page(path))).toContain(care);
  });

  it("warn of glowing ware and smoke at a raku firing, loudly, and at no other", () => {
    const raku = words(page("firings/r-1.html"));
    expect(page("firings/r-1.html")).toContain('class="caution loud"');
    expect(raku).toContain("The ware is drawn glowing and sets fire to what it is put into.");
    expect(raku).toContain("give off thick smoke with carbon monoxide in it");
    expect(raku).toContain("Source: Western Carolina University, Ceramics safety");
    expect(words(page("firings/g-1.html"))).not.toContain("Raku");
    const html = page("firings/r-1.html");
    expect(html.indexOf("caution loud")).toBeLessThan(html.indexOf("What the cones said"));
  });

  it("show on a tile's page what its own shelf had, and the curve", () => {
    const html = page("tiles/ct-2.html");
    expect(words(html)).toContain(
      "Aimed at cone 6; the cones on its shelf showed cone 4; the programme works out at cone 6. The records of this load do not agree",
    );
    expect(html).toContain('class="tile-curve"');
  });

  it("carry no style of their own, which the site's policy forbids", () => {
    for (const path of ["firings/g-1.html", "firings/index.html", "kilns/the-drum.html"])
      expect(page(path)).not.toMatch(/ style=/u);
  });
});

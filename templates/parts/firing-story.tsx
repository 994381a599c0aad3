/** Whether the story of a firing holds, and what may be behind it where it does not. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import { capital } from "../words/english/numbers.ts";
import { readingWords } from "../words/firing/accounts.ts";
import { storyHeading, storySentence } from "../words/firing/story.ts";
import { shelfWords } from "../words/tile/steps.ts";

/** The first thing that a page says of a firing. */
export function StoryLede({ firing }: { readonly firing: CatalogueFiring }): VNode {
  return (
    <div class={firing.story.agreement === "differs" ? "verdict differs" : "verdict"}>
      <p class="verdict-head">{storyHeading(firing)}</p>
      <p>{storySentence(firing)}</p>
    </div>
  );
}

/** The likeliest readings of a story that does not hold, and cones that contradict themselves. */
export function Readings({
  firing: { story },
}: {
  readonly firing: CatalogueFiring;
}): VNode | null {
  const { readings, contradictions } = story;
  if (readings.length === 0 && contradictions.length === 0) return null;
  return (
    <section class="readings">
      <h2>
        {readings.length > 1
          ? "What may be behind it, the likeliest first"
          : "What may be behind it"}
      </h2>
      {readings.length > 0 && (
        <ol class={readings.length > 1 ? "steps" : "one"}>
          {readings.map((reading) => (
            <li>{readingWords(reading)}</li>
          ))}
        </ol>
      )}
      {contradictions.map(({ shelf, message }) => (
        <p>
          {capital(shelfWords(shelf))}: the cones of one pack contradict each other. {message}
        </p>
      ))}
    </section>
  );
}

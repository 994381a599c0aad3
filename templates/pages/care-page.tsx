/** What can hurt someone, said plainly, each with what decides. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { type CareTopic, careTopics } from "../words/care/topics.ts";

const sentence =
  "What can hurt someone who mixes, glazes, fires, uses a pot or is seen in a picture, and whose word decides.";

export function CarePage({ frame }: { readonly frame: Frame }): VNode {
  return (
    <Document
      styles="care"
      frame={frame}
      title="Care"
      summary={sentence}
      section="care"
      kind="entry care"
    >
      <header class="opening">
        <h1>Care</h1>
        <p class="lede">{sentence}</p>
        <p class="measure">
          This is common practice, set down to be read before the work and not instead of asking.
          Local rules, the product’s label and safety sheet, the kiln’s manual and a laboratory come
          first. Who teaches or runs a kiln answers for others, and decides for them.
        </p>
      </header>
      <nav class="way-line" aria-label="On this page">
        <ul>
          {careTopics.map(({ id, title }) => (
            <li>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ul>
      </nav>
      <div class="topics">
        {careTopics.map((topic) => (
          <Topic topic={topic} />
        ))}
      </div>
    </Document>
  );
}

function Topic({ topic }: { readonly topic: CareTopic }): VNode {
  return (
    <section id={topic.id}>
      <h2>{topic.title}</h2>
      {topic.words.map((words) => (
        <p>{words}</p>
      ))}
      <p class="decides">
        <b>What decides</b> {topic.decides}
      </p>
    </section>
  );
}

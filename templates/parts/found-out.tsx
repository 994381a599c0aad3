/** What a set found out: what to make again, what otherwise, what to avoid, each with its tiles. */
import type { VNode } from "preact";
import { Codes, type NamedCodes } from "./codes.tsx";

export interface LearnedLine {
  readonly codes: NamedCodes;
  readonly names: string;
  /** What was done, how it was fired, what came out. */
  readonly told: readonly string[];
  /** In the makers' own words. */
  readonly said: readonly { readonly words: string; readonly by: string | null }[];
  readonly rests: string;
}

export interface LessonList {
  readonly title: string;
  readonly items: readonly LearnedLine[];
}

export function Lessons(props: {
  readonly root: string;
  readonly lessons: readonly LessonList[];
}): VNode {
  return (
    <div class="lessons">
      {props.lessons.map(({ title, items }) => (
        <section>
          <h3>{title}</h3>
          <ul>
            {items.map((line) => (
              <Line root={props.root} {...line} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function Line(props: LearnedLine & { readonly root: string }): VNode {
  const { root, codes, names, told, said, rests } = props;
  return (
    <li>
      <p>
        <Codes root={root} of={codes} /> <b>{names}</b>
      </p>
      <p>{told.join(" ")}</p>
      {said.map(({ words, by }) => (
        <blockquote>
          {words}
          {by && <cite> {by}</cite>}
        </blockquote>
      ))}
      <p class="quiet">{rests}</p>
    </li>
  );
}

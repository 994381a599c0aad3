/** What a glaze is weighed or mixed out of. */
import type { VNode } from "preact";
import type { GlazeTold } from "../../src/catalogue/glazes.ts";
import type { Link } from "../../src/catalogue/link.ts";

interface Portion {
  readonly id: string;
  readonly parts: number;
}

export function Recipe({
  root,
  glaze: { ingredients, additions, blend, by, made },
}: {
  readonly root: string;
  readonly glaze: GlazeTold;
}): VNode | null {
  const toPortion = ({ material, parts }: { material: string; parts: number }): Portion => ({
    id: material,
    parts,
  });
  if (!ingredients && !blend) return null;
  return (
    <section class="recipe">
      <h2>{blend ? "What it is blended from" : "What it is weighed out of"}</h2>
      <table>
        <caption>Parts by {blend ? (by === "volume" ? "volume" : "dry weight") : "weight"}</caption>
        <Portions root={root} made={made} of={(ingredients ?? []).map(toPortion)} />
        <Portions
          root={root}
          made={made}
          of={(blend ?? []).map(({ glaze, parts }) => ({ id: glaze, parts }))}
        />
        <Portions
          root={root}
          made={made}
          of={additions.map(toPortion)}
          title="Added to 100 of these"
        />
      </table>
      <p class="quiet">
        Dry materials are dust: weigh them in a mask, wipe up wet.{" "}
        <a href={`${root}care.html`}>Care</a>
      </p>
    </section>
  );
}

function Portions(props: {
  readonly root: string;
  readonly made: Readonly<Record<string, Link>>;
  readonly of: readonly Portion[];
  readonly title?: string;
}): VNode | null {
  if (props.of.length === 0) return null;
  return (
    <tbody>
      {props.title && (
        <tr>
          <th colSpan={2} scope="rowgroup">
            {props.title}
          </th>
        </tr>
      )}
      {props.of.map(({ id, parts }) => {
        const link = props.made[id];
        return (
          <tr>
            <th scope="row">{link ? <a href={props.root + link.url}>{link.name}</a> : id}</th>
            <td>{parts}</td>
          </tr>
        );
      })}
    </tbody>
  );
}

/**
 * The page on which a tablet's code is typed. Anybody in the network can open it, so it holds no name,
 * loads nothing, and knows nothing of the archive.
 */
import { createHash } from "node:crypto";
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Tried } from "../../local-server/guest-pass.ts";
import { type CodePage, codeAddress } from "../../local-server/guest-server.ts";
import { inTheOpen, tellTried } from "./words.ts";

/** @param styles stand on the page itself, and nothing else may be loaded by it */
export function codePage(styles: string): CodePage {
  const sum = createHash("sha256").update(styles).digest("base64");
  return {
    html: (became) =>
      `<!doctype html>\n${renderToString(<Page styles={styles} became={became} />)}\n`,
    policy: [
      ...["default-src 'none'", `style-src 'sha256-${sum}'`, "base-uri 'none'"],
      ...["form-action 'self'", "frame-ancestors 'none'"],
    ].join("; "),
  };
}

interface PageProps {
  readonly styles: string;
  readonly became: Tried | "no-code" | undefined;
}

function Page({ styles, became }: PageProps): VNode {
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>Type the code</title>
        <style dangerouslySetInnerHTML={{ __html: styles }} />
      </head>
      <body>
        <main class="let-in">
          <h1>Type the code.</h1>
          <p id="where">The computer that shows this address shows the code beside it.</p>
          <form method="post" action={codeAddress}>
            <label for="code">Code, six digits</label>
            <input
              id="code"
              name="code"
              type="text"
              inputMode="numeric"
              autocomplete="off"
              maxLength={7}
              required
              aria-describedby={became === undefined ? "where" : "became"}
            />
            <button type="submit">Come in</button>
          </form>
          {became !== undefined && (
            <p id="became" class="became" role="alert">
              {tellTried(became)}
            </p>
          )}
          <p>{inTheOpen}</p>
        </main>
      </body>
    </html>
  );
}

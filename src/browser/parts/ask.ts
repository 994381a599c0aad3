/** Asks the command that serves the page. */

const token = document.querySelector<HTMLMetaElement>('meta[name="tilebook-token"]')?.content ?? "";

/** What the server said in words when it refused, or that it is gone. */
export class Unanswered extends Error {
  override readonly name = "Unanswered";
}

/** Gets JSON. */
export function get<T>(path: string): Promise<T> {
  return ask(path, {});
}

/** Sends JSON and gets JSON; `signal` calls it off. */
export function post<T>(path: string, body: unknown, signal?: AbortSignal): Promise<T> {
  return ask(path, {
    method: "POST",
    headers: { "content-type": "application/json", "x-tilebook-token": token },
    body: JSON.stringify(body),
    ...(signal && { signal }),
  });
}

/** Sends a picture and gets JSON. */
export function postPicture<T>(path: string, picture: Blob): Promise<T> {
  return ask(path, {
    method: "POST",
    headers: { "content-type": "application/octet-stream", "x-tilebook-token": token },
    body: picture,
  });
}

async function ask<T>(path: string, options: RequestInit): Promise<T> {
  const response = await fetch(path, options).catch((error: unknown) => {
    if (error instanceof DOMException && error.name === "AbortError") throw error;
    throw new Unanswered(
      "The command that shows this page was stopped. Start it again, and load the page again.",
    );
  });
  if (!response.ok) throw new Unanswered(await response.text());
  return (await response.json()) as T;
}

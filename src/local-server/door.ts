/** Who is answered by a server on this computer: everything that comes in is doubted here. */
import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** Why a request is not answered, in HTTP's number and in words. */
export class Refused extends Error {
  override readonly name = "Refused";
  constructor(
    readonly status: number,
    words: string,
  ) {
    super(words);
  }
}

export interface Door {
  /** The names that it may be asked by, each with its port. */
  readonly hosts: readonly string[];
  /** What only a page that was served here knows. */
  readonly token: string;
  /** The methods that are answered. */
  readonly methods: readonly string[];
  /** Whether pictures are taken besides JSON. */
  readonly takesPictures: boolean;
}

/**
 * Lets in only what was asked of this computer by its own name: a page from elsewhere whose name
 * was made to lead here would send that name. A page of another origin is not answered at all, and
 * what changes or reckons must come from a page that was served here, and know its token.
 *
 * @throws Refused
 */
export function checkRequest(request: IncomingMessage, door: Door): void {
  checkSender(request, door);
  checkPosted(request, door);
}

/**
 * The first half: by which name it was asked, how, and from a page of which origin.
 *
 * @throws Refused
 */
export function checkSender({ method = "", headers }: IncomingMessage, door: Door): void {
  const { host = "", origin } = headers;
  if (!door.hosts.includes(host)) throw new Refused(403, "Only this computer itself is answered.");
  if (!door.methods.includes(method)) throw new Refused(405, "Nothing of that kind is answered.");
  if (origin !== undefined && origin !== `http://${host}`)
    throw new Refused(403, "Only the page that was opened here is answered.");
}

/**
 * The second half: what is posted comes with the token, and as something that no form can send.
 *
 * @throws Refused
 */
export function checkPosted({ method, headers }: IncomingMessage, door: Door): void {
  if (method === "GET" || method === "HEAD") return;
  if (!isSecret(headers[tokenHeader], door.token))
    throw new Refused(403, "This page was opened before the command began. Load it again.");
  const isPicture = door.takesPictures && headers["content-type"] === pictureType;
  if (!isPicture && !/^application\/json\b/u.test(headers["content-type"] ?? ""))
    throw new Refused(415, "Only JSON is read.");
}

/** As what a page sends a picture, whatever it is: its first bytes tell that, and nothing else does. */
export const pictureType = "application/octet-stream";

/** The header in which a page says the token that it was given. */
const tokenHeader = "x-tilebook-token";

/** Whether the very secret was given. How long that takes tells nothing of what is right in it. */
export function isSecret(given: string | string[] | undefined, secret: string): boolean {
  if (typeof given !== "string") return false;
  const [one, other] = [Buffer.from(given), Buffer.from(secret)];
  return one.length === other.length && timingSafeEqual(one, other);
}

/**
 * The path that is asked for, decoded, without its question. One that could lead out of a folder,
 * or to what lies hidden in it, leads nowhere.
 *
 * @returns begins with `/`
 * @throws Refused
 */
export function readPath({ url = "" }: IncomingMessage): string {
  const path = decode(url.replace(/[?#].*$/su, ""));
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
  if (!path.startsWith("/") || /\/\/|\/\.|[\\\0-\x1f]/u.test(path)) throw nowhere();
  return path;
}

function decode(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    throw nowhere();
  }
}

/** What is said of an address that leads to nothing. */
export function nowhere(): Refused {
  return new Refused(404, "There is no such thing here.");
}

/**
 * Reads a request's JSON, and no more of it than a page would send.
 *
 * @param longest in letters
 * @throws Refused
 */
export async function readBody(request: IncomingMessage, longest: number): Promise<unknown> {
  const text = await readText(request, longest);
  try {
    return JSON.parse(text);
  } catch {
    throw new Refused(400, "That is no JSON.");
  }
}

/**
 * Reads the text of a request.
 *
 * @param longest in letters
 * @throws Refused
 */
export async function readText(request: IncomingMessage, longest: number): Promise<string> {
  let text = "";
  for await (const part of request.setEncoding("utf8")) {
    text += part;
    if (text.length > longest) throw new Refused(413, "That is more than is read.");
  }
  return text;
}

/**
 * Reads the bytes of a request.
 *
 * @param most so many, and no more
 * @throws Refused
 */
export async function readBytes(request: IncomingMessage, most: number): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > most) throw new Refused(413, "That is more than is read.");
    parts.push(part);
  }
  return Buffer.concat(parts);
}

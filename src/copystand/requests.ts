/** What a page may ask, and of whom it may be: everything that comes in is doubted here. */
import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";
import { box } from "../records/fields.ts";
import type { Edges, Frames, FramesOnTile, Scope, WriteRequest } from "./types.ts";

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

export interface Doorkeeper {
  readonly port: number;
  /** What only the page that was served here knows. */
  readonly token: string;
}

/**
 * Lets in only what was asked of this computer by its own name: a page from elsewhere whose name
 * was made to lead here would send that name. What changes or reckons must come from the page that
 * was served here, and know its token.
 *
 * @throws Refused
 */
export function checkRequest({ method, headers }: IncomingMessage, door: Doorkeeper): void {
  const hosts = ["localhost", "127.0.0.1", "[::1]"].map((name) => `${name}:${door.port}`);
  const { host = "", origin } = headers;
  if (!hosts.includes(host)) throw new Refused(403, "Only this computer itself is answered.");
  if (method === "GET" || method === "HEAD") return;
  if (method !== "POST") throw new Refused(405, "Nothing of that kind is answered.");
  if (origin !== undefined && origin !== `http://${host}`)
    throw new Refused(403, "Only the page that was opened here is answered.");
  if (!isToken(headers["x-tilebook-token"], door.token))
    throw new Refused(403, "This page was opened before the command began. Load it again.");
  if (!/^application\/json\b/u.test(headers["content-type"] ?? ""))
    throw new Refused(415, "Only JSON is read.");
}

function isToken(given: string | string[] | undefined, token: string): boolean {
  if (typeof given !== "string") return false;
  const [one, other] = [Buffer.from(given), Buffer.from(token)];
  return one.length === other.length && timingSafeEqual(one, other);
}

const longestBody = 10_000;

/** Reads a request's JSON, and no more of it than a page would send. */
export async function readBody(request: IncomingMessage): Promise<unknown> {
  let text = "";
  for await (const part of request.setEncoding("utf8")) {
    text += part;
    if (text.length > longestBody) throw new Refused(413, "That is more than is read.");
  }
  try {
    return JSON.parse(text);
  } catch {
    throw new Refused(400, "That is no JSON.");
  }
}

/** @throws Refused where it is no such request */
export function parseFramesOnTile(body: unknown): FramesOnTile {
  const { tile, frames } = fieldsOf(body);
  if (typeof tile !== "string") throw unreadable();
  return { tile, frames: parseFrames(frames) };
}

/** @throws Refused where it is no such request */
export function parseWriteRequest(body: unknown): WriteRequest {
  const { scope } = fieldsOf(body);
  const scopes: readonly Scope[] = ["studio", "set", "tile"];
  const known = scopes.find((each) => each === scope);
  if (!known) throw unreadable();
  return { ...parseFramesOnTile(body), scope: known };
}

function parseFrames(value: unknown): Frames {
  const { crop, grey } = fieldsOf(value);
  return { crop: parseEdges(crop), grey: grey === null ? null : parseEdges(grey) };
}

/** Whole per cents or one decimal, as they are written down; and what a record would accept. */
function parseEdges(value: unknown): Edges {
  if (!Array.isArray(value) || !value.every((edge) => Number.isFinite(edge))) throw unreadable();
  const rounded = value.map((edge: number) => String(Math.round(edge * 10) / 10 + 0));
  const reading = box().safeParse(rounded);
  if (!reading.success) throw unreadable();
  const { left, top, right, bottom } = reading.data;
  return [left, top, right, bottom];
}

function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null) throw unreadable();
  return value as Readonly<Record<string, unknown>>;
}

function unreadable(): Refused {
  return new Refused(400, "That could not be understood.");
}

/**
 * A server that this computer alone can ask, for the pages of a command. What it does not answer,
 * whoever asks, is decided here for all of them; see `door.ts`.
 */
import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { send, setHeaders } from "./answers.ts";
import {
  checkRequest,
  type Door,
  pictureType,
  Refused,
  readBody,
  readBytes,
  readPath,
} from "./door.ts";

/** What a server answers, once a request was let in. */
export interface LocalWork {
  /**
   * Answers a request that changes nothing.
   *
   * @param path decoded, without its question
   * @throws Refused, and whatever fails
   */
  readonly get: (path: string, request: IncomingMessage, response: ServerResponse) => Promise<void>;
  /** Answers what a page that knows the token posted; nothing is taken where it is left out. */
  readonly post?: (path: string, body: unknown, response: ServerResponse) => Promise<void>;
  /** The most letters that are read of what is posted; 10,000 where it is left out. */
  readonly longestBody?: number;
  /** Takes a picture that such a page posted; none is taken where it is left out. */
  readonly pictures?: TakesPictures;
  /** Is told of what failed and should not have. */
  readonly failed: (error: unknown) => void;
}

export interface TakesPictures {
  /** The most bytes of one. */
  readonly largest: number;
  readonly take: (path: string, bytes: Uint8Array, response: ServerResponse) => Promise<void>;
}

export interface LocalServer {
  /** Resolves with the port when it listens; rejects where the port is taken. */
  readonly listen: (port: number) => Promise<number>;
  readonly close: () => void;
}

/** What a page must send with whatever it posts. */
export function makeToken(): string {
  return randomBytes(24).toString("base64url");
}

/** The names of this computer that itself alone can ask by. */
const ownNames = ["localhost", "127.0.0.1", "[::1]"];

/**
 * Makes a server.
 *
 * @param token from `makeToken`, handed to the pages that may post
 */
export function localServer(work: LocalWork, token: string = makeToken()): LocalServer {
  const server = answering(work, async (request, response) => {
    const { port } = server.address() as AddressInfo;
    const hosts = ownNames.map((name) => `${name}:${port}`);
    checkRequest(request, doorOf(work, token, hosts));
    await answerLetIn(readPath(request), request, response, work);
  });
  return {
    listen: (port) => listenAt(server, "localhost", port),
    close: () => end(server),
  };
}

/** What is asked of whoever wants this work done. */
export function doorOf(work: LocalWork, token: string, hosts: readonly string[]): Door {
  const methods = work.post ? ["GET", "HEAD", "POST"] : ["GET", "HEAD"];
  return { hosts, token, methods, takesPictures: work.pictures !== undefined };
}

/**
 * A server whose every answer has the headers of `answers.ts`, and that tells refusals in words.
 *
 * @param take doubts a request and answers it
 */
export function answering(
  work: LocalWork,
  take: (request: IncomingMessage, response: ServerResponse) => Promise<void>,
): Server {
  return createServer(async (request, response) => {
    setHeaders(response);
    try {
      await take(request, response);
    } catch (error) {
      tell(response, error, work);
    }
  });
}

/** Listens at one address alone, and resolves with the port; rejects where it is taken. */
export function listenAt(server: Server, address: string, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, address, () => resolve((server.address() as AddressInfo).port));
  });
}

/** Listens no more, and cuts off whoever is still connected. */
export function end(server: Server): void {
  server.close();
  server.closeAllConnections();
}

/** Answers a request that was let in. */
export async function answerLetIn(
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
  work: LocalWork,
): Promise<void> {
  if (request.method === "POST") await takePost(path, request, response, work);
  else await work.get(path, request, response);
}

async function takePost(
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
  { post, longestBody, pictures }: LocalWork,
): Promise<void> {
  if (pictures && request.headers["content-type"] === pictureType)
    await pictures.take(path, await readBytes(request, pictures.largest), response);
  else await post?.(path, await readBody(request, longestBody ?? 10_000), response);
}

function tell(response: ServerResponse, error: unknown, { failed }: LocalWork): void {
  const isRefused = error instanceof Refused;
  if (!isRefused) failed(error);
  if (response.headersSent) return void response.destroy();
  const words = isRefused
    ? error.message
    : "That failed. The window in which the command runs tells why.";
  send(response, "text/plain; charset=utf-8", words, isRefused ? error.status : 500);
}

/**
 * A server for one guest's device in the local network. Whoever was not let in by the code of a
 * `GuestPass` is answered with the page on which it is typed, whatever was asked for.
 */
import type { IncomingMessage, Server, ServerResponse } from "node:http";
import { sendHtml } from "./answers.ts";
import { checkPosted, checkSender, Refused, readPath, readText } from "./door.ts";
import type { CodeState, GuestPass, Tried } from "./guest-pass.ts";
import {
  answering,
  answerLetIn,
  doorOf,
  end,
  type LocalServer,
  type LocalWork,
  listenAt,
} from "./local-server.ts";

/** The page on which a code is typed. It knows nothing of what is behind it. */
export interface CodePage {
  /** @param became what became of the last code; undefined where none was typed */
  readonly html: (became: Tried | "no-code" | undefined) => string;
  /** Its content security policy. */
  readonly policy: string;
}

export interface Guests {
  readonly pass: GuestPass;
  /** Those that it listens at, as numbers: a name could be made to lead here. */
  readonly addresses: readonly string[];
  /** What the guest's pages must send with whatever they post; another than that of any other server. */
  readonly token: string;
  readonly codePage: CodePage;
  /** Where a device is led that was let in. */
  readonly home: string;
  /** Is told what has become of the code, and by which device's address. */
  readonly changed: (state: CodeState, device: string) => void;
}

/** Makes a server that listens at each of the guests' addresses, and nowhere else. */
export function guestServer(work: LocalWork, guests: Guests): LocalServer {
  const servers = guests.addresses.map((address) => serverAt(address, work, guests));
  guests.pass.onRenewed(() => {
    for (const { server } of servers) server.closeAllConnections();
  });
  const close = () => {
    for (const { server } of servers) end(server);
  };
  return {
    async listen(port) {
      try {
        let taken = port;
        for (const { server, address } of servers) taken = await listenAt(server, address, taken);
        return taken;
      } catch (error) {
        close();
        throw error;
      }
    },
    close,
  };
}

function serverAt(address: string, work: LocalWork, guests: Guests) {
  const server: Server = answering(work, async (request, response) => {
    const door = doorOf(work, guests.token, [`${address}:${request.socket.localPort}`]);
    checkSender(request, door);
    const path = readPath(request);
    if (!hasCookie(request, guests.pass)) return answerStranger(path, request, response, guests);
    checkPosted(request, door);
    await answerLetIn(path, request, response, work);
  });
  server.maxConnections = mostConnections;
  return { server, address };
}

/** A browser opens six. Whoever in the network opens them without end is not to take them all from this computer. */
const mostConnections = 64;

/** Where the page posts a code. */
export const codeAddress = "/let-in";

async function answerStranger(
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
  guests: Guests,
): Promise<void> {
  if (request.method !== "POST")
    return sendCodePage(response, guests, undefined, path === "/" ? 200 : 403);
  const { origin, "content-type": type } = request.headers;
  if (path !== codeAddress || origin === undefined)
    throw new Refused(403, "This device is not let in. Load the page again, and type the code.");
  if (type !== "application/x-www-form-urlencoded") throw new Refused(415, "Only a code is read.");
  const form = new URLSearchParams(await readText(request, longestForm));
  const code = (form.get("code") ?? "").replace(/\s/gu, "");
  if (!/^[0-9]{6}$/u.test(code)) return sendCodePage(response, guests, "no-code", 403);
  const before = guests.pass.look();
  const became = guests.pass.tryCode(code);
  const after = guests.pass.look();
  if (after.is !== before.is) guests.changed(after, request.socket.remoteAddress ?? "");
  if (!became.isIn) return sendCodePage(response, guests, became, 403);
  response.setHeader(
    "set-cookie",
    `${cookieName}=${became.secret}; Path=/; HttpOnly; SameSite=Strict`,
  );
  response.writeHead(303, { location: guests.home });
  response.end();
}

/** Letters of what the page posts: `code=` and six digits, with a blank between some of them. */
const longestForm = 100;

/**
 * Of all pages of a command this one alone sends a form, so that it needs no script. Its browser would
 * hide where the form comes from, were it told to send no referrer at all.
 */
function sendCodePage(
  response: ServerResponse,
  { codePage }: Guests,
  became: Tried | "no-code" | undefined,
  status: number,
): void {
  response.setHeader("content-security-policy", codePage.policy);
  response.setHeader("referrer-policy", "same-origin");
  sendHtml(response, codePage.html(became), status);
}

const cookieName = "tilebook-guest";

function hasCookie({ headers }: IncomingMessage, pass: GuestPass): boolean {
  const cookies = (headers.cookie ?? "").split(";").map((cookie) => cookie.trim().split("="));
  return cookies.some(([name, value = ""]) => name === cookieName && pass.isIn(value));
}

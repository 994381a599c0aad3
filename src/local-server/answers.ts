/** What a server on this computer sends, and what browsers are told of it. */
import type { ServerResponse } from "node:http";

/** No other page may show, read or frame what is sent, and no cache keeps it. */
const headers = {
  "cache-control": "no-store",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
};

/** Sets what holds for every answer; a header that is set later goes before. */
export function setHeaders(response: ServerResponse): void {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
}

/** A page of a command loads nothing from elsewhere, runs no script but its own, and sends no form. */
const policy = [
  ...["default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self'"],
  ...["font-src 'self'", "connect-src 'self'", "base-uri 'none'", "form-action 'none'"],
  "frame-ancestors 'none'",
].join("; ");

export function setPolicy(response: ServerResponse): void {
  response.setHeader("content-security-policy", policy);
}

/**
 * Sends a whole answer.
 *
 * @param type its media type
 */
export function send(
  response: ServerResponse,
  type: string,
  body: string | Uint8Array,
  status = 200,
): void {
  response.writeHead(status, { "content-type": type });
  response.end(body);
}

export function sendHtml(response: ServerResponse, page: string, status = 200): void {
  send(response, "text/html; charset=utf-8", page, status);
}

export function sendJson(response: ServerResponse, value: unknown): void {
  send(response, "application/json", JSON.stringify(value));
}

const types: Readonly<Record<string, string>> = {
  css: "text/css; charset=utf-8",
  csv: "text/csv; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  json: "application/json; charset=utf-8",
  svg: "image/svg+xml",
  woff2: "font/woff2",
  xml: "application/xml; charset=utf-8",
};

/** Sends a style, a script, a font, a drawing or data, by the end of its name. */
export function sendAsset(response: ServerResponse, name: string, body: string | Uint8Array): void {
  const type = types[name.slice(name.lastIndexOf(".") + 1)] ?? "application/octet-stream";
  send(response, type, body);
}

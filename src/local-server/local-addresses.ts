/** Where this computer can be found in its local network. */
import type { NetworkInterfaceInfo } from "node:os";

/**
 * The addresses of version 4 that this computer has in private networks (RFC 1918) or gave itself
 * without one (RFC 3927). One that the whole internet may lead to is not among them.
 *
 * @param interfaces as `networkInterfaces` of `node:os` lists them
 */
export function localAddresses(
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): readonly string[] {
  return Object.values(interfaces)
    .flatMap((each) => each ?? [])
    .filter(({ family, internal, address }) => family === "IPv4" && !internal && isPrivate(address))
    .map(({ address }) => address);
}

function isPrivate(address: string): boolean {
  return /^(?:10\.|192\.168\.|169\.254\.|172\.(?:1[6-9]|2\d|3[01])\.)/u.test(address);
}

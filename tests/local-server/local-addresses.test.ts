/** At which of its addresses a computer may be asked by a tablet. */
import type { NetworkInterfaceInfo } from "node:os";
import { expect, test } from "vitest";
import { localAddresses } from "../../src/local-server/local-addresses.ts";

const at = (address: string, internal = false): NetworkInterfaceInfo => ({
  ...{ address, internal, netmask: "", mac: "", cidr: null },
  ...(address.includes(":") ? { family: "IPv6", scopeid: 0 } : { family: "IPv4" }),
});

test("those of private networks, from their first to their last, as RFC 1918 and RFC 3927 have them", () => {
  const own = ["10.0.0.1", "10.255.255.254", "172.16.0.1", "172.31.255.254", "192.168.0.1"];
  const found = localAddresses({ wlan0: own.map((each) => at(each)), eth0: [at("169.254.3.4")] });
  expect(found).toEqual([...own, "169.254.3.4"]);
});

test("none that the internet may lead to, none of this computer alone, and none that stands close to a private one", () => {
  const others = [
    "192.0.2.2",
    "203.0.113.7",
    "172.15.0.1",
    "172.32.0.1",
    "192.167.0.1",
    "11.0.0.1",
  ];
  expect(
    localAddresses({
      lo: [at("127.0.0.1", true), at("::1", true), at("10.0.0.1", true)],
      eth0: [...others, "110.0.0.1", "fd00::2", "fe80::1"].map((each) => at(each)),
      gone: undefined,
    }),
  ).toEqual([]);
});

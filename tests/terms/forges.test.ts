import { describe, expect, it } from "vitest";
import { newFileAddress } from "../../src/terms/forges.ts";

describe("the address of a new file", () => {
  const record = "---\nlayers:\n  - {glaze: soot & ash}\n---\n";

  it("is that of the forge's own page, with name and record filled in", () => {
    const address = newFileAddress("https://github.com/eelgate/tests", "tiles/a/EV-1.md", record);
    expect(address).toMatch(/^https:\/\/github\.com\/eelgate\/tests\/new\/HEAD\?/u);
    const { searchParams } = new URL(String(address));
    expect([...searchParams]).toEqual([
      ["filename", "tiles/a/EV-1.md"],
      ["value", record],
    ]);
    expect(newFileAddress("https://codeberg.org/eelgate/tests.git/", "x.md", "")).toBe(
      "https://codeberg.org/eelgate/tests/_new/main?filename=x.md&value=",
    );
  });

  it("is not made for a forge whose pages cannot be filled in, or no forge at all", () => {
    for (const other of [
      undefined,
      "https://git.example/eelgate/tests",
      "http://github.com/eelgate/tests",
      "https://github.com/eelgate",
      "https://github.com.evil.example/eelgate/tests",
      "javascript:alert(1)",
    ])
      expect(newFileAddress(other, "x.md", record)).toBeUndefined();
  });

  it("is told to be too long where a forge would refuse it", () => {
    const long = "ä".repeat(1400);
    expect(newFileAddress("https://github.com/e/t", "x.md", long)).toBe("too-long");
  });
});

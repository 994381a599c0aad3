/** The code for one tablet: how long it lets somebody in, how often it may be guessed, and what ends it. */
import { expect, test } from "vitest";
import { guestPass } from "../../src/local-server/guest-pass.ts";

/** A pass at a clock that is set by hand, its code, and another that is wrong. */
function pass() {
  const clock = { now: 1_000_000 };
  const made = guestPass(() => clock.now);
  const code = () => {
    const state = made.look();
    return state.is === "open" ? state.code : "none";
  };
  const wrong = () => (code() === "000000" ? "000001" : "000000");
  return { clock, made, code, wrong };
}

const minutes = 60_000;

test("a code is six digits, and lets one device in with a secret of 24 bytes", () => {
  const { made, code, clock } = pass();
  expect(code()).toMatch(/^[0-9]{6}$/u);
  const tried = made.tryCode(code());
  expect(tried).toEqual({ isIn: true, secret: expect.stringMatching(/^[\w-]{32}$/u) });
  expect(made.look()).toEqual({ is: "spent", at: clock.now });
  expect(made.isIn(tried.isIn ? tried.secret : "")).toBe(true);
});

test("codes differ from one to the next, and so do secrets", () => {
  const codes = new Set<string>();
  const secrets = new Set<string>();
  for (let i = 0; i < 50; i += 1) {
    const { made, code } = pass();
    codes.add(code());
    const tried = made.tryCode(code());
    if (tried.isIn) secrets.add(tried.secret);
  }
  expect(codes.size).toBeGreaterThan(45);
  expect(secrets.size).toBe(50);
});

test("a code that was used lets nobody else in, and does not put out who is in", () => {
  const { made, code } = pass();
  const used = code();
  const tried = made.tryCode(used);
  for (let i = 0; i < 7; i += 1) expect(made.tryCode(used)).toEqual({ isIn: false, left: 0 });
  expect(made.look().is).toBe("spent");
  expect(made.isIn(tried.isIn ? tried.secret : "")).toBe(true);
});

test("after five wrong codes the right one lets nobody in", () => {
  const { made, code, wrong } = pass();
  const right = code();
  const tries = [1, 2, 3, 4, 5].map(() => made.tryCode(wrong()));
  expect(tries).toEqual([4, 3, 2, 1, 0].map((left) => ({ isIn: false, left })));
  expect(made.look()).toEqual({ is: "guessed-at" });
  expect(made.tryCode(right)).toEqual({ isIn: false, left: 0 });
});

test("after four wrong codes the right one still does", () => {
  const { made, code, wrong } = pass();
  for (let i = 0; i < 4; i += 1) made.tryCode(wrong());
  expect(made.tryCode(code()).isIn).toBe(true);
});

test("ten minutes later the right code lets nobody in, a moment earlier it does", () => {
  const late = pass();
  const right = late.code();
  late.clock.now += 10 * minutes;
  expect(late.made.tryCode(right)).toEqual({ isIn: false, left: 0 });
  expect(late.made.look()).toEqual({ is: "late" });
  const early = pass();
  early.clock.now += 10 * minutes - 1;
  expect(early.made.tryCode(early.code()).isIn).toBe(true);
});

test("who is in stays in for longer than the code lasted", () => {
  const { made, code, clock } = pass();
  const tried = made.tryCode(code());
  clock.now += 300 * minutes;
  expect(made.isIn(tried.isIn ? tried.secret : "")).toBe(true);
});

test("a new code ends the old one, puts out who is in, and begins to count anew", () => {
  const { made, code, wrong } = pass();
  const tried = made.tryCode(code());
  let ended = 0;
  made.onRenewed(() => {
    ended += 1;
  });
  made.renew();
  expect(ended).toBe(1);
  expect(made.isIn(tried.isIn ? tried.secret : "")).toBe(false);
  for (let i = 0; i < 4; i += 1) made.tryCode(wrong());
  expect(made.tryCode(code()).isIn).toBe(true);
});

test("nothing is the secret of a device while none is in", () => {
  const { made } = pass();
  for (const guess of ["", "undefined", "x".repeat(32)]) expect(made.isIn(guess)).toBe(false);
});

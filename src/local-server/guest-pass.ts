/**
 * The code by which one guest's device is let in, once, and what that device shows from then on.
 * There is one code at a time and one device at a time.
 */
import { randomBytes, randomInt } from "node:crypto";
import { isSecret } from "./door.ts";

/** How it is with the code; times are those of the clock. */
export type CodeState =
  | { readonly is: "open"; readonly code: string; readonly until: number }
  /** A device came in with it. */
  | { readonly is: "spent"; readonly at: number }
  | { readonly is: "late" }
  /** Too many wrong ones were typed. */
  | { readonly is: "guessed-at" };

/** What became of a code that was typed. */
export type Tried =
  | { readonly isIn: true; readonly secret: string }
  /** How many wrong ones may still be typed; 0 where no code lets anybody in. */
  | { readonly isIn: false; readonly left: number };

export interface GuestPass {
  readonly look: () => CodeState;
  /** Makes a new code. The device that is in is put out. */
  readonly renew: () => void;
  readonly tryCode: (given: string) => Tried;
  /** Whether this is what the device was given that is in. */
  readonly isIn: (secret: string) => boolean;
  /** Calls back whenever a device is put out. */
  readonly onRenewed: (then: () => void) => void;
}

/** Wrong codes that may be typed of a million, by all devices together. */
const mostWrong = 5;

/** Milliseconds for which a code lets somebody in: time to walk to the tablet and type it. */
const codeLasts = 10 * 60_000;

/** A code, and what became of it. */
interface Code {
  readonly digits: string;
  readonly until: number;
  wrong: number;
  spent?: { readonly at: number; readonly secret: string };
}

/** @param now milliseconds, as `Date.now` */
export function guestPass(now: () => number): GuestPass {
  let code = makeCode(now());
  const listeners: (() => void)[] = [];
  const look = () => stateOf(code, now());
  return {
    look,
    renew() {
      code = makeCode(now());
      for (const then of listeners) then();
    },
    tryCode(given) {
      const none = { isIn: false, left: 0 } as const;
      if (look().is !== "open") return none;
      if (!isSecret(given, code.digits)) {
        code.wrong += 1;
        return { isIn: false, left: mostWrong - code.wrong };
      }
      const secret = randomBytes(24).toString("base64url");
      code.spent = { at: now(), secret };
      return { isIn: true, secret };
    },
    isIn: (secret) => code.spent !== undefined && isSecret(secret, code.spent.secret),
    onRenewed: (then) => void listeners.push(then),
  };
}

function makeCode(now: number): Code {
  const digits = String(randomInt(1_000_000)).padStart(6, "0");
  return { digits, until: now + codeLasts, wrong: 0 };
}

function stateOf({ digits, until, wrong, spent }: Code, now: number): CodeState {
  if (spent) return { is: "spent", at: spent.at };
  if (wrong >= mostWrong) return { is: "guessed-at" };
  if (now >= until) return { is: "late" };
  return { is: "open", code: digits, until };
}

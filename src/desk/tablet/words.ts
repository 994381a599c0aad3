/** What is said of the tablet: at the desk, on the page where the code is typed, and in the terminal. */
import type { CodeState, Tried } from "../../local-server/guest-pass.ts";
import type { Elsewhere, TabletDoor } from "./tablet.ts";

/** What plain http in a local network means. */
export const inTheOpen =
  "Whoever is in the same network and listens can read along, and could then write here as the tablet can. Use it in a network you trust, and stop the command when you are done.";

/** Where the desk is shown, at the foot of its pages. */
export function whereShown(elsewhere: Elsewhere | undefined): string {
  const rest =
    "It is never published: it names makers, and it writes into the archive when you ask it to.";
  if (elsewhere === undefined)
    return "The desk is shown on this computer alone and is never published: it names makers, and it writes into the archive when you ask it to.";
  if (elsewhere !== "on the tablet")
    return `The desk is shown on this computer and on the tablet that you let in. ${rest}`;
  return `The desk is shown on this tablet until the command is stopped. ${rest} ${inTheOpen}`;
}

/** `042 117`: easier to carry across a room than six digits in a row. */
export function spoken(code: string): string {
  return `${code.slice(0, 3)} ${code.slice(3)}`;
}

/** How it is with the code, in whole sentences; the code itself is shown beside them. */
export function tellCode(state: CodeState): string {
  if (state.is === "open")
    return `It lets one tablet in, until ${clock(state.until)}. Type it on the tablet, at the address below.`;
  if (state.is === "spent")
    return `A tablet was let in at ${clock(state.at)}, and the code is used up. A new code puts that tablet out.`;
  if (state.is === "late")
    return "The ten minutes of the last code are over. A new code lets a tablet in.";
  return "A wrong code was typed five times, so the last code lets nobody in any more. If that was not you, somebody else in the network tries to come in.";
}

/** `14:05`, as clocks go where the computer is. */
function clock(time: number): string {
  const at = new Date(time);
  return [at.getHours(), at.getMinutes()].map((part) => String(part).padStart(2, "0")).join(":");
}

/** What became of a code that was typed on the page for it. */
export function tellTried(became: Tried | "no-code"): string {
  if (became === "no-code") return "A code has six digits.";
  if (became.isIn) return "";
  if (became.left === 0)
    return "No code lets anybody in any more. Ask for a new one at the computer.";
  return `That is not the code. ${became.left === 1 ? "One try is left." : `${became.left} tries are left.`}`;
}

/** What the terminal says when the command begins. */
export function tellDoor({ addresses, pass }: TabletDoor): readonly string[] {
  const state = pass.look();
  const [first, ...others] = addresses;
  return [
    `A tablet in the same network may come in at ${first}${others.length > 0 ? ` (or, where that does not open, at ${others.join(" or ")})` : ""}`,
    ...(state.is === "open"
      ? [`Its code is ${spoken(state.code)}. ${tellLasts(state.until)}`]
      : []),
    inTheOpen,
  ];
}

function tellLasts(until: number): string {
  return `It lets one tablet in, until ${clock(until)}. The desk on this computer shows it, and makes a new one.`;
}

/** What the terminal says of what a device did to the code; undefined where that is nothing. */
export function tellChanged(state: CodeState, device: string): string | undefined {
  if (state.is === "spent") return `A tablet was let in (${device}).`;
  if (state.is === "guessed-at") return `${tellCode(state)} The last try came from ${device}.`;
  return undefined;
}

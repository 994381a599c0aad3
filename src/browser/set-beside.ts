/** The script of every page: sets tiles and glazes beside each other while one looks on. */
import { Tray } from "./beside/tray.ts";

const script = document.currentScript as HTMLScriptElement | null;
const own = script?.getAttribute("src") ?? "";

// The page of what is side by side has its own ways to add and take away.
if (!document.getElementById("beside"))
  new Tray(own.slice(0, -"assets/set-beside.js".length)).start();

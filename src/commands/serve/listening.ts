/** Servers that a command shows something with until it is stopped. */
import { WrongUsage } from "../failure.ts";

/** Waits until a server listens; that its port is taken is told as what it is. */
export async function untilListening<T>(listening: Promise<T>, port: number): Promise<T> {
  try {
    return await listening;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    throw new WrongUsage(
      `Port ${port} is taken by another program. Name another with --port, such as --port ${port + 1}.`,
    );
  }
}

/**
 * Waits until somebody stops the command. Called before the command says that it can be stopped, or
 * whoever is quick would end it in the middle.
 */
export function untilStopped(): Promise<void> {
  return new Promise((resolve) => {
    process.once("SIGINT", () => resolve());
    process.once("SIGTERM", () => resolve());
    // The window in which the command runs was closed.
    process.once("SIGHUP", () => resolve());
  });
}

/** What every page says of the studio. */
import type { Archive } from "../records/archive.ts";

export interface CatalogueStudio {
  readonly name: string;
  readonly address: string | null;
  readonly repository: string | null;
  readonly licence: string | null;
  readonly temperature: "celsius" | "fahrenheit";
  readonly handingIn: string | null;
  /** True for a site that is reached only by its link: no search engine may list it. */
  readonly unlisted: boolean;
}

export function describeStudio({ studio }: Archive, unlisted: boolean): CatalogueStudio {
  return {
    name: studio.studio,
    address: studio.address ?? null,
    repository: studio.repository ?? null,
    licence: studio.licence ?? null,
    temperature: studio.temperature ?? "celsius",
    handingIn: studio.handingIn ?? null,
    unlisted,
  };
}

/** A plain trial tile for tests of how records are drawn. */
import type { CoatStep, GlazeLook, Step, TilePlan } from "../../src/demo/tile-plan.ts";

export const black: GlazeLook = {
  id: "black",
  kind: "glaze",
  range: [4, 5],
  thick: "#17171a",
  thin: "#6b4026",
  hiding: 0.95,
  flow: 0.1,
  surface: "matte",
  weight: 1,
};

export function coat(where: string, glaze: GlazeLook = black): CoatStep {
  return {
    does: "coat",
    glaze,
    fade: undefined,
    coats: 1,
    cover: undefined,
    by: "dip",
    where: [where],
    thickness: 1,
  };
}

export const fire: Step = { does: "fire", kind: "glaze", heat: 5, atmosphere: "oxidation" };

export function plan(steps: readonly Step[], about: Partial<TilePlan> = {}): TilePlan {
  return {
    code: "ZZ-1",
    set: "trial",
    maker: "m01",
    clay: { bare: "#e6ddcc", speck: "#8a7050", specks: 0, grog: 0.2 },
    bleeds: false,
    texture: "smooth",
    shape: "flat",
    angle: 90,
    steps,
    surfaces: ["matte"],
    effects: [],
    faults: [],
    run: 0,
    fate: undefined,
    scratched: undefined,
    card: undefined,
    motif: undefined,
    figure: undefined,
    ...about,
  };
}

/** Fields that hold cones. */
import type * as z from "zod";
import {
  type Cone,
  type ConeRange,
  type HalfCones,
  parseCone,
  parseConeRange,
} from "../../terms/cones.ts";
import { mapOf } from "./containers.ts";
import { scalar } from "./scalar.ts";

/** A cone. */
export function cone(halves: HalfCones = "charted") {
  return scalar<Cone>(
    (found) => {
      const reading = parseCone(found, halves);
      return reading.ok ? { value: reading.cone } : noSuchCone(found, reading.nearest);
    },
    { type: ["string", "number"] },
  );
}

/** A cone or a range of cones, either way round. */
export const coneRange = () =>
  scalar<ConeRange>(
    (found) => {
      const reading = parseConeRange(found);
      return reading.ok ? { value: reading.range } : noSuchCone(found, reading.nearest);
    },
    { type: ["string", "number"] },
  );

/** The reading of a cone that no chart has. */
export function noSuchCone(found: string, nearest: readonly Cone[]) {
  return {
    code: "unknown-cone",
    message: `“${found}” is no cone of any chart`,
    hint:
      nearest.length > 0
        ? `The nearest are ${nearest.join(" and ")}; mind that 06 is far cooler than 6.`
        : "Write a cone by its name, such as 06, 6 or 5½, or two for a range: 5-6.",
  };
}

/** A map whose keys are cones, of which any half may be named. */
export function mapByCone<Out, In>(schema: z.ZodType<Out, In>) {
  return mapOf(schema).transform((entries, context) => {
    const byCone = new Map<Cone, Out>();
    for (const [key, value] of Object.entries(entries)) {
      const reading = parseCone(key, "any");
      if (reading.ok) byCone.set(reading.cone, value);
      else {
        const { code, message, hint } = noSuchCone(key, reading.nearest);
        context.addIssue({
          code: "custom",
          path: [key],
          message: `${message}\n${hint}`,
          params: { code },
        });
      }
    }
    return byCone as ReadonlyMap<Cone, Out>;
  });
}

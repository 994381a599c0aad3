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
      if (reading.ok) return { value: reading.cone };
      return rangeForCone(found) ?? noSuchCone(found, reading.nearest);
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

/** A range where one cone belongs. */
function rangeForCone(found: string) {
  const reading = parseConeRange(found);
  if (!reading.ok) return undefined;
  const { from, to } = reading.range;
  return {
    code: "cone-range",
    message: `“${found}” is a range, and one cone belongs here`,
    hint: `Write the one that is meant: ${from} or ${to}.`,
  };
}

/** What potters write before a cone's name: `cone 6`, `^6`, `Δ 06`. */
const beforeCone = /^(?:cones?|c\/|[cδ△▲∆^])[\s.:]*/iu;

/** No cone has so high a number, and no kiln that fires clay is so cool in either unit. */
const coolestTemperature = 100;

/** The reading of a cone that there is not. */
export function noSuchCone(found: string, nearest: readonly Cone[]) {
  const code = "unknown-cone";
  const bare = found.replace(beforeCone, "");
  if (bare !== found && parseConeRange(bare).ok)
    return {
      code,
      message: `“${found}” is more than the name of a cone`,
      hint: `Write the name alone: ${bare}.`,
    };
  const degrees = /^([1-9]\d{2,3})\s*°?\s*[cf]?$/iu.exec(found)?.[1];
  if (degrees !== undefined && Number(degrees) >= coolestTemperature)
    return {
      code,
      message: `“${found}” looks like a temperature, and a cone belongs here`,
      hint: "Write the cone that was aimed at or seen, such as 06, 6 or 5½; temperatures belong in a firing's “schedule:” or its log.",
    };
  return {
    code,
    message: `There is no cone “${found}”`,
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

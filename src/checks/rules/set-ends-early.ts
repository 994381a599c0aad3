import type { SetRule } from "../check.ts";

export const setEndsEarly: SetRule = {
  of: "set",
  name: "set-ends-early",
  severity: "error",
  explains: "A set ends on the day it begins or later.",
  find: (_, { id, record: { begins, ends } }) =>
    begins === undefined || ends === undefined || begins <= ends
      ? []
      : [
          {
            path: ["ends"],
            message: `${id} begins on ${begins} and ends on ${ends}: the days run backwards`,
            hint: "Mend the day that is mistyped.",
          },
        ],
};

/** Why nothing was changed in a file of an archive, in words. */
import type { CarriedOut } from "../archive/carry-out-mend.ts";
import type { NotWrittenAnew } from "../archive/write-new.ts";

type InTheWay = Extract<CarriedOut, { readonly ok: false }>["inTheWay"] | NotWrittenAnew;

const reasons: Readonly<Record<InTheWay["because"], (file: string) => string>> = {
  outside: (file) => `the folder of ${file} is a link that leads out of the archive`,
  gone: (file) => `${file} is not there any more`,
  taken: (file) => `there is a file ${file} already`,
  changed: (file) => `${file} was changed meanwhile`,
  faulty: (file) => `${file} has other faults, which come first`,
  unchangeable: (file) => `${file} cannot be changed there without changing more`,
};

/** What was in the way, as the end of a sentence without its full stop. */
export function whyNotDone({ because, file }: InTheWay): string {
  return reasons[because](file);
}

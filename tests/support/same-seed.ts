/**
 * What is tried at random is the same in every usual run, so that a change fails by its own fault
 * alone. `TILEBOOK_SEED=7` tries other values; larger runs try others each time.
 */
import fc from "fast-check";

const { TILEBOOK_SEED, TILEBOOK_RECORDS, TILEBOOK_FAULTS } = process.env;
const isLarger = TILEBOOK_RECORDS !== undefined || TILEBOOK_FAULTS !== undefined;

if (TILEBOOK_SEED !== undefined || !isLarger)
  fc.configureGlobal({ seed: Number(TILEBOOK_SEED ?? 20_261) });

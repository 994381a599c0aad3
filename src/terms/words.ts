/** A word of running text: letters with their marks, and digits. */
export const wordPattern = /[\p{L}\p{M}\p{N}]+/gu;

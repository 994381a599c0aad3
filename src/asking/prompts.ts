/** What is asked of a person, whoever does the asking: a terminal, or a test that answers. */

/** Something to choose. */
export interface Choice {
  /** What is given back. */
  readonly value: string;
  readonly label: string;
  /** A sentence that explains it. */
  readonly hint?: string;
  /** Further words by which it is found. */
  readonly also?: readonly string[];
}

export interface Writing {
  /** What stands there to begin with, to be changed or left. */
  readonly begin?: string;
  /** What is wrong with an answer, and how to put it right; undefined where nothing is. */
  readonly faultOf?: (answer: string) => string | undefined;
}

export interface Choosing extends Writing {
  /** Whether something else may be written instead. */
  readonly own?: boolean;
}

/** Each question gives its answer, or throws `Stopped` where the person wants no more of it. */
export interface Prompts {
  tell(words: string): void;
  write(question: string, how?: Writing): Promise<string>;
  /** One of the choices, found by typing. */
  choose(question: string, choices: readonly Choice[], how?: Choosing): Promise<string>;
  agree(question: string): Promise<boolean>;
}

/** The person ended the questions: nothing may be written. */
export class Stopped extends Error {
  constructor() {
    super("The questions were ended");
  }
}

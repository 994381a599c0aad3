/** What the tile form says: its questions, what it does with what is typed, how it ends. */
import type { WayOfHandingIn } from "../../../src/terms/choices.ts";

export const formTitle = "Add a tile";

export const formLede =
  "Write down what you put on a test tile while your hands remember it: the set, then the layers.";

/** What to do where no script runs. */
export const withoutScript =
  "This form needs a script, and your browser runs none. Write the tile on paper and hand the sheet in with it:";

export const orByHand =
  "Or write the record by hand, as a text file: its fields, and an example of each, are in";

export const screenNames = {
  set: "Set",
  tile: "Tile",
  layers: "Layers",
  photo: "Photo",
  end: "Hand in",
} as const;

export const questions = {
  set: "Which set is it for?",
  tile: "Which tile is it?",
  layers: "What went on, in which order?",
  photo: "What does it look like before firing?",
  end: "Is it all there?",
} as const;

export const keyHelp =
  "Your key, such as m07. Never your name: what you write here will be published.";

export const faultOfKey =
  "A key is one word of letters and digits, such as m07. Your teacher has the list.";

export const notesHelp =
  "What else you want to remember, in your own words. Everybody can read it: no names, please.";

export const photoHelp =
  "Place, device and date stay behind: only the picture itself is kept, at 3000 px at most.";

export const nothingYet = "Nothing is on it yet.";

export const notesOfPractice =
  "These notes are common practice. What the studio's own tiles show is not weighed here: look at them on the pages of the glazes.";

export const whileChecking =
  "Still loading what checks the record. This takes a moment the first time.";

export const withoutChecks =
  "What checks the record did not load, so it cannot be handed in yet. Your tile is kept: open this page again where there is a connection.";

/** What the last button says. */
export const handInNames: Readonly<Record<WayOfHandingIn, string>> = {
  download: "Download the tile",
  "new-file": "Open the new file",
  share: "Share the tile",
};

export const handInHelp: Readonly<Record<WayOfHandingIn, string>> = {
  download: "You get one file. Give it to your teacher as it is.",
  "new-file":
    "The studio's repository opens in another tab, with the record filled in. You need an account there. A photograph is downloaded, to be added afterwards.",
  share: "Your phone asks whom to send it to. Where it has no such sheet, you get one file.",
};

/** What was done when a tile was handed in. */
export const handedIn = {
  downloaded: (name: string) => `${name} was downloaded. Hand it in as it is.`,
  shared: (name: string) => `${name} was sent on.`,
  opened:
    "The new file is open in another tab. It is not handed in until you have done this there:",
  tooLong: (name: string) =>
    `The record is too long for the address of a new file. ${name} was downloaded in its place: hand that in.`,
  noForge: (name: string) =>
    `This repository has no page that can be filled in from here. ${name} was downloaded: hand that in.`,
} as const;

/** What is to be done in the repository once its page for a new file is open, in this order. */
export const thereFirst =
  "Commit the new file. If you are asked, propose it and create a pull request: that is how the studio gets to see it.";

/** Where the photograph has to go so that one request has both. */
export const thereWithPhotograph = (folder: string, photograph: string): readonly string[] => [
  `The request names the branch that it comes from. Open that branch, and in it the folder ${folder}.`,
  `There choose “Add file”, then “Upload files”. Drop ${photograph}, and commit it to the same branch. The request then has both.`,
];

export const thereNames = {
  again: "Open the new file again",
  requests: "All requests to the studio",
  photograph: "Save the photograph again",
  inFull: "Each step in full",
} as const;

/** What the last screen is called where something is still to be done elsewhere. */
export const stillToDo = "Finish it there";

export const packingFailed =
  "The tile could not be packed. It is kept here: open this page again where there is a connection.";

export const clearHelp =
  "On a shared tablet: clear it, so that the next person finds an empty form.";
